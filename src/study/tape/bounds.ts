/** Recorded decisions as bounds on columns: a row inside all of them went the same way as the recorded working. */
import { type Decision, holdsFor } from '../../trace/index.js';
import { type Form, isFixed } from './linear-forms.js';

/** The share of a figure within which a double is not trusted to know its side. */
export const guardShare = 1e-9;

export interface ColumnBound {
  readonly column: number;
  /** Both ends are inside. */
  readonly low: number;
  readonly high: number;
}

/**
 * The bound that a decision puts on the difference of its sides, as a form: on the recorded side of zero, the guard band kept
 * away. `size` is how large the parts of the difference are, for the band. Nothing for a decision that does not vary.
 *
 * Where both sides of zero went the same way (`is it equal? no`), the recorded side is kept to; the other has a tape of its own.
 * Recorded equality is nothing that a double could tell: no row is inside.
 */
export function boundOf(
  { comparison, holds, left, right }: Decision,
  gap: Form,
  size: number,
): Omit<ColumnBound, 'column'> | undefined {
  if (isFixed(gap)) return undefined;
  const band = 4 * guardShare * size + Number.MIN_VALUE;
  const order = left.value.value.comparedTo(right.value.value);
  const both = holdsFor(-1, comparison) === holdsFor(1, comparison);
  const below = holdsFor(-1, comparison) === holds && (!both || order < 0);
  const above = holdsFor(1, comparison) === holds && (!both || order > 0);
  if (!below && !above) return { low: Number.POSITIVE_INFINITY, high: Number.NEGATIVE_INFINITY };
  return { low: above ? band : Number.NEGATIVE_INFINITY, high: below ? -band : Number.POSITIVE_INFINITY };
}

/** A bound on `times x column + plus` as one on the column. */
export function onColumn(
  { low, high }: Omit<ColumnBound, 'column'>,
  column: number,
  times: number,
  plus: number,
): ColumnBound {
  const [a, b] = [(low - plus) / times, (high - plus) / times];
  return times > 0 ? { column, low: a, high: b } : { column, low: b, high: a };
}

/** One bound a column: the highest low end and the lowest high end. */
export function tightened(bounds: readonly ColumnBound[]): readonly ColumnBound[] {
  const byColumn = new Map<number, ColumnBound>();
  for (const { column, low, high } of bounds) {
    const found = byColumn.get(column);
    byColumn.set(
      column,
      found === undefined
        ? { column, low, high }
        : { column, low: Math.max(low, found.low), high: Math.min(high, found.high) },
    );
  }
  return [...byColumn.values()];
}
