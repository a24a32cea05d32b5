/** Cache of the last rules file: the same file appears in many specs, so it is decoded again only when it changes. */
import { isLeft } from 'fp-ts/lib/Either.js';
import * as t from 'io-ts';
import { frozen } from '../../units/internal.js';
import { isRecord, pathOf } from '../codec/fault.js';
import { type Coded, coded } from '../codec/kind.js';
import { type Json, plainCopy } from '../written.js';

/** Whether a value says what a copy of plain JSON says; anything but plain JSON does not. */
function isSame(copy: Json, value: unknown): boolean {
  if (typeof copy !== 'object' || copy === null) return copy === value;
  if (Array.isArray(copy)) {
    if (!Array.isArray(value) || value.length !== copy.length) return false;
    return copy.every((part, i) => isSame(part as Json, value[i]));
  }
  if (!isRecord(value) || Object.getPrototypeOf(value) !== Object.prototype) return false;
  const keys = Object.keys(copy);
  if (Reflect.ownKeys(value).length !== keys.length) return false;
  for (const key of keys)
    if (!Object.hasOwn(value, key) || !isSame((copy as Record<string, Json>)[key] as Json, value[key])) return false;
  return true;
}

/** The same codec; what it read last is kept, frozen, for the next input that says the same at the same place. Not for figures, which know the names around them. */
export function readOnce<A, O>(codec: Coded<A, O>): Coded<A, O> {
  let last: { readonly path: string; readonly copy: Json; readonly read: A } | undefined;
  const kept = new t.Type<A, O, unknown>(
    codec.name,
    codec.is,
    (input, context) => {
      const path = pathOf(context);
      if (last !== undefined && last.path === path && isSame(last.copy, input)) return t.success(last.read);
      const found = codec.validate(input, context);
      if (!isLeft(found)) last = { path, copy: plainCopy(input), read: frozen(found.right) };
      return found;
    },
    codec.encode,
  );
  return coded(kept, codec.says);
}
