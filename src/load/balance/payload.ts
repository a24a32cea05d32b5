/** Payload: the least that any limit allows, and the limit that governs. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Check, checkLoad, type Governed, governedBy, type Rating, weight } from '../../ratings/index.js';
import {
  allHold,
  type Decision,
  type Derived,
  minus,
  type OutsideItsRange,
  over,
  plus,
  result,
  times,
} from '../../trace/index.js';
import type { NoLimits } from '../errors.js';
import { inABand } from './share-band.js';

/** One limit on the laden trailer. `on` says which weight it limits: the whole, what the axles carry, or the tongue load. */
export interface LadenLimit {
  readonly name: string;
  readonly on: 'gross' | 'axles' | 'tongue';
  readonly limit: Derived<'lb'>;
}

/** The tongue shares the answer is to hold for: one share, or the ends of a band. */
export interface ShareBand {
  readonly low: Derived<'ratio'>;
  readonly high: Derived<'ratio'>;
}

/** The payload and the limit that governs it. */
export interface Payload {
  /** Not above this; negative when the empty trailer is over a limit already. */
  readonly most: Derived<'lb'>;
  readonly governed: Governed;
  readonly decisions: readonly Decision[];
}

/** The heaviest gross weight that keeps within a limit: divided last. */
function grossAllowed(
  { name, on, limit }: LadenLimit,
  onAxles: Derived<'ratio'>,
  onTongue: Derived<'ratio'>,
): Derived<'lb'> {
  switch (on) {
    case 'gross':
      return limit;
    case 'axles':
      return result(`gross weight allowed by ${name}`, over(limit, onAxles));
    case 'tongue':
      return result(`gross weight allowed by ${name}`, over(limit, onTongue));
  }
}

/**
 * What may this build honestly carry?
 *
 * `P = least of (gross allowed by each limit) - W0`. Gross allowed: the limit itself when it limits gross; `limit / (1 - t)`
 * when it limits what the axles carry, t the lower tongue share; `limit / t` when it limits the tongue load, t the higher.
 * Spring bars put a part k of the tongue load back on the axles, which then carry `1 - t (1 - k)` of the gross weight.
 *
 * The tongue load is part of the gross weight: it relieves the axles and is no extra payload. Does not apply to cargo that
 * cannot be placed at that tongue share: see `placementWindow`.
 *
 * @param curb weight of the whole empty trailer, options fitted, in lb: by scale
 * @param share the tongue share it is loaded to, or a band it may fall in
 * @param limits GVWR from the label always; axles, tires, coupler, ball, receiver, tow vehicle when they are known
 * @param shareReturnedByBars k, the part of the tongue load that spring bars put back on the trailer axles: `ontoTrailer / tongue` of `weightDistribution`; without bars left out
 * @returns lb, down to the pound in print only; every limit's own answer and the ones that govern. Left `NoLimits`; `OutsideItsRange` for a share that is not between 0 and 1
 * @example orThrow(payload(lb2450, { low: share15, high: share15 }, [gvwr10000])).most // 7,550 lb
 * @source 49 CFR 567.4(g)(3); NHTSA letters nht75-5.2 and nht76-3.20 (the share on the tow vehicle is part of GVWR)
 */
export function payload(
  curb: Derived<'lb'>,
  share: ShareBand,
  limits: readonly LadenLimit[],
  { shareReturnedByBars }: { readonly shareReturnedByBars?: Derived<'ratio'> | undefined } = {},
): Either<OutsideItsRange | NoLimits, Payload> {
  if (limits.length === 0) return left({ chapter: 'load', tag: 'NoLimits' });
  const guarded = allHold(inABand('the tongue share', share.low, share.high));
  if (isLeft(guarded)) return guarded;
  // The end of the band that is the harder one: the axles carry most at the lower share, the tongue at the higher.
  const relieved = shareReturnedByBars === undefined ? share.low : times(share.low, minus(1, shareReturnedByBars));
  const onAxles = minus(1, relieved);
  const bounds = limits.map((limit) => ({
    name: limit.name,
    limit: result(`payload by ${limit.name}`, minus(grossAllowed(limit, onAxles, share.high), curb)),
  }));
  const governed = governedBy('payload', bounds);
  return right({ most: governed.limit, governed, decisions: guarded.right });
}

/** The claim that adds the tongue load to the payload, and its check against GVWR. */
export interface PayloadClaim {
  /** The claim: payload on the rating plus the tongue load. */
  readonly claimed: Derived<'lb'>;
  /** The gross weight if somebody loads it. */
  readonly gross: Derived<'lb'>;
  /** That gross weight against GVWR: over by the tongue load. */
  readonly check: Check;
}

/**
 * What if somebody adds the tongue load to the payload?
 *
 * `claim = (GVWR - W0) + t x GVWR`; the gross weight it makes is `W0 + claim`, checked against GVWR.
 *
 * The tongue load is part of the gross weight, so the claim is always over by the tongue load. Print it only with its check.
 *
 * @param curb weight of the whole empty trailer in lb: by scale
 * @param share the tongue share of the claim, of the GVWR
 * @param gvwr from the label
 * @returns claim and gross in lb, and the check
 * @example payloadClaim(lb2450, share15, gvwrOf10000).check.verdict // over
 * @source NHTSA letter nht76-3.20 (GVWR includes the share on the tow vehicle); the claim itself: common practice, no source
 */
export function payloadClaim(curb: Derived<'lb'>, share: Derived<'ratio'>, gvwr: Rating<'GVWR'>): PayloadClaim {
  const onRating = result('payload on the rating', minus(gvwr.limit, curb));
  const claimed = result(
    'payload plus tongue load',
    plus(onRating, result('tongue load at the rating', times(gvwr.limit, share))),
  );
  const gross = result('gross weight if the claim is loaded', plus(curb, claimed));
  return { claimed, gross, check: checkLoad(gvwr, weight('gross', gross)) };
}
