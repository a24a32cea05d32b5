/** Payload: the most that the limits allow at the best tongue share, and the most that holds at every share of the band. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Bound, governedBy } from '../../ratings/index.js';
import {
  allHold,
  constant,
  type Decision,
  type Derived,
  decide,
  greatestOf,
  leastOf,
  minus,
  type OutsideItsRange,
  plus,
  result,
} from '../../trace/index.js';
import { lb } from '../../units/index.js';
import type { NoLimits } from '../errors.js';
import { grossAllowed, grossAllowedTogether, type LadenLimit, shareAtLimit } from './laden-limit.js';
import { inABand } from './share-band.js';

/** The tongue shares the answer is to hold for: one share, or the ends of a band. */
export interface ShareBand {
  readonly low: Derived<'ratio'>;
  readonly high: Derived<'ratio'>;
}

/** A payload and what sets it. */
export interface PayloadBy {
  /** Not above this; negative when the empty trailer is over a limit already. */
  readonly weight: Derived<'lb'>;
  /** The limits that set it, all that tie; two that set it together are one entry. */
  readonly governing: readonly Bound[];
  /** What each limit allows by itself. */
  readonly limits: readonly Bound[];
}

/** The most at the best share of the band. */
export interface BestPayload extends PayloadBy {
  /** The shares at which it holds; absent when nothing may be loaded. */
  readonly shares?: { readonly from: Derived<'ratio'>; readonly to: Derived<'ratio'> };
}

/** Two figures: they are one where one share is asked. */
export interface Payload {
  /** Absent when something lifts at every share at which the ratings allow the most. */
  readonly best?: BestPayload;
  /** Absent when at some share of the band something lifts. */
  readonly anywhere?: PayloadBy;
  /** What lifts, where a figure is absent for it. */
  readonly lifts: readonly string[];
  readonly decisions: readonly Decision[];
}

type Lb = Derived<'lb'>;

interface Question {
  readonly curb: Lb;
  readonly share: ShareBand;
  /** Limits that the load may not exceed, and those it may not fall short of. */
  readonly most: readonly LadenLimit[];
  readonly least: readonly LadenLimit[];
}

const named = (name: string, gross: Lb, curb: Lb): Bound => ({
  name,
  limit: result(`payload by ${name}`, minus(gross, curb)),
});

/** At the lower share the axles carry most, at the higher one the tongue. */
const hardEnd = ({ on }: LadenLimit, { low, high }: ShareBand): Derived<'ratio'> => (on === 'axles' ? low : high);
const easyEnd = ({ on }: LadenLimit, { low, high }: ShareBand): Derived<'ratio'> => (on === 'axles' ? high : low);

/** Limits of the axles in one way of standing: they differ in nothing but their figure, and the least of them counts. */
function byStanding(limits: readonly LadenLimit[]): readonly (readonly LadenLimit[])[] {
  const groups: LadenLimit[][] = [];
  for (const limit of limits) {
    if (limit.on !== 'axles') continue;
    const alike = groups.find(([first]) => first?.returned === limit.returned && first?.lean === limit.lean);
    if (alike === undefined) groups.push([limit]);
    else alike.push(limit);
  }
  return groups;
}

/**
 * Axles and tongue together: more share relieves the axles and loads the tongue, so the best share is where the two meet.
 * The least limit of each is enough.
 */
function together({ curb, most }: Question): readonly Bound[] {
  const onTongue = most.filter(({ on }) => on === 'tongue');
  if (onTongue.length === 0) return [];
  const tongue = governedBy('greatest tongue load', onTongue);
  return byStanding(most).map((group) => {
    const least = governedBy('least limit of the axles', group);
    const name = [...least.governing, ...tongue.governing].map((bound) => bound.name).join(' with ');
    const axles = { ...(group[0] as LadenLimit), limit: least.limit };
    return named(name, grossAllowedTogether(axles, tongue.limit, curb, `gross weight allowed by ${name}`), curb);
  });
}

/** The least of what single limits and pairs allow; a pair is named only where no single limit sets the same figure. */
function least(symbol: string, single: readonly Bound[], pairs: readonly Bound[]): PayloadBy {
  const { limit, governing } = governedBy(symbol, [...single, ...pairs]);
  const alone = governing.filter((bound) => single.includes(bound));
  return { weight: limit, governing: alone.length > 0 ? alone : governing, limits: single };
}

