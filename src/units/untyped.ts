/** What must stand in a question that types did not check: JSON from elsewhere, a program without types. */
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
type Forms = Readonly<Record<string, Form>>;

const is =
  (needed: string, fits: (value: unknown) => boolean): Form =>
  (value, path) =>
    fits(value) ? undefined : { path, found: inShort(value), needed };

const under = (path: string, key: string | number): string => (path === '' ? String(key) : `${path}.${key}`);

export const anything: Form = () => undefined;
export const aText = is('a text', (value) => typeof value === 'string');
export const aNumber = is('a number', (value) => typeof value === 'number');
export const aFunction = is('a function', (value) => typeof value === 'function');

/** A figure of the library, or one with its working. */
export const aFigure = (...dimensions: readonly Dimension[]): Form =>
  is(`a figure of ${dimensions.join(' or ')} as the library makes them`, (value) => {
    const figure = isRecord(value) && Object.hasOwn(value, 'why') ? own(value, 'value') : value;
    return dimensions.some((dimension) => wireQuantity(dimension).is(figure));
  });

export const listOf =
  (each: Form): Form =>
  (value, path) => {
    if (!Array.isArray(value)) return { path, found: inShort(value), needed: 'a list' };
    for (const [i, part] of value.entries()) {
      const misfit = each(part, under(path, i));
      if (misfit !== undefined) return misfit;
    }
    return undefined;
  };

/** A record of any keys, each with a part of one form. */
export const recordOf =
  (each: Form): Form =>
  (value, path) => {
    if (!isRecord(value)) return { path, found: inShort(value), needed: 'a record' };
    for (const [key, part] of Object.entries(value)) {
      const misfit = each(part, under(path, key));
      if (misfit !== undefined) return misfit;
    }
    return undefined;
  };

/** A record with these keys, and perhaps with those. Other keys are not looked at. */
export const aRecord =
  (needed: Forms, maybe: Forms = {}): Form =>
  (value, path) => {
    if (!isRecord(value))
      return { path, found: inShort(value), needed: `a record with ${Object.keys(needed).join(', ')}` };
    const asked = [
      ...Object.entries(needed),
      ...Object.entries(maybe).filter(([key]) => own(value, key) !== undefined),
    ];
    for (const [key, form] of asked) {
      const misfit = form(own(value, key), under(path, key));
      if (misfit !== undefined) return misfit;
    }
    return undefined;
  };
