/** A fault on its way from a codec to the list of problems: an io-ts error that also says what kind of fault it is. */
import * as t from 'io-ts';
import type { FaultTag } from '../errors.js';

export interface Fault extends t.ValidationError {
  readonly fault: FaultTag;
  readonly message: string;
  /** What was found, in words, where the value does not say it. */
  readonly got?: string;
  /** Where, when that is not the place of the context. */
  readonly path?: string;
}

/** The keys down to a place, joined with dots. */
export function pathOf(context: t.Context): string {
  let path = '';
  for (const { key } of context) if (key !== '') path = path === '' ? key : `${path}.${key}`;
  return path;
}

/** One fault: what is needed instead, and more when the value and its place do not say enough. */
export const fault = (
  value: unknown,
  context: t.Context,
  tag: FaultTag,
  needed: string,
  more: Pick<Fault, 'got' | 'path'> = {},
): Fault => ({ value, context, message: needed, fault: tag, ...more });

/** A validation that failed by one fault. */
export const failed = (...of: Parameters<typeof fault>): t.Validation<never> => t.failures([fault(...of)]);

/** What could be read of a record or a list that has faults, by its faults: contradictions are looked for in it too. */
const readable = new WeakMap<t.Errors, unknown>();

/** Failures that remember what could be read. */
export function failedWith<A>(errors: t.Errors, partly: unknown): t.Validation<A> {
  readable.set(errors, partly);
  return t.failures(errors);
}

/** What could be read of what has these faults. */
export const readableOf = (errors: t.Errors): unknown => readable.get(errors);

export { has, isRecord, own } from '../../units/internal.js';
