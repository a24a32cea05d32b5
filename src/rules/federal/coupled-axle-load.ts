/** What the axles carry when the coupled trailer weighs its GVWR: the question the trailer letters put to the GAWRs. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Check, checkLoad, rating, weight } from '../../ratings/index.js';
import {
  type AnyWeight,
  asDerived,
  constant,
  converted,
  type Decision,
  type Derived,
  decide,
  difference,
  type Known,
  product,
  type Source,
} from '../../trace/index.js';
import { ratio } from '../../units/index.js';
import { showInWords } from '../../units/internal.js';
import { type RulesError, rulesError } from '../errors.js';
import { pounds } from '../pounds.js';

const letter: Source = Object.freeze({
  id: 'nht76-3.20',
  title: 'NHTSA letter nht76-3.20',
  grade: 'A',
  edition: '1976-01-15',
  clause: '49 CFR 567.4(g), 571.3',
});

export interface CoupledAxleLoad {
  readonly tongue: Derived<'lb'>;
  /** GVWR less the tongue load: the least that the GAWRs must add up to for this share. */
  readonly axleLoad: Derived<'lb'>;
  /** The axle load against the sum of the GAWRs. Over here is what the letter calls a safety-related defect. */
  readonly check: Check;
  readonly decisions: readonly Decision[];
}

/**
 * Do the axles carry this trailer at its GVWR, coupled?
 *
 * `tongue = share x GVWR`, `axle load = GVWR - tongue`, and the axle load must not exceed the sum of the GAWRs. The sum may
 * be below the GVWR, because part of the trailer rests on the tow vehicle.
 *
 * For a trailer whose hitch carries load; not for a full trailer or a truck, which rest on their own axles. The sum holds
 * for each axle only when they share equally; single axles are checked where their loads are known.
 *
 * @param trailer GVWR and the sum of the GAWRs from the label; the share of the gross weight that the hitch carries, as
 * weighed or as the maker states it
 * @returns lb. Left `OutOfRange` for a share not between 0 and 1 or a figure not greater than zero.
 * @example coupledAxleLoad({ gvwr: lb(7000), tongueShare: percent(10), sumOfGawrs: lb(7000) }) // Right: axle load 6,300 lb
 * @source agency letters nht72-6.32, nht75-5.2, nht76-3.20 (letters are guidance)
 */
export function coupledAxleLoad(trailer: {
  readonly gvwr: AnyWeight;
  readonly tongueShare: Known<'ratio' | '%'>;
  readonly sumOfGawrs: AnyWeight;
}): Either<RulesError, CoupledAxleLoad> {
  const gvwr = pounds('GVWR', trailer.gvwr, 'label');
  if (isLeft(gvwr)) return gvwr;
  const gawrs = pounds('sum of GAWRs', trailer.sumOfGawrs, 'label');
  if (isLeft(gawrs)) return gawrs;
  const share = converted('tongue share', asDerived('tongue share', trailer.tongueShare), 'ratio');
  const decisions = [decide(share, '>=', constant(ratio(0))), decide(share, '<', constant(ratio(1)))];
  if (!decisions.every(({ holds }) => holds))
    return left(
      rulesError({
        tag: 'OutOfRange',
        what: 'tongue share',
        found: showInWords(share.value),
        needed: 'a share from 0 to below 1',
      }),
    );
  const tongue = product('tongue load', share, gvwr.right);
  const axleLoad = difference('axle load at GVWR, coupled', gvwr.right, tongue, letter);
  return right({
    tongue,
    axleLoad,
    check: checkLoad(
      rating('axle group', gawrs.right, { part: 'sum of GAWRs', clause: letter }),
      weight('axle group load', axleLoad),
    ),
    decisions,
  });
}