/** The shares at which this gross weight keeps within every limit: from where the axles are relieved enough to where the tongue is full. */
function sharesFor(
  { curb, share, most, least }: Question,
  gross: Lb,
): { readonly from: Derived<'ratio'>; readonly to: Derived<'ratio'> } {
  const at = (limits: readonly LadenLimit[], on: LadenLimit['on']): readonly Derived<'ratio'>[] =>
    limits.filter((limit) => limit.on === on).map((limit) => shareAtLimit(limit, gross, curb));
  return {
    from: greatestOf('lowest tongue share', [share.low, ...at(most, 'axles'), ...at(least, 'tongue')]),
    to: leastOf('highest tongue share', [share.high, ...at(most, 'tongue'), ...at(least, 'axles')]),
  };
}

/** What lifts at one share: a load that would be below what must press. */
function liftsAt({ curb, least }: Question, gross: Lb, share: ShareBand, decisions: Decision[]): readonly string[] {
  return least.flatMap((limit) => {
    const edge = shareAtLimit(limit, gross, curb);
    const presses = limit.on === 'tongue' ? decide(share.low, '>=', edge) : decide(share.high, '<=', edge);
    decisions.push(presses);
    return presses.holds ? [] : [limit.name];
  });
}

const nothing = constant(lb(0));
const loaded = (symbol: string, curb: Lb, payload: Lb): Lb => result(symbol, plus(curb, payload));

function bestOf(
  question: Question,
  decisions: Decision[],
): { readonly best?: BestPayload; readonly lifts: readonly string[] } {
  const { curb, share, most } = question;
  const single = most.map((limit) => named(limit.name, grossAllowed(limit, easyEnd(limit, share), curb), curb));
  const figure = least('payload at the best share', single, together(question));
  const some = decide(figure.weight, '>=', nothing);
  decisions.push(some);
  if (!some.holds) return { best: figure, lifts: [] };
  const gross = loaded('gross weight at the best share', curb, figure.weight);
  const shares = sharesFor(question, gross);
  const asked = pressesAtSomeShare(question, gross);
  decisions.push(...asked);
  return asked.every(({ holds }) => holds)
    ? { best: { ...figure, shares }, lifts: [] }
    : { lifts: liftsAt(question, gross, { low: shares.to, high: shares.from }, decisions) };
}

/**
 * Whether some share is left when what must press does. The ratings leave one by themselves, since the gross weight is the least of
 * what they allow: often just one, so that its two ends tie. They are therefore not asked against each other.
 */
function pressesAtSomeShare(question: Question, gross: Lb): readonly Decision[] {
  const { from, to } = sharesFor({ ...question, least: [] }, gross);
  const edges = (on: LadenLimit['on']): readonly Derived<'ratio'>[] =>
    question.least.filter((limit) => limit.on === on).map((limit) => shareAtLimit(limit, gross, question.curb));
  const [floors, ceilings] = [edges('tongue'), edges('axles')];
  return [
    ...floors.map((floor) => decide(floor, '<=', to)),
    ...ceilings.flatMap((ceiling) => [from, ...floors].map((floor) => decide(floor, '<=', ceiling))),
  ];
}

function anywhereOf(
  question: Question,
  decisions: Decision[],
): { readonly anywhere?: PayloadBy; readonly lifts: readonly string[] } {
  const { curb, share, most } = question;
  const single = most.map((limit) => named(limit.name, grossAllowed(limit, hardEnd(limit, share), curb), curb));
  const figure = least('payload', single, []);
  const some = decide(figure.weight, '>=', nothing);
  decisions.push(some);
  if (!some.holds) return { anywhere: figure, lifts: [] };
  const lifts = liftsAt(question, loaded('gross weight at every share', curb, figure.weight), share, decisions);
  return lifts.length === 0 ? { anywhere: figure, lifts } : { lifts };
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
  const anywhere = one ? { ...(best && { anywhere: best }), lifts: [] } : anywhereOf(question, decisions);
  return right({
    ...(best && { best }),
    ...(anywhere.anywhere && { anywhere: anywhere.anywhere }),
    lifts: [...new Set([...lifts, ...anywhere.lifts])],
    decisions,
  });
}
