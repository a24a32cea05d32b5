/** For tests: the answer, or a failure that shows the error. */
import { type Either, isLeft } from 'fp-ts/lib/Either.js';

export function orThrow<E, A>(either: Either<E, A>): A {
  if (isLeft(either)) throw new Error(JSON.stringify(either.left));
  return either.right;
}

export function leftOf<E, A>(either: Either<E, A>): E {
  if (!isLeft(either)) throw new Error('an error was expected, and an answer came');
  return either.left;
}
