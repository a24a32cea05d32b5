/** A trailer built up from its cut list and deck, and what more deck costs. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import { type BalanceError, type CurbWeight, curbWeight, type PlacedItem } from '../../load/index.js';
import {
  type DeckGrowth,
  deckWeight,
  frameWeight,
  type GrowthPerFoot,
  type MembersError,
  type PayloadByLength,
  payloadByLength,
  weightPerFootOfDeck,
} from '../../members/index.js';
import type { DecodedCurb, DecodedTrailer } from '../../spec/index.js';
import {
  constant,
  converted,
  type Decision,
  type Derived,
  inInches,
  inPounds,
  minus,
  product,
  renamed,
  sum,
} from '../../trace/index.js';
import { foot, ratio } from '../../units/index.js';
import { has } from '../../units/internal.js';

export interface BuiltUp {
  readonly curb: CurbWeight;
  readonly decisions: readonly Decision[];
}

export interface Longer {
  /** What a foot of deck weighs, in lb/ft. */
  readonly growth: GrowthPerFoot;
  /** The payload for each length of deck, in lb. */
  readonly byLength: PayloadByLength;
  /** Where the program went one way because of a figure; for studies. */
  readonly decisions: readonly Decision[];
}

/** The bought parts, each line multiplied by its count. */
function partsOf(items: NonNullable<DecodedCurb['items']>): readonly PlacedItem[] {
  return items.map(({ name, weight, at, count }) => {
    const each = inPounds(`${name} weight`, renamed(`${name} weight`, weight));
    const all = count === undefined ? each : product(`${name} weight x ${count}`, each, constant(ratio(count)));
    return { name, weight: all, at: inInches(`${name} position`, renamed(`${name} position`, at)) };
  });
}

/** The empty trailer from items, frame and deck; undefined when the spec lists none of them. */
export function builtUp({
  items = [],
  frame = [],
  deck = [],
}: DecodedCurb): Either<MembersError | BalanceError, BuiltUp | undefined> {
  const lists = [frame.length === 0 ? undefined : frameWeight(frame), deck.length === 0 ? undefined : deckWeight(deck)];
  const lines: PlacedItem[] = [...partsOf(items)];
  const decisions: Decision[] = [];
  for (const list of lists) {
    if (list === undefined) continue;
    if (isLeft(list)) return list;
    lines.push(...list.right.lines);
    decisions.push(...list.right.decisions);
  }
  if (lines.length === 0) return right(undefined);
  const curb = curbWeight(lines);
  // Parts that weigh nothing together say nothing of the trailer: its weight stays open.
  if (isLeft(curb)) return curb.left.tag === 'NothingWeighed' ? right(undefined) : curb;
  return right({ curb: curb.right, decisions: [...decisions, ...curb.right.decisions] });
}

/** The lines of cut list and deck that grow when the deck does, by the names the spec gives. */
function growing({ frame = [], deck = [], grows = [] }: DecodedCurb): DeckGrowth {
  const lengthens = ({ name }: { readonly name: string }): boolean => grows.includes(name);
  const pieces = frame.filter(lengthens);
  return {
    rails: pieces.flatMap((line) =>
      has(line, 'member') && has(line, 'from') && has(line, 'count')
        ? [{ name: line.name, member: line.member, count: line.count }]
        : [],
    ),
    crossmembers: pieces.flatMap((line) =>
      has(line, 'spacing')
        ? [{ name: line.name, member: line.member, length: line.length, spacing: line.spacing }]
        : [],
    ),
    surfaces: deck.filter(lengthens).map(({ name, width, surface }) => ({ name, width, weight: surface })),
  };
}

/** What two, four and six more feet of deck cost in payload on the GVWR; undefined when the spec does not say what grows. */
export function longer(
  { curb: spec, deck, gvwr }: DecodedTrailer,
  curb: Derived<'lb'> | undefined,
): Either<MembersError, Longer | undefined> {
  if (spec?.grows === undefined || deck === undefined || gvwr === undefined || curb === undefined)
    return right(undefined);
  const growth = weightPerFootOfDeck(growing(spec));
  if (isLeft(growth)) return growth;
  const base = converted(
    'deck length',
    minus(inInches('deck rear end', deck.rear), inInches('deck front end', deck.front)),
    'ft',
  );
  const lengths = [base, ...[2, 4, 6].map((more) => sum(`deck length + ${more} ft`, [base, constant(foot(more))]))];
  const byLength = payloadByLength({
    gvwr,
    baseWeight: curb,
    baseLength: base,
    perFoot: growth.right.perFoot,
    lengths,
  });
  return isLeft(byLength)
    ? byLength
    : right({
        growth: growth.right,
        byLength: byLength.right,
        decisions: [...growth.right.decisions, ...byLength.right.decisions],
      });
}
