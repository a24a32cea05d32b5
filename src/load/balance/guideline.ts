/** What share of the gross weight the tongue should carry: guidance with a source, never a law. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import {
  type AnyShare,
  allHold,
  constant,
  converted,
  type Decision,
  type Derived,
  decide,
  inShare,
  minus,
  type OutsideItsRange,
  result,
  type Source,
  times,
} from '../../trace/index.js';
import { percent } from '../../units/index.js';
import { tongueGuidance } from '../data/tongue-guidance.js';
import type { Balance } from './balance.js';
import { inABand } from './share-band.js';

/** A band of tongue shares and its source. The trailer maker's own figure comes first when there is one. */
export interface Guideline {
  readonly low: Derived<'ratio'>;
  readonly high: Derived<'ratio'>;
  readonly source: Source;
  readonly decisions: readonly Decision[];
}

/** Whose practice a band is: what is usual for a ball hitch differs between these places. */
export type TonguePractice = 'US and Canada' | 'Europe' | 'Australia';

/** The row of the guidance for a practice; a gooseneck has one everywhere. */
const rowsByPractice: Readonly<Record<TonguePractice, string>> = {
  'US and Canada': 'ball hitch',
  Europe: 'EU and UK nose weight, never below 25 kg',
  Australia: 'Australian caravans, 7 minimum advised',
};

/**
 * What share of the gross weight do manuals put on this kind of hitch, in this part of the world?
 *
 * A printed band, low to high, as shares of the gross weight. An editable default: the trailer maker's own figure comes first.
 *
 * The European band is that of nose weights of light trailers, which never go below 25 kg and stay within the nose limit of
 * car and coupling. Not for a pole trailer or a dolly.
 *
 * @param hitch ball, or gooseneck with its pin or ball over the tow vehicle's axle
 * @param practice whose practice; the American one when it is left out
 * @returns the band with the text it comes from
 * @example guidelineFor('gooseneck').high // 0.25
 * @source tongue guidance of manuals and guides, row by row
 */
export const guidelineFor = (hitch: 'ball' | 'gooseneck', practice: TonguePractice = 'US and Canada'): Guideline => {
  const row = tongueGuidance.rows.find(
    ({ appliesTo }) => appliesTo === (hitch === 'ball' ? rowsByPractice[practice] : 'fifth wheel and gooseneck pin'),
  );
  if (row === undefined) throw new RangeError(`no guidance row for ${hitch}`);
  const source = { ...tongueGuidance.source, title: `${row.from}, guidance`, clause: row.appliesTo, grade: row.grade };
  return {
    low: converted('guideline low', constant(percent(row.lowPercent), undefined, source), 'ratio'),
    high: converted('guideline high', constant(percent(row.highPercent), undefined, source), 'ratio'),
    source,
    decisions: [],
  };
};

/**
 * What share does the maker's manual, or a rule of the house, ask for?
 *
 * Any band with `0 < low <= high < 1`, shares of the gross weight.
 *
 * @param low the least share, as a plain number or in percent
 * @param high the greatest share; the same as low for a single figure
 * @param source the source of the band
 * @returns the band; Left `OutsideItsRange`
 * @example orThrow(guideline(percent(12), percent(14), commonPractice)).low // 0.12
 * @source the one that is given
 */
export function guideline(low: AnyShare, high: AnyShare, source: Source): Either<OutsideItsRange, Guideline> {
  const from = inShare('guideline low', low);
  const to = inShare('guideline high', high);
  const guarded = allHold(inABand('the guideline', from, to));
  if (isLeft(guarded)) return guarded;
  return right({ low: from, high: to, source, decisions: guarded.right });
}

/** The tongue load against the ends of its guideline, lb. */
export interface TongueAdvice {
  readonly guideline: Guideline;
  readonly least: Derived<'lb'>;
  readonly most: Derived<'lb'>;
  /** Tongue load above the least: negative when the tongue is light. */
  readonly aboveLeast: Derived<'lb'>;
  /** Tongue load below the most: negative when the tongue is heavy. */
  readonly belowMost: Derived<'lb'>;
  readonly verdict: 'inside' | 'light' | 'heavy';
}

function verdictOf(tongue: Derived<'lb'>, least: Derived<'lb'>, most: Derived<'lb'>): TongueAdvice['verdict'] {
  if (decide(tongue, '<', least).holds) return 'light';
  return decide(tongue, '>', most).holds ? 'heavy' : 'inside';
}

/**
 * Is the tongue load inside the guideline?
 *
 * `least = low x W`, `most = high x W`; the tongue load T lies between them, ends included. lb throughout.
 *
 * Guidance, not law, and no promise about sway: the trailer maker's own figure outranks it.
 *
 * @param balanced from `balance`
 * @param band from `guidelineFor` or `guideline`
 * @returns lb: the ends of the band, how far the tongue load is from each, and on which side
 * @example tongueAdvice(orThrow(balance([{ name: 'trailer', weight: lb(3200), tongue: lb(480) }, { name: 'machine', weight: lb(9200), at: inch(171) }], { axlesAt: inch(190) })), guidelineFor('ball')).verdict // inside
 * @source the guideline carries its own
 */
export function tongueAdvice(balanced: Pick<Balance, 'gross' | 'tongue'>, band: Guideline): TongueAdvice {
  const { gross, tongue } = balanced;
  const least = result('least tongue load by guideline', times(gross, band.low), band.source);
  const most = result('greatest tongue load by guideline', times(gross, band.high), band.source);
  return {
    guideline: band,
    least,
    most,
    verdict: verdictOf(tongue, least, most),
    aboveLeast: result('tongue load above the least', minus(tongue, least)),
    belowMost: result('tongue load below the most', minus(most, tongue)),
  };
}
