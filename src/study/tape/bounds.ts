/**
 * Recorded decisions as bounds on columns: a row inside all of them takes the branches of the recorded working.
 *
 * Around the end of a bound there is a band in which a double cannot tell the side. A row in the band is asked the comparison
 * itself in exact decimals, so a decision recorded on a tie has rows of its own like any other.
 */
import { type Decision, holdsFor } from '../../trace/index.js';
import { compareFigures } from '../../units/internal.js';

/** The share of a figure within which a double is not trusted to know its side. */
export const guardShare = 1e-9;

export interface ColumnBound {
  readonly column: number;
  /** Both ends are inside. */
  readonly low: number;
  readonly high: number;
}

/** A decision on a column: the interior in which doubles are sure of it, and what is needed to ask it outside. */
export interface DecisionBound extends ColumnBound {
  readonly decision: Decision;
  /** Its place among the decisions of the recorded program. */
  readonly turn: number;
  /** Left side minus right side is `times x column + plus`. */
  readonly times: number;
  readonly plus: number;
  /** Up to this difference a double cannot tell the side. */
  readonly band: number;
}

/** The outcome of a decision for a figure on its column. */
export type Outcome = 'as recorded' | 'another branch' | 'too near to tell';

export function outcomeFor({ decision, times, plus, band }: DecisionBound, x: number): Outcome {
  const gap = times * x + plus;
  if (Math.abs(gap) <= band) return 'too near to tell';
  const { comparison, holds } = decision;
  return !Number.isNaN(gap) && holdsFor(gap < 0 ? -1 : 1, comparison) === holds ? 'as recorded' : 'another branch';
}

/** The band around zero of a difference; `size` is the magnitude of its parts. */
export const bandOf = (size: number): number => 4 * guardShare * size + Number.MIN_VALUE;

/**
 * The interior of a decision on the difference of its sides: the recorded side of zero without the band.
 *
 * Where both sides of zero have one outcome (`is it equal? no`), the interior is the recorded side; the other side is outside
 * the interior and still as recorded. A decision that holds on a tie only has no interior: each of its rows is asked.
 */
export function interiorOf({ comparison, holds, left, right }: Decision, band: number): Omit<ColumnBound, 'column'> {
  const order = compareFigures(left.value, right.value);
  const both = holdsFor(-1, comparison) === holdsFor(1, comparison);
  const below = holdsFor(-1, comparison) === holds && (!both || order < 0);
  const above = holdsFor(1, comparison) === holds && (!both || order > 0);
  if (!below && !above) return { low: Number.POSITIVE_INFINITY, high: Number.NEGATIVE_INFINITY };
  return { low: above ? band : Number.NEGATIVE_INFINITY, high: below ? -band : Number.POSITIVE_INFINITY };
}

/** A bound on `times x column + plus` as one on the column. */
export function onColumn(
  { low, high }: Omit<ColumnBound, 'column'>,
  { column, times, plus }: { readonly column: number; readonly times: number; readonly plus: number },
): ColumnBound {
  const [a, b] = [(low - plus) / times, (high - plus) / times];
  return times > 0 ? { column, low: a, high: b } : { column, low: b, high: a };
}

/** One bound a column: the highest low end and the lowest high end. */
export function tightened(bounds: readonly ColumnBound[]): readonly ColumnBound[] {
  const columns = new Map<number, ColumnBound>();
  for (const { column, low, high } of bounds) {
    const found = columns.get(column);
    columns.set(
      column,
      found === undefined
        ? { column, low, high }
        : { column, low: Math.max(low, found.low), high: Math.min(high, found.high) },
    );
  }
  return [...columns.values()];
}

/** The ends of a column, and the decisions behind them in their order. */
export interface DecidedBound extends ColumnBound {
  readonly decisions: readonly DecisionBound[];
}

/** The bounds of decisions, one a column. */
export const byColumn = (bounds: readonly DecisionBound[]): readonly DecidedBound[] =>
  tightened(bounds).map((bound) => ({ ...bound, decisions: bounds.filter(({ column }) => column === bound.column) }));

/** Ends outside of which no row takes the recorded branches: of all decisions but those that have one outcome on both sides of a tie. */
export const sureBounds = (bounds: readonly DecidedBound[]): readonly ColumnBound[] =>
  tightened(
    bounds.flatMap(({ decisions }) =>
      decisions.filter(({ decision: { comparison } }) => holdsFor(-1, comparison) !== holdsFor(1, comparison)),
    ),
  );

/** The ends of `times x column + plus` where the column stays in its bounds. */
export function rangeOf(
  { column, times, plus }: { readonly column: number; readonly times: number; readonly plus: number },
  bounds: readonly ColumnBound[],
): readonly [number, number] {
  const { low, high } = bounds.find((bound) => bound.column === column) ?? {
    low: Number.NEGATIVE_INFINITY,
    high: Number.POSITIVE_INFINITY,
  };
  const [a, b] = [times * low + plus, times * high + plus];
  return times > 0 ? [a, b] : [b, a];
}
