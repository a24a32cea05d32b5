/** Rounding by name. Capacities go down, loads go up, and each figure is rounded once, when it is printed. */
import { compareDecimals, snap } from './closeness.js';
import { Decimal } from './decimal.js';
import { boundOfProduct, boundOfQuotient } from './doubles.js';
import { begin, boundOf, doubleOf, laterFrom, ofDecimal } from './figure.js';
import { signOfFigure } from './order.js';
import type { Quantity } from './quantity.js';
import type { Unit } from './unit-list.js';

export type RoundingMode = 'down' | 'up' | 'nearest' | 'nearest-down';

/**
 * Snap, then round to a multiple of `step`. `down` is toward minus infinity, `up` toward plus infinity, `nearest` sends
 * halves away from zero, `nearest-down` sends halves toward zero.
 */
export function roundToStep(value: Decimal, step: Decimal, mode: RoundingMode): Decimal {
  if (!step.gt(0)) throw new RangeError('a rounding step is greater than zero');
  const steps = value.div(step);
  const whole = steps.toDecimalPlaces(0, Decimal.ROUND_HALF_UP);
  const snapped = compareDecimals(steps, whole) === 0 ? whole : snap(steps);
  const modes = {
    down: Decimal.ROUND_FLOOR,
    up: Decimal.ROUND_CEIL,
    nearest: Decimal.ROUND_HALF_UP,
    'nearest-down': Decimal.ROUND_HALF_DOWN,
  } as const;
  return snapped.toDecimalPlaces(0, modes[mode]).times(step);
}

/**
 * How many steps a rounded figure is, by its double; undefined where the double is too near to a rounding edge.
 * Exact figures are rounded exactly, halves as `roundToStep` says.
 */
export function stepsOfDouble(steps: number, bound: number, mode: RoundingMode): number | undefined {
  if (!(Math.abs(steps) < 2 ** 40)) return undefined;
  const below = Math.floor(steps);
  const past = steps - below;
  const turns = mode === 'down' || mode === 'up' ? Math.min(past, 1 - past) : Math.abs(past - 0.5);
  if (bound > 0 && turns <= bound * 1.001 + 1e-12) return undefined;
  switch (mode) {
    case 'down':
      return below;
    case 'up':
      return past === 0 ? below : below + 1;
    case 'nearest':
      return past > 0.5 || (past === 0.5 && steps > 0) ? below + 1 : below;
    case 'nearest-down':
      return past > 0.5 || (past === 0.5 && steps < 0) ? below + 1 : below;
  }
}

/** A figure rounded to a step, by its double: the number of steps, and their sum. */
export interface RoundedDouble {
  readonly steps: number;
  readonly double: number;
  /** Not finite where the decimals must be asked. */
  readonly bound: number;
}

const unknown: RoundedDouble = { steps: Number.NaN, double: Number.NaN, bound: Infinity };

export function roundedDouble(q: Quantity<Unit>, step: Quantity<Unit>, mode: RoundingMode): RoundedDouble {
  const figure = doubleOf(q);
  const size = doubleOf(step);
  const bound = boundOfQuotient(figure, boundOf(q), size, boundOf(step), figure / size);
  const steps = stepsOfDouble(figure / size, bound, mode);
  if (steps === undefined) return unknown;
  return { steps, double: steps * size, bound: boundOfProduct(steps, 0, size, boundOf(step), steps * size) };
}

interface Steps {
  readonly steps: number;
  readonly step: Quantity<Unit>;
}

const ofSteps = (made: object): Decimal => (made as Steps).step.value.times((made as Steps).steps);

function rounded<U extends Unit>(q: Quantity<U>, step: Quantity<NoInfer<U>>, mode: RoundingMode): Quantity<U> {
  mustBeStep(step);
  const { steps, double, bound } = roundedDouble(q, step, mode);
  if (!(bound < Infinity)) return ofDecimal(roundToStep(q.value, step.value, mode), q.unit);
  const made = laterFrom(q.unit, double, bound, ofSteps);
  begin(made, { steps, step } satisfies Steps);
  return made;
}

/** Throws for a step that is not a positive number. */
export function mustBeStep(step: Quantity<Unit>): void {
  if (signOfFigure(step) <= 0) throw new RangeError('a rounding step is greater than zero');
}

/** What may be carried: down to a multiple of `step`. @example show(roundCapacityDown(lb('10752.9'), lb(1))) // 10,752 lb */
export const roundCapacityDown = <U extends Unit>(q: Quantity<U>, step: Quantity<NoInfer<U>>): Quantity<U> =>
  rounded(q, step, 'down');

/** What must be borne: up to a multiple of `step`. @example show(roundLoadUp(lb('1631.2'), lb(1))) // 1,632 lb */
export const roundLoadUp = <U extends Unit>(q: Quantity<U>, step: Quantity<NoInfer<U>>): Quantity<U> =>
  rounded(q, step, 'up');

/** A load as it is printed: up, and one that lifts away from zero too, since it must be held down. */
export const roundLoadAway = <U extends Unit>(q: Quantity<U>, step: Quantity<NoInfer<U>>): Quantity<U> =>
  rounded(q, step, signOfFigure(q) < 0 ? 'down' : 'up');

/** To the nearest multiple of `step`, halves away from zero: for figures that are neither capacity nor load. @example show(roundNearest(lb(1250), lb(100))) // 1,300 lb */
export const roundNearest = <U extends Unit>(q: Quantity<U>, step: Quantity<NoInfer<U>>): Quantity<U> =>
  rounded(q, step, 'nearest');
