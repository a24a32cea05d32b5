/** Taking the answer or the error out of an Either, or failing the test with what stood there instead. */
import { type Either, isLeft } from 'fp-ts/lib/Either.js';

export function rightOf<E, A>(either: Either<E, A>): A {
  if (isLeft(either)) throw new Error(`an answer was expected: ${JSON.stringify(either.left)}`);
  return either.right;
}

export function leftOf<E, A>(either: Either<E, A>): E {
  if (!isLeft(either)) throw new Error('an error was expected, an answer came');
  return either.left;
}
