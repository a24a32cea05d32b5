/** Which input moves a figure most: one factor at a time. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import type { Note } from '../../ratings/index.js';
import type { StudyFailure } from '../errors.js';
import { unusable } from '../plan/plan-refusal.js';
import { type StudyPlan, study } from '../study.js';

/** One bar: a figure at the ends of one factor, the others at the spec's own values. */
export interface Bar {
  /** The key or the name that was varied. */
  readonly factor: string;
  /** The least of the figure, in its unit. */
  readonly low: number;
  /** The most of the figure, in its unit. */
  readonly high: number;
  /** High minus low. */
  readonly swing: number;
}

/** A figure at the spec's own values, and one bar a factor. */
export interface OneAtATime {
  /** The figure at the spec's own values, in its unit. */
  readonly base: number;
  /** The factors, the longest bar first. */
  readonly bars: readonly Bar[];
  /** What is to be said of the plan itself: see `Study`. */
  readonly notes: readonly Note[];
}

/**
 * Which input moves this figure most?
 *
 * @param plan as for `study`, without the design
 * @param figure the name of a figure of the study
 * @returns the figure at the spec's own values and one bar a factor, longest first; unanswered points are left out of their bar
 * @example orThrow(oneAtATime({ base: spec, vary: { 'cargo.0.front': levels('110 in', '130 in') } }, 'tongue load')).bars[0].factor // cargo.0.front
 * @source common practice, no source
 */
export function oneAtATime(plan: Omit<StudyPlan, 'design'>, figure: string): Either<StudyFailure, OneAtATime> {
  if (typeof figure !== 'string') return left(unusable('figure', figure, 'the name of a figure'));
  const made = study({ ...plan, design: { kind: 'one at a time' } });
  if (isLeft(made)) return made;
  const known = made.right.figures.map(({ name }) => name);
  if (!known.includes(figure)) return left({ chapter: 'study', tag: 'UnknownPath', path: figure, nearest: known });
  const rows = [...made.right.rows()].flatMap((row) => (row.answered ? [row] : []));
  const base = rows.find(({ row }) => row === 0)?.figures[figure];
  if (base === undefined)
    return left({
      chapter: 'study',
      tag: 'NoSolution',
      path: figure,
      what: figure,
      found: 'no answer for the spec as it stands',
    });
  const spans = [
    ...made.right.choices.map(({ name, choices }) => ({ name, size: choices.length })),
    ...made.right.axes.map(({ name, levels }) => ({ name, size: levels })),
  ];
  let start = 1;
  const bars = spans.flatMap(({ name, size }) => {
    const own = rows
      .filter(({ row }) => row >= start && row < start + size)
      .map(({ figures }) => figures[figure] as number);
    start += size;
    if (own.length === 0) return [];
    const [low, high] = [Math.min(base, ...own), Math.max(base, ...own)];
    return [{ factor: name, low, high, swing: high - low }];
  });
  return right({ base, bars: bars.sort((a, b) => b.swing - a.swing), notes: made.right.notes });
}
