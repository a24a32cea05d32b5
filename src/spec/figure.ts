/**
 * Figures in a spec: text as people write it, a wire record, or either with what it rests on:
 * `"9,200 lb"`, `{"value":"9200","unit":"lb"}`, `{"text":"9,200 lb","basis":"scale"}`.
 *
 * What comes out is a leaf of the working that knows its place in the spec.
 */

import { isLeft } from 'fp-ts/lib/Either.js';
import * as t from 'io-ts';
import { type Basis, bases, type Derived, isBasis } from '../trace/index.js';
import {
  convert,
  type Dimension,
  parseAny,
  parseMeasure,
  type Quantity,
  quantity,
  show,
  type Unit,
  type UnitOf,
} from '../units/index.js';
import { neededToRead } from '../units/internal.js';

/** What a figure may be: its name, what it rests on when nothing is said, and its least and most. */
interface Field<D extends Dimension> {
  readonly symbol: string;
  readonly basis: Basis;
  readonly dimension: D;
  readonly least: Quantity<UnitOf<D>>;
  readonly most: Quantity<UnitOf<D>>;
}

export type Figure<D extends Dimension> = Derived<UnitOf<D>>;

export function pathOf(context: t.Context): string {
  let path = '';
  for (const { key } of context) if (key !== '') path = path === '' ? key : `${path}.${key}`;
  return path;
}

/** A figure of each kind as people write it, for the words of an error. */
const written: Partial<Record<Dimension, string>> = {
  length: '"187 in"',
  pressure: '"80 psi"',
  ratio: '"12 %"',
  angle: '"15 deg"',
  'weight per length': '"2,200 lb/in"',
};
const bareNumber = /^[\d,.\s]+$/;

interface Said {
  readonly figure: unknown;
  readonly basis: Basis | undefined;
  readonly wrong?: string;
}

/** Takes the basis off a record, leaving the text or the wire record. */
function said(input: unknown): Said {
  if (typeof input !== 'object' || input === null || Array.isArray(input)) return { figure: input, basis: undefined };
  const { basis, text, ...rest } = input as Record<string, unknown>;
  const figure = text === undefined ? rest : text;
  const stray = text === undefined ? undefined : Object.keys(rest)[0];
  if (stray !== undefined)
    return { figure, basis: undefined, wrong: `a known key: text, basis (there is "${stray.slice(0, 40)}")` };
  if (basis === undefined) return { figure, basis: undefined };
  return typeof basis === 'string' && isBasis(basis)
    ? { figure, basis }
    : { figure, basis: undefined, wrong: `a basis: one of ${bases.join(', ')}` };
}

function read<D extends Dimension>(figure: unknown, dimension: D): Quantity<UnitOf<D>> | string {
  if (typeof figure === 'string') {
    const parsed = parseMeasure(figure, dimension);
    if (!isLeft(parsed)) return parsed.right;
    if (bareNumber.test(figure))
      return `a unit behind the figure: a figure of ${dimension} as text, such as ${written[dimension] ?? '"9,200 lb"'}`;
    return neededToRead(parsed.left);
  }
  if (typeof figure === 'object' && figure !== null && Object.keys(figure).sort().join() === 'unit,value') {
    const { value, unit } = figure as Record<string, unknown>;
    if (typeof value !== 'string' || typeof unit !== 'string') return 'digits as text and the name of a unit';
    const parsed = parseAny(`${value} ${unit}`);
    if (isLeft(parsed)) return neededToRead(parsed.left);
    return read(show(parsed.right), dimension);
  }
  return `a figure with its unit as text, such as ${written[dimension] ?? '"9,200 lb"'}: ${dimension}`;
}

const isWithin = (value: Quantity<Unit>, least: Quantity<Unit>, most: Quantity<Unit>): boolean =>
  value.value.gte(least.value) && value.value.lte(most.value);

