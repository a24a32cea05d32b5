/** What decides the verdict of a row: the share used of each check, and the reserves that have no share. */
import type { Check } from '../../ratings/index.js';
import type { Node } from '../../trace/index.js';
import type { Operand } from '../tape/steps.js';
import { isVaried } from '../tape/tape.js';

/** A reserve without a share used: a part against its GAWR, or a load that must not be negative. */
export interface Guarded {
  readonly node: Node;
  readonly at: Operand;
  /** Near zero means within this much, in the unit of the figure. */
  readonly edge: number;
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
