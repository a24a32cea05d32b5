/** A spec with its one piece of cargo at another weight and place, for the laws of payload and windows. */
import type { Assessment } from '../../src/assessment/index.js';
import { Decimal } from '../../src/units/internal.js';
import { answerTo } from './facts.js';
import { digitsAndUnit } from './random/leaves.js';
import type { JsonSpec } from './random-specs.js';

type Json = Record<string, unknown>;

const poundsIn: Readonly<Record<string, string>> = { lb: '1', kg: '0.45359237', t: '0.00045359237' };

/** A weight of a spec in pounds. */
export function poundsOf(figure: unknown): Decimal {
  const { digits, unit } = digitsAndUnit(figure);
  return new Decimal(digits).div(poundsIn[unit] ?? '1');
}

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

/** The spec with one piece only, of this weight, where it gives this share of the tongue; undefined where that is no place. */
export function loadedTo(spec: JsonSpec, empty: Assessment, weight: Decimal, share: Decimal): JsonSpec | undefined {
  const [a, balance] = [empty.runningGear.group?.at.value.value, empty.weights.balance];
  if (a === undefined || balance === undefined || weight.lte(0)) return undefined;
  const [curb, tongue] = [balance.gross.value.value, balance.tongue.value.value];
  const x = a.minus(curb.plus(weight).times(share).minus(tongue).times(a).div(weight));
  if (x.lt(-120) || x.gt(1200)) return undefined;
  const [first = { name: 'load', weight: '1 lb' }] = piecesOf(spec);
  return { ...spec, cargo: [pieceAt(first, weight, x)] };
}

/** The answer without cargo: what the empty trailer weighs and presses with. */
export const emptyAnswer = (spec: JsonSpec): Assessment | undefined => answerTo({ ...spec, cargo: [] });

/** Ids of what is over by more than a thousandth of a pound, and names of what lifts by more. */
export function wrongIn({ checks, lifted }: Assessment): readonly string[] {
  return [
    ...checks.flatMap(({ id, reserve }) => (reserve.value.value.lt('-0.001') ? [id] : [])),
    ...lifted.flatMap(({ what, load }) => (load.value.value.lt('-0.001') ? [`lifts: ${what}`] : [])),
  ];
}
