/** Short ways to the answer of an Either in tests: the right side, or a failing test that shows the error. */
import { type Either, isLeft } from 'fp-ts/lib/Either.js';
import type { Derived } from '../../src/trace/index.js';
import type { Unit } from '../../src/units/index.js';

export function answer<E, A>(either: Either<E, A>): A {
  if (isLeft(either)) throw new Error(`expected an answer, found ${JSON.stringify(either.left)}`);
  return either.right;
}

export function refusal<E, A>(either: Either<E, A>): E {
  if (isLeft(either)) return either.left;
  throw new Error('expected a refusal, found an answer');
}

/** For comparison with printed figures only. */
export const plain = (figure: Derived<Unit>): number => figure.value.value.toNumber();

/** How far a figure stands from a printed one, in per cent of the printed one. */
export const gapPercent = (figure: Derived<Unit>, printed: number): number => 100 * (plain(figure) / printed - 1);
