/** Every record of the spec under its path, `[]` for the places of a list: what forms, schema, types and guide go through. */

import { collected } from '../units/internal.js';
import type { AnyCoded, RecordKind } from './codec/kind.js';
import { specCodec } from './spec.js';

/** A record of the spec, its path, and which form of several it is. */
export interface PlacedRecord {
  readonly path: string;
  /** What distinguishes it from the other forms allowed there. */
  readonly form?: string;
  readonly says: RecordKind;
}

const under = (path: string, key: string): string => (path === '' ? key : `${path}.${key}`);

/** The records below a codec, the outer ones first. */
function recordsBelow({ says }: AnyCoded, path: string, form?: string): readonly PlacedRecord[] {
  switch (says.kind) {
    case 'list':
      return recordsBelow(says.each, `${path}[]`);
    case 'forms':
      return collected(says.forms, (each) => recordsBelow(each, path, each.name));
    case 'record': {
      const inside = Object.entries({ ...says.required, ...says.optional });
      const here: PlacedRecord = form === undefined ? { path, says } : { path, form, says };
      return [here, ...collected(inside, ([key, codec]) => recordsBelow(codec, under(path, key)))];
    }
    default:
      return [];
  }
}

let found: readonly PlacedRecord[] | undefined;

/** Every record of the spec. */
export function specRecords(): readonly PlacedRecord[] {
  found ??= [
    ...new Map(recordsBelow(specCodec, '').map((record) => [`${record.path} ${record.form ?? ''}`, record])).values(),
  ];
  return found;
}

/** The records that know a key: `gawr` belongs to `trailer.axles[]`. */
export function homesOf(key: string): readonly PlacedRecord[] {
  return specRecords().filter(({ says }) => Object.hasOwn(says.required, key) || Object.hasOwn(says.optional, key));
}
