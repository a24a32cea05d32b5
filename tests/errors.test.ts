/** Every error is plain data: it survives a clone and JSON unchanged, and gets its words afterwards. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { assessJson } from '../src/assessment/index.js';
import { describeError, type TrailerError, wordsFor } from '../src/errors.js';
import { brokenSpecs } from './helpers/broken-specs.js';
import { figuresIn } from './helpers/random/leaves.js';
import { randomSpecs } from './helpers/random-specs.js';
import { changed, heavier, tiltDeck } from './helpers/specs.js';

/** What is left of a type when everything that JSON cannot write is taken out. */
type Plain<T> = T extends string | number | boolean | null | undefined
  ? T
  : T extends (...args: never) => unknown
    ? never
    : T extends readonly (infer A)[]
      ? readonly Plain<A>[]
      : T extends object
        ? { readonly [K in keyof T]: Plain<T[K]> }
        : never;
/** Does not compile when any error of any chapter holds a figure, a function or an unknown. */
const everyErrorIsPlain: TrailerError extends Plain<TrailerError> ? true : never = true;

const refusalOf = (spec: unknown): readonly TrailerError[] => {
  const answer = assessJson(spec);
  return isLeft(answer) ? [answer.left] : [];
};

/** Each figure of a spec in turn turned into one that reads and cannot be true. */
const strained = (spec: Readonly<Record<string, unknown>>): readonly unknown[] =>
  figuresIn(spec).flatMap(({ path }) =>
    ['0 lb', '0 in', '-3 in', '0 psi', '0 %', '100 %', '90000 lb', '900 in', '300 psi'].map((text) =>
      changed(spec, path, text),
    ),
  );

const refusals: readonly TrailerError[] = [
  ...brokenSpecs(300).map(({ spec }) => spec),
  ...[tiltDeck(), heavier(), ...randomSpecs(4)].flatMap(strained),
  { trailer: { hitch: 'ball', axles: [] } },
  null,
].flatMap(refusalOf);

describe('the errors of a broad set of broken specs', () => {
  it('are many, and of many kinds', () => {
    expect(everyErrorIsPlain).toBe(true);
    expect(refusals.length).toBeGreaterThan(1000);
    const problems = refusals.flatMap((error) => ('problems' in error ? error.problems : []));
    expect([...new Set(problems.map(({ fault }) => fault))].sort()).toEqual([
      'contradiction',
      'missing',
      'no unit',
      'out of range',
      'refused',
      'unknown key',
      'unreadable',
      'wrong kind',
    ]);
    expect(new Set(problems.map(({ path }) => path)).size).toBeGreaterThan(100);
  });
  it('go through a clone and through JSON as they are, and get their words there', () => {
    for (const error of refusals) {
      const cloned = structuredClone(error);
      const sent = JSON.parse(JSON.stringify(error)) as TrailerError;
      expect(cloned).toStrictEqual(error);
      expect(sent).toEqual(error);
      expect(wordsFor(sent)).toBe(wordsFor(error));
      expect(describeError(cloned)).toBe(describeError(error));
      expect(wordsFor(sent)).not.toMatch(/undefined|\[object/);
    }
  });
});
