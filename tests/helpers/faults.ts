/** What is wrong with an answer or a refusal, whatever was asked: an exception, a figure that is none, a hole in a sentence. */
import { type Either, isLeft } from 'fp-ts/lib/Either.js';
import { assess } from '../../src/assessment/index.js';
import { describeError, type TrailerError } from '../../src/errors.js';
import { report } from '../../src/print/index.js';
import { workingsIn } from './specs.js';

/** What a hole in a text looks like. */
const hole = /\bundefined\b|\[object/;

export interface Outcome {
  readonly answered: boolean;
  /** What is wrong; absent when nothing is. */
  readonly fault?: string;
}

const thrown = (problem: unknown): string =>
  problem instanceof Error ? (problem.stack ?? problem.message) : 'a throw';

/** Asks a spec and looks at every figure; writes the report too when told so. */
export function outcomeOf(spec: unknown, { withReport }: { readonly withReport: boolean }): Outcome {
  try {
    const answer = assess(spec as never);
    if (isLeft(answer)) {
      const words = describeError(answer.left);
      return hole.test(words) ? { answered: false, fault: words } : { answered: false };
    }
    for (const { value, why } of workingsIn(answer.right))
      if (!value.value.isFinite()) return { answered: true, fault: `${why.symbol ?? why.kind} is no number` };
    if (withReport && hole.test(report(answer.right))) return { answered: true, fault: 'a hole in the report' };
    return { answered: true };
  } catch (problem) {
    return { answered: false, fault: thrown(problem) };
  }
}

/** Asks a parser; its refusal must find words. */
export function faultOfParser(parse: (text: string) => Either<unknown, unknown>, text: string): string | undefined {
  try {
    const read = parse(text);
    if (!isLeft(read)) return undefined;
    const words = describeError(read.left as TrailerError);
    return words.length > 0 && words.length < 2000 ? undefined : `${words.length} letters of words`;
  } catch (problem) {
    return thrown(problem);
  }
}
