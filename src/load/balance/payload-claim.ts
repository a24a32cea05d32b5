/** The claim that adds the tongue load to the payload, with its check. */
import { type Check, checkLoad, type Rating, weight } from '../../ratings/index.js';
import { type Derived, minus, plus, result, times } from '../../trace/index.js';

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
