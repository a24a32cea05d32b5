/** The recorded steps that leave the rational numbers: roots, powers, angles. */
import {
  arcSineOf,
  arcTangentOf,
  boundOfArcSine,
  boundOfArcTangent,
  boundOfRoot,
  boundOfSine,
  boundOfTangent,
  cosineOf,
  sineOf,
  tangentOf,
} from '../units/doubles.js';
import { boundOf, doubleOf } from '../units/figure.js';
import type { Unit } from '../units/index.js';
import type { Derived, Operation } from './node.js';
import type { Source } from './source.js';
import { type Name, recordedOfOne, recordedOfTwo } from './step.js';

const squares = { in2: 'in', ft2: 'ft', m2: 'm', ratio: 'ratio' } as const satisfies Partial<Record<Unit, Unit>>;

/** The units that have a square root. */
export type Rootable = keyof typeof squares;
/** The unit of the square root. */
export type RootOf<U extends Rootable> = (typeof squares)[U];

/** The square root of an area is a length, of a plain number a plain number. The caller has ruled out a negative one. @example squareRoot('side', given('area', inch2(9))) // 3 in */
export function squareRoot<U extends Rootable>(symbol: Name, a: Derived<U>, source?: Source): Derived<RootOf<U>> {
  const double = Math.sqrt(doubleOf(a.value));
  const bound = boundOfRoot(doubleOf(a.value), boundOf(a.value), double);
  return recordedOfOne(symbol, 'squareRoot', a, squares[a.value.unit], double, bound, source);
}

/** A plain number to a power. The caller has ruled out a negative one. @example power('ratio of loads', constant(ratio(4)), constant(ratio('0.5'))) // 2 */
export const power = (symbol: Name, a: Derived<'ratio'>, b: Derived<'ratio'>, source?: Source): Derived<'ratio'> =>
  recordedOfTwo(symbol, 'power', a, b, 'ratio', Number.NaN, Infinity, source);

type OfDouble = (double: number) => number;
type BoundOf = (double: number, bound: number, result: number) => number;

function angular<U extends Unit>(
  symbol: Name,
  operation: Operation,
  a: Derived<Unit>,
  unit: U,
  reckon: OfDouble,
  boundAfter: BoundOf,
): Derived<U> {
  const double = reckon(doubleOf(a.value));
  const bound = boundAfter(doubleOf(a.value), boundOf(a.value), double);
  return recordedOfOne(symbol, operation, a, unit, double, bound, undefined);
}

/** The sine of an angle. @example sine('rise of one', given('angle', degree(30))) // 0.5 */
export const sine = (symbol: Name, a: Derived<'deg'>): Derived<'ratio'> =>
  angular(symbol, 'sine', a, 'ratio', sineOf, boundOfSine);
/** The cosine of an angle. @example cosine('run of one', given('angle', degree(60))) // 0.5 */
export const cosine = (symbol: Name, a: Derived<'deg'>): Derived<'ratio'> =>
  angular(symbol, 'cosine', a, 'ratio', cosineOf, boundOfSine);
/** The tangent of an angle. @example tangent('slope', given('angle', degree(45))) // 1 */
export const tangent = (symbol: Name, a: Derived<'deg'>): Derived<'ratio'> =>
  angular(symbol, 'tangent', a, 'ratio', tangentOf, boundOfTangent);
/** The caller has ruled out a figure outside -1 to 1. @example arcSine('angle', constant(ratio('0.5'))) // 30 deg */
export const arcSine = (symbol: Name, a: Derived<'ratio'>): Derived<'deg'> =>
  angular(symbol, 'arcSine', a, 'deg', arcSineOf, boundOfArcSine);
/** The angle of a slope. @example arcTangent('angle', constant(ratio(1))) // 45 deg */
export const arcTangent = (symbol: Name, a: Derived<'ratio'>): Derived<'deg'> =>
  angular(symbol, 'arcTangent', a, 'deg', arcTangentOf, boundOfArcTangent);
