/** Which size must so many tiedowns be? */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import type { Note } from '../../ratings/index.js';
import {
  type Decision,
  type Derived,
  decide,
  fromTable,
  inPounds,
  type NotAWholeCount,
  type OutsideItsRange,
  product,
  wholeCount,
} from '../../trace/index.js';
import { lb } from '../../units/index.js';
import { type ChainGrade, chainWll } from '../data/chain-wll.js';
import { webbingWll } from '../data/webbing-wll.js';
import { wireRopeWll } from '../data/wire-rope-wll.js';
import type { SectionNotForThisWeight } from '../errors.js';
import { tiedownCount } from './count.js';
import { type Attachment, carrierNote, countedOf, neededFor, type TiedownAnswer } from './enough.js';
import { type CountVerdict, judgeCounts, overall } from './judge-counts.js';
import type { TiedArticle } from './sections.js';

/** The gear to choose a size of. */
export type Gear =
  | { readonly part: 'chain'; readonly grade: ChainGrade }
  | { readonly part: 'webbing' }
  | { readonly part: 'wire rope' };

/** One printed size and what it counts for. */
export interface SizeRow {
  readonly size: string;
  readonly wll: Derived<'lb'>;
  readonly counted: Derived<'lb'>;
  readonly strength: 'enough' | 'short';
}

/** The smallest printed size that is strong enough. */
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
 * The size of the gear alone: binder, hooks and anchors must be as strong. `counts` judges the number by the section.
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
  const { counts, decisions: judged } = judgeCounts(count.right, number);
  decisions.push(...judged);
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
