/** An independent reading of a working in 60 digits; values are snapped only where a step rounds or chooses. */
import { Decimal } from 'decimal.js';
import type { Reading } from '../../src/trace/index.js';

export const Sixty = Decimal.clone({ defaults: true, precision: 60 });

const halfTurn = new Sixty(180);
const pi = Sixty.acos(-1);

/** Two figures that agree to 24 digits are one figure: the rule of every comparison. */
function order(a: Decimal, b: Decimal): number {
  const gap = a.minus(b);
  const size = Sixty.max(a.abs(), b.abs());
  return gap.abs().lte(size.times('1e-24')) ? 0 : gap.s;
}

const modes = {
  down: Decimal.ROUND_FLOOR,
  up: Decimal.ROUND_CEIL,
  nearest: Decimal.ROUND_HALF_UP,
  'nearest-down': Decimal.ROUND_HALF_DOWN,
} as const;

/** A figure within 1e-40 of a half or a whole one is that figure: 60 digits do not come back to it after a division. */
function settled(steps: Decimal): Decimal {
  const halves = steps.times(2).round().div(2);
  return steps.minus(halves).abs().lt('1e-40') ? halves : steps;
}

export const sixtyReading: Reading<Decimal> = {
  leaf: (value) => new Sixty(value.toFixed()),
  sum: (terms) => terms.reduce((total, term) => total.plus(term)),
  difference: (a, b) => a.minus(b),
  product: (a, b) => a.times(b),
  quotient: (a, b) => a.div(b),
  least: (terms) => terms.reduce((best, term) => (order(term, best) < 0 ? term : best)),
  greatest: (terms) => terms.reduce((best, term) => (order(term, best) > 0 ? term : best)),
  convert: (a, { times, over }) => a.times(times.toFixed()).div(over.toFixed()),
  round: (a, step, mode) => settled(a.div(step.toFixed())).toDecimalPlaces(0, modes[mode]).times(step.toFixed()),
  squareRoot: (a) => a.sqrt(),
  power: (a, b) => a.pow(b),
  sine: (a) => a.times(pi).div(halfTurn).sin(),
  cosine: (a) => a.times(pi).div(halfTurn).cos(),
  tangent: (a) => a.times(pi).div(halfTurn).tan(),
  arcSine: (a) => a.asin().times(halfTurn).div(pi),
  arcTangent: (a) => a.atan().times(halfTurn).div(pi),
};

/** The very figure of a double; by its printed digits it would be another one, up to half a last place away. */
export function exactly(double: number): Decimal {
  let [whole, halvings] = [double, 0];
  while (!Number.isInteger(whole)) {
    whole *= 2;
    halvings += 1;
  }
  return new Sixty(BigInt(whole).toString()).div(new Sixty(2).pow(halvings));
}
