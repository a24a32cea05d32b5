/** Payload: the most that the limits allow at the best tongue share, and the most that holds at every share of the band. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import {
  allHold,
  constant,
  type Decision,
  type Derived,
  decide,
  type OutsideItsRange,
  plus,
  result,
} from '../../trace/index.js';
import { lb } from '../../units/index.js';
import type { NoLimits } from '../errors.js';
import { grossAllowed, type LadenLimit } from './laden-limit.js';
import type { BestPayload, Payload, PayloadBy, ShareBand } from './payload-answer.js';
import { easyEnd, hardEnd, type Lb, least, named, type Question, together } from './payload-by-limits.js';
import { liftsAt, sharesFor } from './payload-shares.js';
import { inABand } from './share-band.js';

const nothing = constant(lb(0));
const loaded = (symbol: string, curb: Lb, payload: Lb): Lb => result(symbol, plus(curb, payload));

function bestOf(
  question: Question,
  decisions: Decision[],
): { readonly best: BestPayload | undefined; readonly lifts: readonly string[] } {
  const { curb, share, most } = question;
  const single = most.map((limit) => named(limit.name, grossAllowed(limit, easyEnd(limit, share), curb), curb));
  const figure = least('payload at the best share', single, together(question));
  const some = decide(figure.weight, '>=', nothing);
  decisions.push(some);
  if (!some.holds) return { best: figure, lifts: [] };
  const gross = loaded('gross weight at the best share', curb, figure.weight);
  const { from, to, decisions: asked } = sharesFor(question, gross);
  decisions.push(...asked);
  const { weight, governing, limits } = figure;
  return asked.every(({ holds }) => holds)
    ? { best: { weight, governing, limits, shares: { from, to } }, lifts: [] }
    : { best: undefined, lifts: liftsAt(question, gross, { low: to, high: from }, decisions) };
}

function anywhereOf(
  question: Question,
  decisions: Decision[],
): { readonly anywhere: PayloadBy | undefined; readonly lifts: readonly string[] } {
  const { curb, share, most } = question;
  const single = most.map((limit) => named(limit.name, grossAllowed(limit, hardEnd(limit, share), curb), curb));
  const figure = least('payload', single, []);
  const some = decide(figure.weight, '>=', nothing);
  decisions.push(some);
  if (!some.holds) return { anywhere: figure, lifts: [] };
  const lifts = liftsAt(question, loaded('gross weight at every share', curb, figure.weight), share, decisions);
  return lifts.length === 0 ? { anywhere: figure, lifts } : { anywhere: undefined, lifts };
}

/**
 * What may this build honestly carry?
 *
 * Two figures, `P = W - W0`. *Best*: the heaviest W for which some share t of the band keeps every limit. More share relieves the
 * axles and loads the tongue, so W is the least of the gross limits, what the axles allow at the high share,
 * `L / (1 - t (1 - k))`, what the tongue allows at the low share, `L / t`, and what both allow where they meet,
 * `L_axles + L_tongue (1 - k)`. *Anywhere*: the same limits, each at its harder end of the band, so that it holds at every share.
 *
 * W gross weight, W0 empty trailer, L limits, lb; t tongue share; k the part of the tongue load that spring bars put back
 * on the axles. The tongue load is part of the gross weight: it relieves the axles and is no extra payload.
 *
 * Does not apply to cargo that cannot be placed at that tongue share: see `placementWindow`. A figure is absent where
 * something would lift that must press (`atLeast`), and `lifts` names it.
 *
 * @param curb weight of the whole empty trailer, options fitted, in lb: by scale
 * @param share the tongue share it is loaded to, or a band it may fall in
 * @param limits GVWR from the label always; axles, tires, coupler, ball, receiver, tow vehicle when they are known
 * @returns lb, down to the pound in print only; every limit's own answer and the ones that govern. Left `NoLimits`; `OutsideItsRange` for a share that is not between 0 and 1
 * @example orThrow(payload(lb2450, { low: share15, high: share15 }, [gvwr10000])).best.weight // 7,550 lb
 * @source 49 CFR 567.4(g)(3); NHTSA letters nht75-5.2 and nht76-3.20 (the share on the tow vehicle is part of GVWR)
 */
export function payload(
  curb: Derived<'lb'>,
  share: ShareBand,
  limits: readonly LadenLimit[],
): Either<OutsideItsRange | NoLimits, Payload> {
  const question = {
    curb,
    share,
    most: limits.filter(({ atLeast }) => atLeast !== true),
    least: limits.filter(({ atLeast }) => atLeast === true),
  };
  if (question.most.length === 0) return left({ chapter: 'load', tag: 'NoLimits' });
  const guarded = allHold(inABand('the tongue share', share.low, share.high));
  if (isLeft(guarded)) return guarded;
  const decisions: Decision[] = [...guarded.right];
  const { best, lifts } = bestOf(question, decisions);
  const one = share.low === share.high;
  const anywhere = one ? { lifts: [], anywhere: best } : anywhereOf(question, decisions);
  return right({
    lifts: [...new Set([...lifts, ...anywhere.lifts])],
    best,
    anywhere: anywhere.anywhere,
    decisions,
  });
}
