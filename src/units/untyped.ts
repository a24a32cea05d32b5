/**
 * What must stand in whatever types did not check: a question or a plan from a program without types, an answer as JSON.
 *
 * Not with io-ts, which reads specs: its records read keys of prototypes too, and it gathers every fault of a list with its place,
 * however long that list is. These stop at the first, and cost `units` nothing.
 */
import { wireQuantity } from './codec.js';
import { isRecord, own } from './own.js';
import type { Dimension } from './unit-list.js';
import { inShort } from './words.js';

/** The first thing that is not what it must be. */
export interface Misfit {
  readonly path: string;
  readonly found: string;
  readonly needed: string;
}

/** Asks one part of a question; nothing where it is what it must be. */
export type Form = (value: unknown, path: string) => Misfit | undefined;
export type Forms = Readonly<Record<string, Form>>;

/** Anything that fits; the words say what is needed. */
export const is =
  (needed: string, fits: (value: unknown) => boolean): Form =>
  (value, path) =>
    fits(value) ? undefined : { path, found: inShort(value), needed };

const under = (path: string, key: string | number): string => (path === '' ? String(key) : `${path}.${key}`);

export const anything: Form = () => undefined;
export const aText = is('a text', (value) => typeof value === 'string');
export const aNumber = is('a number', (value) => typeof value === 'number');
export const aFunction = is('a function', (value) => typeof value === 'function');
export const aWholeNumber = is('a whole number from 0', (value) => Number.isSafeInteger(value) && Number(value) >= 0);
export const oneOf = (words: readonly unknown[], needed = `one of ${words.join(', ')}`): Form =>
  is(needed, (value) => words.includes(value));

/** A figure of the library, or one with its working. */
export const aFigure = (...dimensions: readonly Dimension[]): Form =>
  is(`a figure of ${dimensions.join(' or ')} as the library makes them`, (value) => {
    const figure = isRecord(value) && Object.hasOwn(value, 'why') ? own(value, 'value') : value;
    return dimensions.some((dimension) => wireQuantity(dimension).is(figure));
  });

/** The first misfit of several parts. */
function firstOf<A>(parts: Iterable<A>, ask: (part: A) => Misfit | undefined): Misfit | undefined {
  for (const part of parts) {
    const misfit = ask(part);
    if (misfit !== undefined) return misfit;
  }
  return undefined;
}

/** A list of alike; of so many, where the count is given. */
export const listOf = (each: Form, count?: number): Form => {
  const aList = is('a list', Array.isArray);
  const ofCount = is(`a list of ${count}`, (value) => count === undefined || (value as unknown[]).length === count);
  return (value, path) =>
    aList(value, path) ??
    ofCount(value, path) ??
    firstOf((value as unknown[]).entries(), ([i, part]) => each(part, under(path, i)));
};

/** A record of any keys, each with a part of one form. A part may have a place of its own: a key that is a path already. */
export const recordOf = (
  each: Form,
  needed = 'a record',
  placeOf: (path: string, key: string) => string = under,
): Form => {
  const record = is(needed, isRecord);
  return (value, path) =>
    record(value, path) ?? firstOf(Object.entries(value as object), ([key, part]) => each(part, placeOf(path, key)));
};

/** A record with these keys, and perhaps with those. Other keys are not looked at. */
export const aRecord = (
  required: Forms,
  maybe: Forms = {},
  needed = `a record with ${Object.keys(required).join(', ')}`,
): Form => {
  const record = is(needed, isRecord);
  const keys = [...Object.entries(required), ...Object.entries(maybe)];
  return (value, path) =>
    record(value, path) ??
    firstOf(keys, ([key, form]) => {
      const part = own(value as Readonly<Record<string, unknown>>, key);
      return part === undefined && !Object.hasOwn(required, key) ? undefined : form(part, under(path, key));
    });
};

/** A record with these keys, perhaps with those, and no others. */
export const exactly = (required: Forms, maybe: Forms = {}): Form => {
  const [record, forms] = [is('a record', isRecord), { ...maybe, ...required }];
  const [there, unknownKey] = [is('a value', () => false), is('no such key', () => false)];
  return (value, path) => {
    const misfit = record(value, path);
    if (misfit !== undefined) return misfit;
    const lacking = Object.keys(required).find((key) => !Object.hasOwn(value as object, key));
    if (lacking !== undefined) return there(undefined, under(path, lacking));
    return firstOf(Object.entries(value as object), ([key, part]) =>
      (own(forms, key) ?? unknownKey)(part, under(path, key)),
    );
  };
};

/** A record of one of several forms, by what a key of it says; `otherwise` for one that says none of them. */
export const byKind =
  (key: string, forms: Forms, otherwise: Form): Form =>
  (value, path) => {
    const kind = isRecord(value) ? own(value, key) : undefined;
    return ((typeof kind === 'string' ? own(forms, kind) : undefined) ?? otherwise)(value, path);
  };

/** Keys of a record whose faults are told at the record: its place is a key of a spec. */
export const here =
  (forms: Forms): Form =>
  (value, path) =>
    firstOf(Object.entries(forms), ([key, form]) => form(own(value as Readonly<Record<string, unknown>>, key), path));
