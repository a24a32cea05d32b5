/** What decides the verdict of a row: the share used of each check, and the reserves that have no share. */
import type { Check } from '../../ratings/index.js';
import type { Node } from '../../trace/index.js';
import { type ColumnBound, rangeOf } from '../tape/bounds.js';
import type { Scaled } from '../tape/loops/step-loops.js';
import type { Operand } from '../tape/steps.js';
import { isVaried } from '../tape/tape.js';

/** A reserve without a share used: a part against its GAWR, or a load that must not be negative. */
export interface Guarded {
  readonly node: Node;
  readonly at: Operand;
  /** Near zero means within this much, in the unit of the figure. */
  readonly edge: number;
  /** The figure as a straight line of a column, if it varies. */
  readonly line: Scaled | undefined;
}

/** A check by its name and its place in the list of checks. */
export interface NamedCheck {
  readonly place: number;
  readonly name: string;
}

/** The share used of a check as `times x figure + plus`: read off the reserve where the limit does not vary. */
export interface Share {
  /** Equal checks of equal axles share a column and are one entry. */
  readonly named: readonly NamedCheck[];
  readonly check: Check;
  readonly at: Operand;
  readonly times: number;
  readonly plus: number;
  /** The share as a straight line of a column, if it varies. */
  readonly line: Scaled | undefined;
}

const sameOperand = (a: Operand, b: Operand): boolean =>
  isVaried(a) ? isVaried(b) && a.column === b.column : !isVaried(b) && a.value === b.value;

/** Shares of one column as one entry under all their names. */
export function distinctShares(shares: readonly Share[]): readonly Share[] {
  const found: Share[] = [];
  for (const share of shares) {
    const index = found.findIndex(({ at, times }) => sameOperand(at, share.at) && times === share.times);
    const same = found[index];
    if (same === undefined) found.push(share);
    else found[index] = { ...same, named: [...same.named, ...share.named] };
  }
  return found;
}

/** One reserve a column. */
export const distinctReserves = (reserves: readonly Guarded[]): readonly Guarded[] =>
  reserves.filter((reserve, i) => reserves.findIndex(({ at }) => sameOperand(at, reserve.at)) === i);

/** The name of a tie: its checks in the order of the checks. */
export const nameOfTie = (shares: readonly Share[]): string =>
  shares
    .flatMap(({ named }) => named)
    .sort((a, b) => a.place - b.place)
    .map(({ name }) => name)
    .join(' = ');

/** A difference of two shares that is no error of doubles. */
const clear = 1e-12;

/** Whether one share is above another wherever the decisions fall out as recorded: both on one column, which stays in its bounds. */
function isAbove({ line: a }: Share, { line: b }: Share, bounds: readonly ColumnBound[]): boolean {
  if (a === undefined || b === undefined || a.column !== b.column) return false;
  const [times, plus] = [a.times - b.times, a.plus - b.plus];
  return times === 0 ? plus > clear : rangeOf({ column: a.column, times, plus }, bounds)[0] > clear;
}

/** Shares that some row may be closest to its limit by, then those that another one is always above. */
export function ranked(
  shares: readonly Share[],
  bounds: readonly ColumnBound[],
): { readonly shares: readonly Share[]; readonly ranked: number; readonly names: readonly string[] } {
  const below = shares.filter((share) => shares.some((other) => isAbove(other, share, bounds)));
  const first = shares.filter((share) => !below.includes(share));
  const sorted = [...first, ...below];
  return { shares: sorted, ranked: first.length, names: sorted.map((share) => nameOfTie([share])) };
}

/** Whether a reserve is above zero wherever the decisions fall out as recorded. */
export const isSettled = ({ line }: Guarded, bounds: readonly ColumnBound[]): boolean =>
  line !== undefined && rangeOf(line, bounds)[0] > 0;
