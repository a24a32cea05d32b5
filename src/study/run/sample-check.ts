/** Safety check of a study: a sample of rows is assessed from its specs and compared with the tapes before the study is returned. */
import { type Either, isLeft } from 'fp-ts/lib/Either.js';
import type { StudyFailure, TapeMismatch } from '../errors.js';
import { uniformAt } from '../plan/chance.js';
import type { Chunk } from './buffers.js';
import { reasonOf } from './reason.js';
import { forComparing, type WholeRow } from './rows-by-assess.js';
import type { Runner } from './runner.js';
import { tagsOf, verdictNames } from './verdict-codes.js';

/** How far a double may be from the exact figure, as a share of it (of one, near zero). */
const tolerance = 1e-9;

type Difference = Pick<TapeMismatch, 'column' | 'tape' | 'exact'>;

const difference = (column: string, tape: string, exact: string): Difference => ({ column, tape, exact });

/** The first difference between a chunk of one row and what `assess` says of it. */
function differenceIn(
  chunk: Chunk,
  outcome: Either<StudyFailure, WholeRow>,
  names: readonly string[],
): Difference | undefined {
  const reason = chunk.reasonNames[chunk.reasons[0] as number] as string;
  const expected = isLeft(outcome) ? reasonOf(outcome.left) : '';
  if (reason !== expected) return difference('answer', reason || 'answered', expected || 'answered');
  if (isLeft(outcome)) return undefined;
  const { figures, verdict, attention, governs } = outcome.right;
  for (const [k, name] of names.entries()) {
    const [tape, exact] = [chunk.figures[k]?.[0] as number, figures[k] as number];
    if (!(Math.abs(tape - exact) <= tolerance * Math.max(1, Math.abs(exact))))
      return difference(name, String(tape), String(exact));
  }
  const judged = verdictNames[chunk.verdict[0] as number] as string;
  if (judged !== verdict) return difference('verdict', judged, verdict);
  const asks = tagsOf(chunk.attention[0] as number, chunk.attentionNames);
  if (asks.length !== attention.length || attention.some((tag) => !asks.includes(tag)))
    return difference('attention', asks.join(' + '), attention.join(' + '));
  const named = String(chunk.governNames[chunk.governs[0] as number]);
  return named === governs ? undefined : difference('governs', named, governs);
}

/** Compares the sampled rows of a study of `count` rows; the first that differs is a defect. */
export function checkSample(runner: Runner, names: readonly string[], count: number): TapeMismatch | undefined {
  for (const row of sampledRows(count)) {
    const [chunk] = runner.run(row, row + 1);
    if (chunk === undefined) continue;
    const found = differenceIn(chunk, runner.assessed(row, forComparing), names);
    if (found !== undefined) return { chapter: 'study', tag: 'TapeMismatch', row, ...found };
  }
  return undefined;
}

/** Up to this many rows are all compared, and of a large study this many. */
const wholeSample = 24;

/** Which rows are compared: all of a small study, one in a hundred of a larger one, at most 24, spread by chance. */
export function sampledRows(count: number): readonly number[] {
  if (count <= wholeSample) return Array.from({ length: count }, (_, row) => row);
  const size = Math.min(wholeSample, Math.ceil(count / 100));
  const rows = new Set<number>();
  for (let i = 0; rows.size < size; i += 1) rows.add(Math.floor(uniformAt(20_011, i, 0) * count));
  return [...rows];
}