/** What to write for a figure outside its ends; a plain number that would do as a percentage was meant as one. */
function withinEnds(value: Quantity<Unit>, least: Quantity<Unit>, most: Quantity<Unit>): string {
  if (value.unit !== 'ratio') return `a figure from ${show(least)} to ${show(most)}`;
  const meant = quantity(value.value, '%');
  const [low, high] = [convert(least as Quantity<'ratio'>, '%'), convert(most as Quantity<'ratio'>, '%')];
  if (!isWithin(meant, low, high)) return `a figure from ${show(low)} to ${show(high)}`;
  return `a percentage: ${show(value)} is ${show(convert(value as Quantity<'ratio'>, '%'))}; write ${show(meant)}`;
}

/** A figure of one dimension as a leaf of the working. */
export function figureCodec<D extends Dimension>({
  symbol,
  basis,
  dimension,
  least,
  most,
}: Field<D>): t.Type<Figure<D>, unknown, unknown> {
  const name = `a figure of ${dimension}, as text with its unit`;
  return new t.Type<Figure<D>, unknown, unknown>(
    name,
    (input): input is Figure<D> => typeof input === 'object' && input !== null && 'why' in input,
    (input, context) => {
      const { figure, basis: told, wrong } = said(input);
      if (wrong !== undefined) return t.failure(input, context, wrong);
      const value = read(figure, dimension);
      if (typeof value === 'string') return t.failure(input, context, value);
      const [from, to] = [least, most].map(
        (end) => convert(end as Quantity<Unit>, value.unit as never) as Quantity<Unit>,
      ) as [Quantity<Unit>, Quantity<Unit>];
      if (!isWithin(value, from, to)) return t.failure(input, context, withinEnds(value, least, most));
      return t.success({
        value,
        why: {
          kind: 'given',
          symbol,
          value,
          basis: told ?? basis,
          path: pathOf(context),
          between: [from.value, to.value],
          written: typeof figure === 'string' ? figure : undefined,
        },
      } as Figure<D>);
    },
    t.identity,
  );
}

/** A rating from a label or a stamping: above zero. */
export const ratingOf = (symbol: string): t.Type<Figure<'mass'>, unknown, unknown> =>
  figureCodec({ symbol, basis: 'label', dimension: 'mass', least: quantity(1, 'lb'), most: quantity(200000, 'lb') });

/** A weight: zero or more. */
export const weightOf = (
  symbol: string,
  basis: Basis = 'stated',
  least: number = 0,
): t.Type<Figure<'mass'>, unknown, unknown> =>
  figureCodec({ symbol, basis, dimension: 'mass', least: quantity(least, 'lb'), most: quantity(200000, 'lb') });

/** A place along the trailer, or a size; `least` may be negative for what stands ahead of the coupler. */
export const lengthOf = (
  symbol: string,
  least: number = 0,
  basis: Basis = 'stated',
): t.Type<Figure<'length'>, unknown, unknown> =>
  figureCodec({ symbol, basis, dimension: 'length', least: quantity(least, 'in'), most: quantity(1200, 'in') });

/** A cold pressure. */
export const pressureOf = (symbol: string): t.Type<Figure<'pressure'>, unknown, unknown> =>
  figureCodec({
    symbol,
    basis: 'stated',
    dimension: 'pressure',
    least: quantity(1, 'psi'),
    most: quantity(200, 'psi'),
  });

/** A share of one, written as a percentage or a plain number. */
export const shareOf = (symbol: string, least = '0.001', most = '0.999'): t.Type<Figure<'ratio'>, unknown, unknown> =>
  figureCodec({
    symbol,
    basis: 'stated',
    dimension: 'ratio',
    least: quantity(least, 'ratio'),
    most: quantity(most, 'ratio'),
  });

/** An angle from level. */
export const angleOf = (symbol: string): t.Type<Figure<'angle'>, unknown, unknown> =>
  figureCodec({ symbol, basis: 'stated', dimension: 'angle', least: quantity(0, 'deg'), most: quantity(80, 'deg') });

/** A spring rate. */
export const rateOf = (symbol: string): t.Type<Figure<'weight per length'>, unknown, unknown> =>
  figureCodec({
    symbol,
    basis: 'stated',
    dimension: 'weight per length',
    least: quantity(1, 'lb/in'),
    most: quantity(100000, 'lb/in'),
  });
