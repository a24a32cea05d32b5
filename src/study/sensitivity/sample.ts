/** How sure a figure is: quantiles and the share that holds, of a sampled study. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import type { StudyFailure } from '../errors.js';
import type { ColumnTable } from '../output/columns.js';
import { type StudyPlan, study } from '../study.js';

/** A sampled study in short. */
export interface Spread {
  readonly runs: number;
  readonly unanswered: number;
  /** The share of answered runs in which every check holds, and the standard error of that share. */
  readonly holds: { readonly share: number; readonly standardError: number };
  /** The figure below which each asked share of the runs lies. */
  readonly quantiles: readonly { readonly share: number; readonly value: number }[];
  readonly table: ColumnTable;
}

/**
 * How sure is this answer when its inputs are not?
 *
 * `share = runs that hold / answered runs`; its standard error is `sqrt(share (1 - share) / runs)` (of a plain random sample; a Latin
 * hypercube is as good or better).
 *
 * @param plan as for `study`, with a sampled design
 * @param figure the figure whose quantiles are wanted
 * @param shares of the answered runs, 0 to 1 each; Left `UnusableVariation` for any other
 * @example orThrow(sample({ base: spec, vary: { 'cargo.0.weight': normal('9,000 lb', '225 lb') }, design: { kind: 'latin hypercube', runs: 200, seed: 1 } }, 'gross weight')).runs // 200
 * @source binomial standard error, any textbook of statistics; from memory
 */
export function sample(
  plan: StudyPlan,
  figure: string,
  shares: readonly number[] = [0.05, 0.5, 0.95],
): Either<StudyFailure, Spread> {
  const outside = shares.find((share) => !(share >= 0 && share <= 1));
  if (outside !== undefined)
    return left({
      chapter: 'study',
      tag: 'UnusableVariation',
      path: 'shares',
      found: String(outside),
      needed: 'shares of the runs from 0 to 1',
    });
  const made = study(plan);
  if (isLeft(made)) return made;
  const table = made.right.columns();
  if (isLeft(table)) return table;
  const values = table.right.data[figure];
  if (values === undefined)
    return left({
      chapter: 'study',
      tag: 'UnknownPath',
      path: figure,
      nearest: Object.keys(table.right.data).slice(0, 5),
    });
  const { length, holds, unanswered } = table.right;
  if (length === 0)
    return left({ chapter: 'study', tag: 'NoSolution', path: figure, what: figure, found: 'no answered run' });
  const sorted = Float64Array.from(values).sort();
  const share = holds.reduce((count, one) => count + one, 0) / length;
  const at = (p: number): number => {
    const place = p * (length - 1);
    const [low, high] = [sorted[Math.floor(place)] as number, sorted[Math.ceil(place)] as number];
    return low + (high - low) * (place - Math.floor(place));
  };
  return right({
    runs: made.right.count,
    unanswered: unanswered.row.length,
    table: table.right,
    holds: { share, standardError: Math.sqrt((share * (1 - share)) / length) },
    quantiles: shares.map((p) => ({ share: p, value: at(p) })),
  });
}
