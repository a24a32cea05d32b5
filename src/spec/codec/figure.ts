/**
 * Figures in a spec: text as people write it, a wire record, either with what it rests on, or a `Quantity`:
 * `"9,200 lb"`, `{"value":"9200","unit":"lb"}`, `{"text":"9,200 lb","basis":"scale"}`, `lb(9200)`.
 *
 * The result is a leaf of the working with its full name and its path in the spec, in the unit the
 * library calculates in: the one place where it is named and converted.
 */
import * as t from 'io-ts';
import { type Basis, converted, type Derived, type Given, inUnit, type Node } from '../../trace/index.js';
import {
  convert,
  type Dimension,
  dimensionOf,
  type Quantity,
  quantity,
  show,
  type Unit,
  type UnitOf,
  wireQuantity,
} from '../../units/index.js';
import { isBetween } from '../../units/internal.js';
import type { FigureInput } from '../types/figures.js';
import { failed, isRecord, own, pathOf } from './fault.js';
import { type Coded, coded, type FigureKind } from './kind.js';
import { type Naming, symbolAt } from './naming.js';
import { isWrong, readFigure, said } from './read-figure.js';

/** What a figure may be: its name, its default basis, and its least and most. */
export interface Field<U extends Unit> {
  readonly symbol: Naming;
  readonly basis?: Basis;
  readonly least: Quantity<U>;
  readonly most: Quantity<U>;
}

/** The leaf behind a figure that was read: itself, or what it was converted from. None behind what is no node. */
export function givenBehind(why: unknown): Given | undefined {
  if (!isRecord(why)) return undefined;
  const node = why as unknown as Partial<Node>;
  if (node.kind === 'given') return node as Given;
  return node.kind === 'computed' && node.operation === 'convert' ? givenBehind(node.of?.[0]) : undefined;
}

const inOther = (end: Quantity<Unit>, unit: Unit): Quantity<Unit> => convert(end, unit as never) as Quantity<Unit>;

/** What to write for a figure outside its ends; a plain number that would do as a percentage was meant as one. */
function withinEnds(value: Quantity<Unit>, least: Quantity<Unit>, most: Quantity<Unit>): string {
  if (value.unit !== 'ratio') return `a figure from ${show(least)} to ${show(most)}`;
  const meant = quantity(value.value, '%');
  const [low, high] = [inOther(least, '%'), inOther(most, '%')];
  if (!isBetween(meant, low, high)) return `a figure from ${show(low)} to ${show(high)}`;
  return `a percentage: ${show(value)} is ${show(inOther(value, '%'))}; write ${show(meant)}`;
}

/** The ends in each unit that was asked for, worked out once. */
function endsIn(
  least: Quantity<Unit>,
  most: Quantity<Unit>,
): (unit: Unit) => readonly [Quantity<Unit>, Quantity<Unit>] {
  const known = new Map<Unit, readonly [Quantity<Unit>, Quantity<Unit>]>();
  return (unit) => {
    const before = known.get(unit);
    if (before !== undefined) return before;
    const ends = [inOther(least, unit), inOther(most, unit)] as const;
    known.set(unit, ends);
    return ends;
  };
}

function isFigure(input: unknown, says: FigureKind, ends: ReturnType<typeof endsIn>): boolean {
  if (!isRecord(input)) return false;
  const [value, why] = [own(input, 'value'), own(input, 'why')];
  if (!wireQuantity(says.dimension).is(value)) return false;
  const leaf = givenBehind(why);
  if (leaf === undefined || !wireQuantity(says.dimension).is(leaf.value)) return false;
  return (says.unit === undefined || value.unit === says.unit) && isBetween(leaf.value, ...ends(leaf.value.unit));
}

/** A figure as it was written: its text or its digits and unit, with its basis where that is not the usual one. */
function written({ why }: Derived<Unit>, usual: Basis): unknown {
  const { basis, value, written: text } = givenBehind(why) as Given;
  const told = basis === usual ? {} : { basis };
  if (text === undefined) return { ...wireQuantity(dimensionOf(value.unit)).encode(value), ...told };
  return basis === usual ? text : { text, ...told };
}

/** In the unit it is calculated in; a share stays in percent in the formula that uses it. */
function inOwnUnit(leaf: Derived<'lb'>, name: string, unit: Unit | undefined): Derived<'lb'> {
  if (unit === undefined) return leaf;
  return unit === 'ratio' ? inUnit(leaf, 'ratio' as 'lb') : converted(name, leaf, unit as 'lb');
}

function figureCodec<D extends Dimension>(says: FigureKind & { readonly dimension: D }, symbol: Naming) {
  const { basis: usual, dimension, least, most, unit } = says;
  const ends = endsIn(least, most);
  const codec = new t.Type<Derived<UnitOf<D>>, FigureInput<D>, unknown>(
    `a figure of ${dimension}, as text with its unit`,
    (input): input is Derived<UnitOf<D>> => isFigure(input, says, ends),
    (input, context) => {
      const figure = said(input);
      if (isWrong(figure)) return failed(input, context, figure.fault, figure.needed);
      const value: object = readFigure(figure.figure, dimension);
      if (isWrong(value)) return failed(input, context, value.fault, value.needed);
      const read = value as Quantity<Unit>;
      const [from, to] = ends(read.unit);
      if (!isBetween(read, from, to)) return failed(input, context, 'out of range', withinEnds(read, least, most));
      const name = symbolAt(symbol, context);
      const why: Given = {
        kind: 'given',
        symbol: name,
        value: read,
        basis: figure.basis ?? usual,
        path: pathOf(context),
        between: [from.value, to.value],
        written: typeof figure.figure === 'string' ? figure.figure : undefined,
      };
      const leaf = { value: read, why } as Derived<'lb'>;
      return t.success(inOwnUnit(leaf, name, unit) as Derived<UnitOf<D>>);
    },
    (figure) => written(figure as Derived<Unit>, usual) as FigureInput<D>,
  );
  return coded(codec, says);
}

/** A figure in the unit of its ends, whatever unit it was written in. */
export function figure<D extends Dimension, U extends UnitOf<D>>(
  dimension: D,
  { symbol, basis = 'stated', least, most }: Field<U>,
): Coded<Derived<U>, FigureInput<D>> {
  const { unit } = least as Quantity<Unit>;
  const ends = { least, most } as unknown as Pick<FigureKind, 'least' | 'most'>;
  return figureCodec({ kind: 'figure', dimension, unit, basis, ...ends }, symbol) as unknown as Coded<
    Derived<U>,
    FigureInput<D>
  >;
}

/** A figure in the unit it was written in: what it is multiplied with says what is needed. */
export function figureAsWritten<D extends Dimension>(
  dimension: D,
  { symbol, basis = 'stated', least, most }: Field<UnitOf<D>>,
): Coded<Derived<UnitOf<D>>, FigureInput<D>> {
  const ends = { least, most } as unknown as Pick<FigureKind, 'least' | 'most'>;
  return figureCodec({ kind: 'figure', dimension, unit: undefined, basis, ...ends }, symbol);
}
