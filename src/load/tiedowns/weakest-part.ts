/** What may this tiedown pull at work? Its weakest part says, by its marking or by the printed table. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../../ratings/index.js';
import {
  type AnyWeight,
  aboveZero,
  allHold,
  type Decision,
  type Derived,
  decide,
  inPounds,
  leastOf,
  type NotTabulated,
  type OutsideItsRange,
} from '../../trace/index.js';
import { compare } from '../../units/index.js';
import { collected, own } from '../../units/internal.js';
import type { ChainGrade } from '../data/chain-wll.js';
import type { NothingGiven } from '../errors.js';
import { plainSize } from './gear-size.js';
import { chainLimit, type PrintedWll, webbingLimit, wireRopeLimit } from './printed-limits.js';

/** Chain of a nominal size (`'3/8'`) and grade; unmarked chain counts as grade 30. A marked limit outranks the table. */
export interface ChainPart {
  readonly part: 'chain';
  readonly size: string;
  readonly grade: ChainGrade | 'unmarked';
  readonly marked?: AnyWeight;
}
/** Webbing of a width in inches (`'2'`). */
export interface WebbingPart {
  readonly part: 'webbing';
  readonly width: string;
  readonly marked?: AnyWeight;
}
/** Wire rope of a diameter in inches (`'3/8'`). */
export interface WireRopePart {
  readonly part: 'wire rope';
  readonly diameter: string;
  readonly marked?: AnyWeight;
}
/** Binder, ratchet, hook, anchor: what is marked on it, for there is no table. */
export interface MarkedPart {
  readonly part: 'other';
  readonly name: string;
  readonly marked: AnyWeight;
}

/** A part that the pull of the tiedown goes through. */
export type TiedownPart = ChainPart | WebbingPart | WireRopePart | MarkedPart;

/** The working load limit of the whole tiedown, and its weakest part. */
export interface TiedownWll {
  readonly wll: Derived<'lb'>;
  /** The weakest part; more than one when they tie. */
  readonly weakest: readonly string[];
  readonly parts: readonly { readonly name: string; readonly wll: Derived<'lb'> }[];
  readonly decisions: readonly Decision[];
  readonly notes: readonly Note[];
}

const nameOf = (part: TiedownPart): string => {
  switch (part.part) {
    case 'chain':
      return `${plainSize(part.size)} in chain, ${part.grade === 'unmarked' ? 'unmarked' : `grade ${part.grade}`}`;
    case 'webbing':
      return `${plainSize(part.width)} in webbing`;
    case 'wire rope':
      return `${plainSize(part.diameter)} in wire rope`;
    case 'other':
      return part.name;
  }
};

function tabulated(part: Exclude<TiedownPart, MarkedPart>): Either<NotTabulated, PrintedWll> {
  switch (part.part) {
    case 'chain':
      return chainLimit(part.size, part.grade);
    case 'webbing':
      return webbingLimit(part.width);
    case 'wire rope':
      return wireRopeLimit(part.diameter);
  }
}

/** The marking when there is one, else the table. A marking that differs from the table is noted, and governs. */
function limitOf(
  part: TiedownPart,
): Either<NotTabulated, { readonly wll: Derived<'lb'>; readonly notes: readonly Note[] }> {
  const name = nameOf(part);
  if (part.part === 'other') return right({ wll: inPounds(`marked limit of ${name}`, part.marked), notes: [] });
  const printed = tabulated(part);
  const marking = own(part, 'marked');
  if (marking !== undefined) {
    const marked = inPounds(`marked limit of ${name}`, marking);
    const differs = !isLeft(printed) && !decide(printed.right.lb, '=', marked, 'a remark').holds;
    return right({
      wll: marked,
      notes: differs
        ? [
            note('MarkingDiffersFromTable', `The ${name} is marked otherwise than the table; the marking governs.`, [
              marked,
              printed.right.lb,
            ]),
          ]
        : [],
    });
  }
  if (isLeft(printed)) return printed;
  const assumed = part.part === 'chain' && part.grade === 'unmarked';
  return right({
    wll: printed.right.lb,
    notes: assumed ? [note('UnmarkedChain', 'Unmarked chain counts as grade 30.')] : [],
  });
}

/**
 * What is the working load limit of this tiedown as a whole?
 *
 * The least of its parts: chain, webbing or rope, binder, hooks, anchor points. A marking outranks the table.
 *
 * @param parts every part the pull goes through, the anchor on the trailer too
 * @returns lb. Left `NothingGiven`, `OutsideItsRange` (a marking of zero), `NotTabulated` with the nearest rows
 * @example orThrow(tiedownWll([{ part: 'chain', size: '3/8', grade: '70' }, { part: 'other', name: 'binder', marked: lb(5400) }])).wll // 5,400 lb
 * @source 49 CFR 393.108(a), reproduction, undated
 */
export function tiedownWll(
  parts: readonly TiedownPart[],
): Either<NothingGiven | OutsideItsRange | NotTabulated, TiedownWll> {
  if (parts.length === 0) return left({ chapter: 'load', tag: 'NothingGiven', what: 'parts of the tiedown' });
  const read: { name: string; wll: Derived<'lb'>; notes: readonly Note[] }[] = [];
  for (const part of parts) {
    const limit = limitOf(part);
    if (isLeft(limit)) return limit;
    read.push({ name: nameOf(part), ...limit.right });
  }
  const guarded = allHold(read.map(({ name, wll }) => aboveZero(`working load limit of ${name}`, wll)));
  if (isLeft(guarded)) return guarded;
  const wll = leastOf(
    'working load limit of the tiedown',
    read.map((part) => part.wll),
  );
  return right({
    wll,
    weakest: read.filter((part) => compare(part.wll.value, wll.value) === 0).map(({ name }) => name),
    parts: read.map(({ name, wll: own }) => ({ name, wll: own })),
    decisions: guarded.right,
    notes: collected(read, ({ notes }) => notes),
  });
}
