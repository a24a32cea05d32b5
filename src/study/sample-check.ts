/** A sample of rows is assessed from its spec and compared with the tape before a study is handed over. */
import { isLeft } from 'fp-ts/lib/Either.js';
import type { assess } from '../assessment/index.js';
import type { Chunks } from './chunks.js';
import type { TapeMismatch } from './errors.js';
import type { Measure } from './variant.js';
import { fromAssessment } from './whole-rows.js';

/** How far a double may stand from the exact figure, as a share of it (of one, near zero). */
const tolerance = 1e-9;

export function checkSample(
  chunks: Chunks,
  sample: readonly number[],
  names: readonly string[],
  exactly: typeof assess,
  measure: Measure,
): TapeMismatch | undefined {
  for (const row of sample) {
    const [chunk] = chunks.run(row, row + 1, names);
    if (chunk === undefined) continue;
    const spec = chunks.specAt(row);
    const assessed = isLeft(spec) ? spec : exactly(spec.right);
    const outcome = isLeft(assessed) ? assessed : fromAssessment(assessed.right, names, measure);
    const mismatch = (column: string, tape: string, exact: string): TapeMismatch => ({
      chapter: 'study',
      tag: 'TapeMismatch',
      row,
      column,
      tape,
      exact,
    });
    if (isLeft(outcome)) {
      if (!chunk.unanswered.has(0)) return mismatch('answer', 'answered', outcome.left.tag);
      continue;
    }
    if (chunk.unanswered.has(0)) return mismatch('answer', 'no answer', 'answered');
    for (const [k, name] of names.entries()) {
      const [tape, exact] = [chunk.figures[k]?.[0] as number, outcome.right.figures[k] as number];
      if (!(Math.abs(tape - exact) <= tolerance * Math.max(1, Math.abs(exact))))
        return mismatch(name, String(tape), String(exact));
    }
    if ((chunk.holds[0] === 1) !== outcome.right.holds)
      return mismatch('holds', String(chunk.holds[0] === 1), String(outcome.right.holds));
    const governs = String(chunk.governNames[chunk.governs[0] as number]);
    if (governs !== outcome.right.governs) return mismatch('governs', governs, outcome.right.governs);
  }
  return undefined;
}
