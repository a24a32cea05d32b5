/**
 * Taking figures in, and refusing the ones that cannot be answered.
 *
 * A guard is a decision with the error that follows when it does not hold. The decisions go back with the answer, so
 * that a study knows for which of its variants the recorded working still speaks.
 */
import { type Either, left, right } from 'fp-ts/lib/Either.js';
import { constant, type Decision, type Derived, decide } from '../trace/index.js';
import { type Quantity, quantity, type Unit } from '../units/index.js';
import type { LoadingError } from './loading-errors.js';

/** A comparison that must hold, and what is wrong when it does not. */
export interface Guard {
  readonly decision: Decision;
  readonly otherwise: LoadingError;
}

const nothing = <U extends Unit>(unit: U): Derived<U> => constant(quantity(0, unit));

export const mustBeAboveZero = <U extends Unit>(what: string, figure: Derived<U>): Guard => ({
  decision: decide(figure, '>', nothing(figure.value.unit)),
  otherwise: { chapter: 'load', tag: 'MustBeAboveZero', what, found: figure.value },
});

export const mustNotBeNegative = <U extends Unit>(what: string, figure: Derived<U>): Guard => ({
  decision: decide(figure, '>=', nothing(figure.value.unit)),
  otherwise: { chapter: 'load', tag: 'MustNotBeNegative', what, found: figure.value },
});

export const inOrder = <U extends Unit>(what: string, low: Derived<U>, high: Derived<U>): Guard => ({
  decision: decide(low, '<=', high),
  otherwise: { chapter: 'load', tag: 'EndsReversed', what, low: low.value, high: high.value },
});

/** Between two figures, the ends included or not. */
export function between<U extends Unit>(
  what: string,
  figure: Derived<U>,
  from: Derived<U>,
  to: Derived<U>,
  ends: 'included' | 'excluded',
): readonly Guard[] {
  const otherwise: LoadingError = {
    chapter: 'load',
    tag: 'OutsideItsRange',
    what,
    found: figure.value,
    from: from.value,
    to: to.value,
  };
  const [low, high] = ends === 'included' ? (['>=', '<='] as const) : (['>', '<'] as const);
  return [
    { decision: decide(figure, low, from), otherwise },
    { decision: decide(figure, high, to), otherwise },
  ];
}

/** A figure of the formula, in its unit. */
export const fixed = <U extends Unit>(value: Quantity<U>): Derived<U> => constant(value);

/** The decisions when every guard holds; otherwise the error of the first that does not. */
export function allHold(guards: readonly Guard[]): Either<LoadingError, readonly Decision[]> {
  const failed = guards.find(({ decision }) => !decision.holds);
  return failed === undefined ? right(guards.map(({ decision }) => decision)) : left(failed.otherwise);
}

/** A count from a program is a whole number, from one to what a trailer may have. */
export function wholeCount(what: string, found: number, most = 1000): Either<LoadingError, Derived<'ratio'>> {
  if (!Number.isInteger(found) || found < 1 || found > most)
    return left({ chapter: 'load', tag: 'NotACount', what, found: String(found), most });
  return right(constant(quantity(found, 'ratio'), what));
}
