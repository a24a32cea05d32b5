/** From text or JSON to a spec whose figures are leaves of the working. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { inShort } from '../units/internal.js';
import type { MalformedJson, Problem, UndecodableSpec } from './errors.js';
import { type Spec, specCodec } from './spec.js';
import { keepWritten } from './written.js';

/** The most text that is read as a spec. */
const longest = 1_000_000;

const problem = (error: import('io-ts').ValidationError): Problem => ({
  path:
    error.context
      .map(({ key }) => key)
      .filter((key) => key !== '')
      .join('.') || 'the spec',
  got: inShort(error.value),
  needed: error.message ?? error.context.at(-1)?.type.name ?? 'something else',
});

/**
 * What does this JSON say about a trailer?
 *
 * Nothing is converted and nothing is filled in: each figure keeps the unit it was written in and knows its place.
 *
 * Not for text: `readJson` makes a JSON value of it first.
 *
 * @param input a parsed JSON value; never changed
 * @returns Left `UndecodableSpec` with every place that cannot be read: path, got, needed; an unknown key names the nearest known one
 * @example isLeft(decodeSpec({ trailer: {} })) // true
 * @source common practice, no source: the keys are this library's own
 */
export function decodeSpec(input: unknown): Either<UndecodableSpec, Spec> {
  const decoded = specCodec.decode(input);
  if (!isLeft(decoded)) return right(keepWritten(decoded.right, input));
  const problems = decoded.left.map(problem);
  return left({ chapter: 'spec', tag: 'UndecodableSpec', problems, path: problems[0]?.path ?? 'the spec' });
}

/**
 * What JSON value does this text say?
 *
 * Nothing is evaluated, a byte order mark in front is passed over, and more than a million characters are refused unread.
 *
 * Not for JSON with comments or single quotes.
 *
 * @param text the text of a file or a form
 * @returns the value, not yet looked at; Left `MalformedJson`
 * @example isLeft(readJson('{ "trailer": ')) // true
 * @source RFC 8259, as the language reads it
 */
export function readJson(text: string): Either<MalformedJson, unknown> {
  if (text.length > longest)
    return left({
      chapter: 'spec',
      tag: 'MalformedJson',
      says: `a text of ${text.length} characters, more than ${longest}`,
    });
  try {
    return right(JSON.parse(text.replace(/^\uFEFF/, '')) as unknown);
  } catch (reason) {
    return left({
      chapter: 'spec',
      tag: 'MalformedJson',
      says: reason instanceof Error ? reason.message.slice(0, 120) : 'a text that is not JSON',
    });
  }
}
