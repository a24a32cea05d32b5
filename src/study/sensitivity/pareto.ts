/** Which rows of a study are beaten by no other: of several goals, none can be bettered without giving up another. */
import { type Either, left, right } from 'fp-ts/lib/Either.js';
import type { AssessmentVerdict } from '../../assessment/index.js';
import { aFunction, anything, aRecord, aText, listOf } from '../../units/internal.js';
import type { StudyError } from '../errors.js';
import type { Row } from '../output/rows.js';
import type { Chunk } from '../run/buffers.js';
import { verdictCode } from '../run/verdict-codes.js';
import type { Study } from '../study.js';

/** A figure or a varied path, and whether much or little of it is wanted. */
export interface Goal {
  /** The name of a figure of the study, or the path of an input. */
  readonly of: string;
  /** Whether more of it is better, or less. */
  readonly want: 'most' | 'least';
}

/** What is asked, where types did not check it. */
const asked = aRecord({
  study: aRecord({ figures: listOf(anything), inputs: listOf(anything), chunks: aFunction, rows: aFunction }),
  goals: listOf(aRecord({ of: aText, want: aText })),
  verdicts: listOf(aText),
});

/** Doubles of a study agree with the exact figures to nine digits; smaller differences count as equal. */
const rounded = (x: number): number => Number(x.toPrecision(9));

/** A row by its number, with each goal as a figure of which more is better. */
interface Candidate {
  readonly row: number;
  readonly scores: readonly number[];
}

const atLeastAsGood = (a: readonly number[], b: readonly number[]): boolean =>
  a.every((score, k) => score >= (b[k] as number));
const alike = (a: readonly number[], b: readonly number[]): boolean => a.every((score, k) => score === b[k]);

/** The rows that a new row does not beat, and the new row unless one of them beats it. Equal rows are all kept. */
function joinedBy(front: readonly Candidate[], next: Candidate): readonly Candidate[] {
  for (const { scores } of front) if (atLeastAsGood(scores, next.scores) && !alike(scores, next.scores)) return front;
  return [...front.filter(({ scores }) => alike(scores, next.scores) || !atLeastAsGood(next.scores, scores)), next];
}

/**
 * Which of these builds are worth a look: those that no other beats in every goal?
 *
 * A row beats another when it is at least as good in every goal and better in one; figures are compared to nine digits, as a
 * study knows them. Memory grows with the rows that are kept, not with those that are read.
 *
 * @param study any study; all of its rows are run
 * @param goals figures by name or inputs by path, the most or the least of each
 * @param verdicts which rows may be among them; those within by default
 * @returns the rows in the order of the study; Left `UnknownPath` for a goal that is no figure, `UnusableVariation` for none at all
 * @example orThrow(pareto(s, [{ of: 'payload', want: 'most' }, { of: 'gross weight', want: 'least' }], ['attention', 'within'])).length // 2; two rows that are alike
 * @source the usual meaning of a Pareto front; any textbook of decisions; from memory
 */
export function pareto(
  study: Study,
  goals: readonly Goal[],
  verdicts: readonly AssessmentVerdict[] = ['within'],
): Either<StudyError, readonly Row[]> {
  const misfit = asked({ study, goals, verdicts }, '');
  if (misfit !== undefined) return left({ chapter: 'study', tag: 'UnusableVariation', ...misfit });
  if (goals.length === 0)
    return left({ chapter: 'study', tag: 'UnusableVariation', path: 'goals', found: 'none', needed: 'one or more' });
  const figures = study.figures.map(({ name }) => name);
  const inputs = study.inputs.map(({ path }) => path);
  const known = [...figures, ...inputs];
  const unknown = goals.find(({ of }) => !known.includes(of));
  if (unknown !== undefined) return left({ chapter: 'study', tag: 'UnknownPath', path: unknown.of, nearest: known });
  const columnsOf = ({ figures: measured, inputs: varied }: Chunk): readonly Float64Array[] =>
    goals.map(
      ({ of }) => (figures.includes(of) ? measured[figures.indexOf(of)] : varied[inputs.indexOf(of)]) as Float64Array,
    );
  const codes = verdicts.map(verdictCode);
  let front: readonly Candidate[] = [];
  for (const chunk of study.chunks()) {
    const columns = columnsOf(chunk);
    for (let i = 0; i < chunk.rows; i += 1) {
      if (chunk.reasons[i] !== 0 || !codes.includes(chunk.verdict[i] as number)) continue;
      const scores = goals.map(({ want }, k) => rounded((columns[k]?.[i] as number) * (want === 'most' ? 1 : -1)));
      front = joinedBy(front, { row: chunk.start + i, scores });
    }
  }
  return right(front.flatMap(({ row }) => [...study.rows(row, row + 1)]));
}
