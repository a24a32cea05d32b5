/** How many of these tiedowns, or which size of so many? */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import type { Note } from '../ratings/index.js';
import {
  aboveZero,
  allHold,
  type Decision,
  type Derived,
  decide,
  fromTable,
  greatestOf,
  inPounds,
  type NotAWholeCount,
  type OutsideItsRange,
  over,
  product,
  roundedUp,
  wholeCount,
} from '../trace/index.js';
import { lb, ratio } from '../units/index.js';
import { type ChainGrade, chainWll } from './data/chain-wll.js';
import { webbingWll } from './data/webbing-wll.js';
import { wireRopeWll } from './data/wire-rope-wll.js';
import type { SectionNotForThisWeight } from './errors.js';
import {
  type Attachment,
  type CountVerdict,
  carrierNote,
  countedOf,
  judgeCounts,
  neededFor,
  overall,
  type Tiedown,
  type TiedownAnswer,
} from './tiedowns.js';
import { type CountReading, type TiedArticle, tiedownCount } from './tiedowns-count.js';

/** The number by one reading of the rule: by strength or by count, whichever is more. */
export interface NumberNeeded extends CountReading {
  readonly number: Derived<'ratio'>;
}

export interface HowMany {
  readonly needed: Derived<'lb'>;
  readonly countedEach: Derived<'lb'>;
  readonly byStrength: Derived<'ratio'>;
  readonly readings: readonly NumberNeeded[];
  readonly decisions: readonly Decision[];
  readonly notes: readonly Note[];
}

/**
 * How many tiedowns like this one?
 *
 * `n = ceil((W / 2) / counted each)`, and not fewer than the section asks for.
 *
 * All alike in strength and in how they run. See `tiedowns` for a mixed set.
 *
 * @param article as in `tiedowns`
 * @param like one tiedown, its weakest part in lb
 * @returns counts. Left as `tiedownCount`, `OutsideItsRange`
 * @example orThrow(howManyTiedowns({ weight: lb(20000), length: foot(18), blockedForward: false, section: 'heavy equipment' }, { wll: lb(6600), runs: 'direct' })).byStrength // 4
 * @source 49 CFR 393.106(d), quoted in a carrier page; binds commercial carriers
 */
export function howManyTiedowns(
  article: TiedArticle,
  like: Tiedown,
): Either<SectionNotForThisWeight | OutsideItsRange, HowMany> {
  const count = tiedownCount(article);
  if (isLeft(count)) return count;
  const wll = inPounds('working load limit of each', like.wll);
  const guarded = allHold([aboveZero('working load limit of each', wll)]);
  if (isLeft(guarded)) return guarded;
  const needed = neededFor(inPounds('article weight', article.weight));
  const countedEach = countedOf('counted for each', wll, like.runs);
  const byStrength = roundedUp('tiedowns by strength', over(needed, countedEach), ratio(1));
  return right({
    needed,
    countedEach,
    byStrength,
    readings: count.right.readings.map((reading) => ({
      ...reading,
      number: greatestOf(`tiedowns, ${reading.reading}`, [byStrength, reading.minimum]),
    })),
    decisions: [...count.right.decisions, ...guarded.right],
    notes: [...count.right.notes, carrierNote],
  });
}

/** The gear to choose a size of. */
export type Gear =
  | { readonly part: 'chain'; readonly grade: ChainGrade }
  | { readonly part: 'webbing' }
  | { readonly part: 'wire rope' };

export interface SizeRow {
  readonly size: string;
  readonly wll: Derived<'lb'>;
  readonly counted: Derived<'lb'>;
  readonly strength: 'enough' | 'short';
}

export interface WhichSize {
  readonly needed: Derived<'lb'>;
  /** Every printed size, smallest first. */
  readonly sizes: readonly SizeRow[];
  /** The smallest that is strong enough, or that none of the printed sizes is. */
  readonly smallest: SizeRow | 'none in the table';
  readonly counts: readonly CountVerdict[];
  readonly verdict: TiedownAnswer['verdict'];
  readonly decisions: readonly Decision[];
  readonly notes: readonly Note[];
}

const tables = { chain: chainWll, webbing: webbingWll, 'wire rope': wireRopeWll };

/** The rows of one kind of gear as printed, smallest first. */
function rowsOf(gear: Gear): readonly { readonly size: string; readonly wll: Derived<'lb'> }[] {
  const table = tables[gear.part];
  const rows = gear.part === 'chain' ? chainWll.rows.filter(({ grade }) => grade === gear.grade) : table.rows;
  const what = gear.part === 'chain' ? `grade ${gear.grade} chain` : gear.part;
  return rows.map(({ inches, lb: printed }) => ({
    size: inches,
    wll: fromTable(`working load limit of ${inches} in ${what}`, lb(printed), {
      table: table.name,
      key: `${inches} in ${what}`,
      source: table.source,
    }),
  }));
}

/**
 * Which size do so many tiedowns need to be?
 *
 * The smallest printed size with `n x counted >= W / 2`; counted is half the working load limit, or all of it for those
 * that cross to the other side.
 *
 * The gear alone: binder, hooks and anchors must bear as much. The number is judged by the section beside it.
 *
 * @param article as in `tiedowns`
 * @param number of tiedowns, all alike, one or more
 * @param runs how they run
 * @param gear chain of a grade, webbing or wire rope
 * @returns lb. Left as `tiedownCount`, `NotAWholeCount`. No size in the table is an answer
 * @example orThrow(whichTiedownSize({ weight: lb(18800), length: foot(14), blockedForward: false, section: 'heavy equipment' }, 4, 'direct', { part: 'chain', grade: '70' })).smallest // 5/16
 * @source 49 CFR 393.106(d), 393.108; bind commercial carriers
 */
export function whichTiedownSize(
  article: TiedArticle,
  number: number,
  runs: Attachment,
  gear: Gear,
): Either<SectionNotForThisWeight | NotAWholeCount | OutsideItsRange, WhichSize> {
  const count = tiedownCount(article);
  if (isLeft(count)) return count;
  const n = wholeCount('number of tiedowns', number);
  if (isLeft(n)) return n;
  const needed = neededFor(inPounds('article weight', article.weight));
  const decisions: Decision[] = [...count.right.decisions];
  const sizes = rowsOf(gear).map(({ size, wll }): SizeRow => {
    const counted = product(
      `counted for ${number} of ${size} in`,
      countedOf(`counted for one of ${size} in`, wll, runs),
      n.right,
    );
    const reaches = decide(counted, '>=', needed);
    decisions.push(reaches);
    return { size, wll, counted, strength: reaches.holds ? 'enough' : 'short' };
  });
  const smallest = sizes.find(({ strength }) => strength === 'enough') ?? 'none in the table';
  const counts = judgeCounts(count.right.readings, number);
  return right({
    needed,
    sizes,
    smallest,
    counts,
    verdict: overall(smallest === 'none in the table' ? 'short' : 'enough', counts),
    decisions,
    notes: [...count.right.notes, carrierNote],
  });
}
