/** A spec with its one piece of cargo at another weight and place, for the laws of its places. */
import type { Assessment } from '../../src/assessment/index.js';
import { Decimal } from '../../src/units/internal.js';
import { digitsAndUnit } from './random/leaves.js';
import type { JsonSpec } from './random-specs.js';

type Json = Record<string, unknown>;

const poundsIn: Readonly<Record<string, string>> = { lb: '1', kg: '0.45359237', t: '0.00045359237' };

/** A weight of a spec in pounds. */
export function poundsOf(figure: unknown): Decimal {
  const { digits, unit } = digitsAndUnit(figure);
  return new Decimal(digits).div(poundsIn[unit] ?? '1');
}

/** Whether the reader takes such a place of a piece. */
export const isPlace = (at: Decimal): boolean => at.gte(-120) && at.lte(1200);

const inches = (at: Decimal): string => `${at.toDecimalPlaces(24).toFixed()} in`;

export const piecesOf = (spec: JsonSpec): readonly Json[] => (spec['cargo'] ?? []) as readonly Json[];

/** A piece at another weight and place; the shares of its axles stay. */
export function pieceAt(piece: Json, weight: Decimal, at: Decimal): Json {
  const { front: _front, axles, ...rest } = piece;
  const scale = axles === undefined ? undefined : weight.div(poundsOf(piece['weight']));
  const scaled = (axles as readonly unknown[] | undefined)?.map(
    (axle) =>
      `${poundsOf(axle)
        .times(scale ?? 1)
        .toDecimalPlaces(24)
        .toFixed()} lb`,
  );
  return { ...rest, weight: `${weight.toFixed()} lb`, at: inches(at), ...(scaled && { axles: scaled }) };
}

/** Ids of what is over by more than a thousandth of a pound, and names of what lifts by more. */
export function wrongIn({ checks, uplift }: Assessment): readonly string[] {
  return [
    ...checks.flatMap(({ id, reserve }) => (reserve.value.value.lt('-0.001') ? [id] : [])),
    ...uplift.lifted.flatMap(({ what, load }) => (load.value.value.lt('-0.001') ? [`lifts: ${what}`] : [])),
  ];
}
