/** For tests: the answer or the error of an Either, or a failing test that shows what stood there instead. */
import { type Either, isLeft } from 'fp-ts/lib/Either.js';
import type { Derived } from '../../src/trace/index.js';
import type { Unit } from '../../src/units/index.js';

export function rightOf<E, A>(either: Either<E, A>): A {
  if (isLeft(either)) throw new Error(`an answer was expected: ${JSON.stringify(either.left)}`);
  return either.right;
}

export function leftOf<E, A>(either: Either<E, A>): E {
  if (!isLeft(either)) throw new Error('an error was expected, and an answer came');
  return either.left;
}

/** For comparison with printed figures only. */
export const plain = (figure: Derived<Unit>): number => figure.value.value.toNumber();

/** How far a figure stands from a printed one, in per cent of the printed one. */
export const gapPercent = (figure: Derived<Unit>, printed: number): number => 100 * (plain(figure) / printed - 1);
