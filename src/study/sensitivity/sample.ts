/** How sure a figure is: quantiles and the share of each verdict, of a sampled study. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import type { AssessmentVerdict } from '../../assessment/index.js';
import type { Note } from '../../ratings/index.js';
import { inShort } from '../../units/internal.js';
import type { StudyFailure } from '../errors.js';
import type { ColumnTable } from '../output/columns.js';
import { unusable } from '../plan/plan-refusal.js';
import { verdictCode } from '../run/verdict-codes.js';
import { type StudyPlan, study } from '../study.js';

/** A share of runs, and how far it may be off by chance. */
export interface Share {
  /** From 0 to 1. */
  readonly share: number;
  /** The standard error of the share, from 0 to 1. */
  readonly standardError: number;
}

/** `share = found / runs`, its standard error `sqrt(share (1 - share) / runs)`. */
export function shareWithError(found: number, runs: number): Share {
  const share = found / runs;
  return { share, standardError: Math.sqrt((share * (1 - share)) / runs) };
}

/** A sampled study in short. */
export interface Spread {
  /** How many runs were made. */
  readonly runs: number;
  /** How many of them have no answer. */
  readonly unanswered: number;
  /** The share of answered runs that have each verdict, and the standard error of that share. */
  readonly verdicts: Readonly<Record<AssessmentVerdict, Share>>;
  /** The figure below which each asked share of the runs lies. */
  readonly quantiles: readonly { readonly share: number; readonly value: number }[];
  /** The runs as columns. */
  readonly table: ColumnTable;
  /** What is to be said of the plan itself: see `Study`. */
  readonly notes: readonly Note[];
}

/**
 * How sure is this answer when its inputs are not?
 *
 * `share = runs of a verdict / answered runs`; its standard error is `sqrt(share (1 - share) / runs)` (of a plain random sample; a Latin
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
  if (typeof figure !== 'string') return left(unusable('figure', figure, 'the name of a figure'));
  if (!Array.isArray(shares)) return left(unusable('shares', shares, 'a list of shares of the runs from 0 to 1'));
  const outside = shares.find((share) => !(typeof share === 'number' && share >= 0 && share <= 1));
  if (outside !== undefined)
    return left({
      chapter: 'study',
      tag: 'UnusableVariation',
      path: 'shares',
      found: inShort(outside),
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
  const { length, verdict, unanswered } = table.right;
  if (length === 0)
    return left({ chapter: 'study', tag: 'NoSolution', path: figure, what: figure, found: 'no answered run' });
  const sorted = Float64Array.from(values).sort();
  const shareOf = (name: AssessmentVerdict): Share => {
    const code = verdictCode(name);
    return shareWithError(
      verdict.reduce((count, each) => count + (each === code ? 1 : 0), 0),
      length,
    );
  };
  const at = (p: number): number => {
    const place = p * (length - 1);
    const [low, high] = [sorted[Math.floor(place)] as number, sorted[Math.ceil(place)] as number];
    return low + (high - low) * (place - Math.floor(place));
  };
  return right({
    runs: made.right.count,
    unanswered: unanswered.row.length,
    table: table.right,
    notes: made.right.notes,
    verdicts: {
      over: shareOf('over'),
      attention: shareOf('attention'),
      within: shareOf('within'),
      unchecked: shareOf('unchecked'),
    },
    quantiles: shares.map((p) => ({ share: p, value: at(p) })),
  });
}
