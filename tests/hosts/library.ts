/** What the tests of hosts bundle and run in other processes: answers, reports and errors in words, as one digest. */
import { createHash } from 'node:crypto';
import { isLeft } from 'fp-ts/lib/Either.js';
import { assess } from '../../src/assessment/index.js';
import { describeError } from '../../src/errors.js';
import { report } from '../../src/print/index.js';
import { outlineOf } from '../helpers/outline.js';

/** Everything that is said to these specs, as one short text. */
export function digestOf(specs: readonly unknown[]): string {
  const hash = createHash('sha256');
  for (const spec of specs) {
    const answer = assess(spec as never);
    hash.update(isLeft(answer) ? describeError(answer.left) : report(answer.right));
    hash.update(JSON.stringify(outlineOf(spec)));
  }
  return hash.digest('hex');
}
