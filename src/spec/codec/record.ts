/** Records that know all their keys: a key nobody knows is reported with the nearest one there is. */
import { isLeft } from 'fp-ts/lib/Either.js';
import * as t from 'io-ts';
import { editDistance, nearestKeys, pushAll } from '../../units/internal.js';
import { failed, failedWith, fault, isRecord, own, readableOf } from './fault.js';
import { type Coded, coded, type Shape } from './kind.js';
import { neededFor } from './needed.js';

/** What comes out of the codecs of a shape. */
export type Read<R extends Shape, O extends Shape> = { readonly [K in keyof R]: t.TypeOf<R[K]> } & {
  readonly [K in keyof O]?: t.TypeOf<O[K]> | undefined;
};
/** What goes into them. */
export type Written<R extends Shape, O extends Shape> = { readonly [K in keyof R]: t.OutputOf<R[K]> } & {
  readonly [K in keyof O]?: t.OutputOf<O[K]> | undefined;
};

/** The longest key that an error repeats. */
const longestKey = 40;

function unknownKey(
  input: Readonly<Record<string, unknown>>,
  key: string,
  keys: readonly string[],
  context: t.Context,
) {
  const short = key.slice(0, longestKey);
  const near = nearestKeys(keys, (other) => editDistance(key, other)).join(', ');
  return fault(
    short,
    t.appendContext(context, short, t.unknown, own(input, key)),
    'unknown key',
    `a known key: ${near}`,
  );
}

/** What one key says; its faults are added to the others. */
function readKey(
  value: unknown,
  codec: t.Mixed,
  must: boolean,
  errors: t.ValidationError[],
  key: string,
  context: t.Context,
): unknown {
  if (value === undefined) {
    if (must) errors.push(fault(undefined, t.appendContext(context, key, codec), 'missing', neededFor(codec)));
    return undefined;
  }
  const found = codec.validate(value, t.appendContext(context, key, codec, value));
  if (!isLeft(found)) return found.right;
  pushAll(errors, found.left);
  return readableOf(found.left);
}

/**
 * A record with required and optional keys and no others.
 *
 * Only own keys are read, and the result has every key as its own, so that no key is read from a prototype later on.
 *
 * @param type its name among the types: `Tires` makes `TiresInput`
 * @param title what it is, for errors and forms
 */
export function record<R extends Shape, O extends Shape>(
  type: string,
  title: string,
  required: R,
  optional: O,
): Coded<Read<R, O>, Written<R, O>> {
  const keys = [...Object.keys(required), ...Object.keys(optional)];
  const shape = { ...required, ...optional } as Shape;
  const known = new Set(keys);
  // Every key in place before any is read: a record that grows key by key is copied again and again.
  const blank = Object.fromEntries(keys.map((key) => [key, undefined]));
  const codecs = keys.map((key) => [key, shape[key] as t.Mixed, Object.hasOwn(required, key)] as const);
  const codec = new t.Type<Read<R, O>, Written<R, O>, unknown>(
    title,
    (input): input is Read<R, O> =>
      isRecord(input) &&
      Object.keys(input).every((key) => known.has(key)) &&
      codecs.every(([key, of, must]) => {
        const value = own(input, key);
        return value === undefined ? !must : of.is(value);
      }),
    (input, context) => {
      if (!isRecord(input)) return failed(input, context, 'wrong kind', `a record: ${title}`);
      const errors: t.ValidationError[] = [];
      const read: Record<string, unknown> = { ...blank };
      for (const key of Object.keys(input)) if (!known.has(key)) errors.push(unknownKey(input, key, keys, context));
      for (const [key, of, must] of codecs) {
        const value = own(input, key);
        if (value !== undefined || must) read[key] = readKey(value, of, must, errors, key, context);
      }
      return errors.length === 0 ? t.success(read as Read<R, O>) : failedWith(errors, read);
    },
    (value) => {
      const written: Record<string, unknown> = {};
      for (const [key, of] of codecs) {
        const part = own(value, key);
        if (part !== undefined) written[key] = of.encode(part);
      }
      return written as Written<R, O>;
    },
  );
  return coded(codec, { kind: 'record', type, title, required, optional });
}
