/** How many of these tiedowns, or which size of so many? */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import type { Note } from '../../ratings/index.js';
import {
  aboveZero,
  allHold,
  type Decision,
  type Derived,
  greatestOf,
  inPounds,
  type OutsideItsRange,
  over,
  roundedUp,
} from '../../trace/index.js';
import { ratio } from '../../units/index.js';
import type { SectionNotForThisWeight } from '../errors.js';
import { tiedownCount } from './count.js';
import { carrierNote, countedOf, neededFor, type Tiedown } from './enough.js';
import type { CountReading, TiedArticle } from './sections.js';

/** The number by one reading of the rule: by strength or by count, whichever is more. */
export interface NumberNeeded extends CountReading {
  readonly number: Derived<'ratio'>;
}

/** The number of equal tiedowns that the article needs. */
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
