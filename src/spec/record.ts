/** Records that know all their keys: a key nobody knows is reported with the nearest one there is. */

import { isLeft } from 'fp-ts/lib/Either.js';
import * as t from 'io-ts';
import { editDistance, nearestKeys } from '../units/internal.js';

type Shape = Readonly<Record<string, t.Mixed>>;
type Decoded<R extends Shape, O extends Shape> = { readonly [K in keyof R]: t.TypeOf<R[K]> } & {
  readonly [K in keyof O]?: t.TypeOf<O[K]>;
};

const isRecord = (input: unknown): input is Record<string, unknown> =>
  typeof input === 'object' && input !== null && !Array.isArray(input);

/** One by one: a list of a hundred thousand faults is more than a call can take as arguments. */
function pushAll(errors: t.ValidationError[], more: t.Errors): void {
  for (const error of more) errors.push(error);
}

/** A codec that can say what it is made of, so that the guide to the spec can be compared with it. */
export interface MadeOf {
  readonly required: Shape;
  readonly optional: Shape;
}

/** A record with required and optional keys and no others. */
export function closedRecord<R extends Shape, O extends Shape>(
  name: string,
  required: R,
  optional: O,
): t.Type<Decoded<R, O>, unknown, unknown> & MadeOf {
  const keys = [...Object.keys(required), ...Object.keys(optional)];
  const known = new Set(keys);
  const codec = new t.Type<Decoded<R, O>, unknown, unknown>(
    name,
    (input): input is Decoded<R, O> => isRecord(input),
    (input, context) => {
      if (!isRecord(input)) return t.failure(input, context, `a record: ${name}`);
      const errors: t.Errors = [];
      const decoded: Record<string, unknown> = {};
      for (const key of Object.keys(input)) {
        if (known.has(key)) continue;
        const place = t.appendContext(context, key.slice(0, 40), t.unknown, input[key]);
        errors.push({
          value: `${key.slice(0, 40)}`,
          context: place,
          message: `a known key: ${nearestKeys(keys, (other) => editDistance(key, other)).join(', ')}`,
        });
      }
      for (const key of keys) {
        const codec = (required[key] ?? optional[key]) as t.Any;
        if (!Object.hasOwn(input, key) || input[key] === undefined) {
          if (Object.hasOwn(required, key))
            errors.push({ value: undefined, context: t.appendContext(context, key, codec), message: codec.name });
          continue;
        }
        const place = t.appendContext(context, key, codec, input[key]);
        const value = codec.validate(input[key], place);
        if (isLeft(value)) pushAll(errors, value.left);
        else decoded[key] = value.right;
      }
      return errors.length === 0 ? t.success(decoded as Decoded<R, O>) : t.failures(errors);
    },
    t.identity,
  );
  return Object.assign(codec, { required, optional });
}

/** A list, each place with its number in the path. */
export function listOf<A>(
  name: string,
  each: t.Type<A, unknown, unknown>,
): t.Type<readonly A[], unknown, unknown> & { readonly each: t.Mixed } {
  const codec = new t.Type<readonly A[], unknown, unknown>(
    name,
    (input): input is readonly A[] => Array.isArray(input),
    (input, context) => {
      if (!Array.isArray(input)) return t.failure(input, context, `a list: ${name}`);
      const errors: t.Errors = [];
      const decoded: A[] = [];
      Array.from(input as readonly unknown[]).forEach((value, index) => {
        const read = each.validate(value, t.appendContext(context, String(index), each, value));
        if (isLeft(read)) pushAll(errors, read.left);
        else decoded.push(read.right);
      });
      return errors.length === 0 ? t.success(decoded) : t.failures(errors);
    },
    t.identity,
  );
  return Object.assign(codec, { each });
}

/** One of a few words. */
export function oneOf<const W extends string>(...words: readonly W[]): t.Type<W, unknown, unknown> {
  const name = `one of ${words.map((word) => `"${word}"`).join(', ')}`;
  const is = (input: unknown): input is W => words.some((word) => word === input);
  return new t.Type<W, unknown, unknown>(
    name,
    is,
    (input, context) => (is(input) ? t.success(input) : t.failure(input, context, name)),
    t.identity,
  );
}

/** A figure, or one word that stands for it. Unlike a union it adds nothing to the path. */
export function wordOr<const W extends string, A>(
  word: W,
  other: t.Type<A, unknown, unknown>,
): t.Type<W | A, unknown, unknown> {
  return new t.Type<W | A, unknown, unknown>(
    `"${word}", or ${other.name}`,
    (input): input is W | A => input === word || other.is(input),
    (input, context) => (input === word ? t.success(word) : other.validate(input, context)),
    t.identity,
  );
}

/** A whole number from `least` to `most`: how many tires, axles, boards. */
export function count(least: number, most: number): t.Type<number, unknown, unknown> {
  const name = `a whole number from ${least} to ${most}`;
  const is = (input: unknown): input is number =>
    typeof input === 'number' && Number.isInteger(input) && input >= least && input <= most;
  return new t.Type<number, unknown, unknown>(
    name,
    is,
    (input, context) => (is(input) ? t.success(input) : t.failure(input, context, name)),
    t.identity,
  );
}

/** What would break a line of a report, or hide in one. */
const control = /[\u0000-\u001f\u007f-\u009f\u2028\u2029]/;
const isName = (input: unknown): input is string =>
  typeof input === 'string' && input.length > 0 && input.length <= 200 && !control.test(input);

/** A short text: a name, a designation. */
export const words = new t.Type<string, unknown, unknown>(
  'a text of 1 to 200 characters, on one line',
  isName,
  (input, context) =>
    isName(input) ? t.success(input) : t.failure(input, context, 'a text of 1 to 200 characters, on one line'),
  t.identity,
);

/** True or false. */
export const yesOrNo = new t.Type<boolean, unknown, unknown>(
  'true or false',
  (input): input is boolean => typeof input === 'boolean',
  (input, context) => (typeof input === 'boolean' ? t.success(input) : t.failure(input, context, 'true or false')),
  t.identity,
);
