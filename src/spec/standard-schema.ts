/** The Standard Schema face of a spec, for forms and routers that take any schema library. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { decodeSpec } from './decode.js';
import type { SpecInput } from './types/spec.js';
import { wordsForProblem } from './words.js';

/** One fault in the form of Standard Schema: the sentence, and the keys down to the field. */
export interface SpecIssue {
  /** The sentence, without the path. */
  readonly message: string;
  /** The keys down to the field; a place in a list is a number. */
  readonly path: readonly (string | number)[];
}

/** A schema as libraries of forms take it, whoever made it. */
export interface SpecSchema {
  /** The face of Standard Schema, version 1. */
  readonly '~standard': {
    /** The version of the face. */
    readonly version: 1;
    /** Who made it. */
    readonly vendor: string;
    /** Reads a value: the value itself when it is a spec, or every fault at its field. */
    readonly validate: (
      value: unknown,
    ) => { readonly value: SpecInput; readonly issues?: undefined } | { readonly issues: readonly SpecIssue[] };
    /** What goes in and what comes out; for the compiler only. */
    readonly types?: { readonly input: SpecInput; readonly output: SpecInput } | undefined;
  };
}

const keysIn = (path: string): readonly (string | number)[] =>
  path === 'the spec' ? [] : path.split('.').map((key) => (/^\d+$/.test(key) ? Number(key) : key));
/**
 * The spec as a schema that libraries of forms take: `specSchema['~standard'].validate(value)`.
 *
 * @example specSchema['~standard'].validate({}).issues.length // 1
 * @source Standard Schema, version 1
 */
export const specSchema: SpecSchema = {
  '~standard': {
    version: 1,
    vendor: 'trailer-ratings',
    validate: (value) => {
      const read = decodeSpec(value);
      if (!isLeft(read)) return { value: value as SpecInput };
      return {
        issues: read.left.problems.map((problem) => ({
          message: wordsForProblem(problem),
          path: keysIn(problem.path),
        })),
      };
    },
  },
};
