/** One recorded step of every operation, with the formula it stands for and ranges of its parts (calculus). */
import type { Interval } from '../../src/choose/ranges/interval.js';
import {
  arcSine,
  arcTangent,
  type Computed,
  cosine,
  type Derived,
  difference,
  given,
  greatestOf,
  inUnit,
  leastOf,
  power,
  product,
  quotient,
  roundTo,
  sine,
  squareRoot,
  sum,
  tangent,
  weightAsForce,
} from '../../src/trace/index.js';
import { degree, lb, ratio, type Unit } from '../../src/units/index.js';

const radian = Math.PI / 180;
const [p, q, r] = [ratio('0.5'), ratio(3), ratio(2)].map((figure, i) => given(`part ${i}`, figure)) as [
  Derived<'ratio'>,
  Derived<'ratio'>,
  Derived<'ratio'>,
];
const angle = given('angle', degree(20));
const load = given('load', lb(900));

export interface Step {
  readonly node: Computed;
  readonly of: (...parts: readonly number[]) => number;
  readonly parts: readonly Interval[];
}

const step = (figure: Derived<Unit>, of: Step['of'], ...parts: readonly (readonly [number, number])[]): Step => ({
  node: figure.why as Computed,
  of,
  parts: parts.map(([low, high]) => ({ low, high })),
});

/** Steps that are smooth, by name. */
export const smooth: Readonly<Record<string, Step>> = {
  'a sum': step(sum('s', [p, q, r]), (a = 0, b = 0, c = 0) => a + b + c, [-2, 3], [1, 4], [0, 2]),
  'a difference': step(difference('s', p, q), (a = 0, b = 0) => a - b, [-2, 3], [1, 4]),
  'a product': step(product('s', p, q), (a = 0, b = 0) => a * b, [-2, 3], [1, 4]),
  'a quotient': step(quotient('s', p, q), (a = 0, b = 1) => a / b, [-2, 3], [1, 4]),
  'a conversion': step(inUnit(load, 'kg'), (a = 0) => a * 0.45359237, [800, 1000]),
  'a weight as a force': step(weightAsForce(null, load), (a = 0) => a, [800, 1000]),
  'a square root': step(squareRoot('s', p), Math.sqrt, [0.25, 9]),
  'a power': step(power('s', p, q), (a = 0, b = 0) => a ** b, [0.25, 3], [-2, 3]),
  'a sine': step(sine('s', angle), (a = 0) => Math.sin(a * radian), [-70, 80]),
  'a cosine': step(cosine('s', angle), (a = 0) => Math.cos(a * radian), [-70, 85]),
  'a tangent': step(tangent('s', angle), (a = 0) => Math.tan(a * radian), [-60, 70]),
  'an arc sine': step(arcSine('s', p), (a = 0) => Math.asin(a) / radian, [-0.8, 0.9]),
  'an arc tangent': step(arcTangent('s', p), (a = 0) => Math.atan(a) / radian, [-3, 5]),
};

/** Steps with kinks or jumps, by name. */
export const kinked: Readonly<Record<string, Step>> = {
  'a least': step(leastOf('s', [p, q, r]), Math.min, [-2, 3], [1, 4], [0, 9]),
  'a greatest': step(greatestOf('s', [p, q, r]), Math.max, [-2, 3], [1, 4], [-4, 2]),
  'rounding down': step(roundTo(load, lb(20), 'down'), (a = 0) => Math.floor(a / 20) * 20, [795, 1005]),
  'rounding up': step(roundTo(load, lb(20), 'up'), (a = 0) => Math.ceil(a / 20) * 20, [795, 1005]),
  'rounding to the nearest': step(
    roundTo(load, lb(20), 'nearest'),
    (a = 0) => Math.floor(a / 20 + 0.5) * 20,
    [785, 1015],
  ),
};

/** Places all over the ranges of the parts, the ends among them. */
export function placesIn(parts: readonly Interval[]): readonly (readonly number[])[] {
  return parts.reduce<readonly (readonly number[])[]>(
    (places, { low, high }) =>
      places.flatMap((place) => Array.from({ length: 8 }, (_, i) => [...place, low + ((high - low) * i) / 7])),
    [[]],
  );
}
