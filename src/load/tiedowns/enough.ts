/** Are these tiedowns enough? */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../../ratings/index.js';
import {
  type AnyWeight,
  aboveZero,
  allHold,
  constant,
  type Decision,
  type Derived,
  decide,
  inPounds,
  minus,
  type OutsideItsRange,
  over,
  result,
  type Source,
  sum,
  times,
} from '../../trace/index.js';
import { lb } from '../../units/index.js';
import type { SectionNotForThisWeight } from '../errors.js';
import { tiedownCount } from './count.js';
import { type CountVerdict, judgeCounts, overall, type TiedVerdict } from './judge-counts.js';
import type { TiedArticle } from './sections.js';

/**
 * How it runs: from the trailer to the cargo (`direct`), over or through the cargo and back to the same side, or across to
 * the other side of the trailer.
 */
export type Attachment = 'direct' | 'same side' | 'other side';

/** One tiedown: its working load limit as a whole, from `tiedownWll`, and how it runs. */
export interface Tiedown {
  readonly wll: AnyWeight;
  readonly runs: Attachment;
}

/** The rule on the sum of the working load limits. */
export const aggregate: Source = Object.freeze({
  id: 'cfr-393-106',
  title: '49 CFR 393.106',
  clause: '(d)',
  edition: 'quoted in a carrier page, undated',
  grade: 'B',
});

/** Half for direct and for same-side tiedowns, all of it for those that cross. */
export const countedOf = (symbol: string, wll: Derived<'lb'>, runs: Attachment): Derived<'lb'> =>
  result(symbol, times(wll, runs === 'other side' ? 1 : 0.5), aggregate);

/** Half the weight of the article. */
export const neededFor = (weight: Derived<'lb'>): Derived<'lb'> =>
  result('working load limit needed', over(weight, 2), aggregate);

/** Whom the sections bind. */
export const carrierNote = note(
  'CommercialCarriers',
  'These sections bind commercial carriers. The marking on the gear governs, the weakest part counts, and worn gear counts for nothing.',
);

/** Strength and number of the tiedowns against the rule. */
export interface TiedownAnswer {
  readonly needed: Derived<'lb'>;
  readonly counted: Derived<'lb'>;
  /** Counted minus needed; below zero is short. */
  readonly reserve: Derived<'lb'>;
  readonly strength: 'enough' | 'short';
  readonly counts: readonly CountVerdict[];
  readonly verdict: TiedVerdict;
  readonly decisions: readonly Decision[];
  readonly notes: readonly Note[];
}

/**
 * Are these tiedowns enough for this article?
 *
 * Strength: the sum of what counts must reach half the weight. A tiedown counts half when it runs from trailer to cargo or
 * returns to the same side, and in full when it crosses to the other side. Number: by the section, see `tiedownCount`.
 *
 * Angles are not in the rule. A handbook wording by end sections would count a direct tiedown in full: it is not used.
 *
 * @param article weight, length, blocking, section
 * @param fitted each tiedown with the working load limit of its weakest part, in lb
 * @returns lb and counts. Left as `tiedownCount`, `OutsideItsRange` for a tiedown of no strength. Not enough is an answer
 * @example orThrow(tiedowns({ weight: lb(20000), length: foot(18), blockedForward: false, section: 'heavy equipment' }, four)).verdict // enough
 * @source 49 CFR 393.106(d), quoted in a carrier page; binds commercial carriers
 */
export function tiedowns(
  article: TiedArticle,
  fitted: readonly Tiedown[],
): Either<SectionNotForThisWeight | OutsideItsRange, TiedownAnswer> {
  const count = tiedownCount(article);
  if (isLeft(count)) return count;
  const each = fitted.map(({ wll, runs }, i) => ({
    wll: inPounds(`working load limit of tiedown ${i + 1}`, wll),
    runs,
  }));
  const guarded = allHold(each.map(({ wll }, i) => aboveZero(`working load limit of tiedown ${i + 1}`, wll)));
  if (isLeft(guarded)) return guarded;
  const needed = neededFor(inPounds('article weight', article.weight));
  const counted =
    each.length === 0
      ? constant(lb(0), 'counted working load limit')
      : sum(
          'counted working load limit',
          each.map(({ wll, runs }, i) => countedOf(`counted for tiedown ${i + 1}`, wll, runs)),
          aggregate,
        );
  const enough = decide(counted, '>=', needed);
  const strength = enough.holds ? 'enough' : 'short';
  const { counts, decisions } = judgeCounts(count.right, fitted.length);
  return right({
    needed,
    counted,
    strength,
    counts,
    verdict: overall(strength, counts),
    reserve: result('working load limit in reserve', minus(counted, needed)),
    decisions: [...count.right.decisions, ...guarded.right, enough, ...decisions],
    notes: [...count.right.notes, carrierNote],
  });
}
