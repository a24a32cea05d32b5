/** The payload of a trailer under every limit its checks use, and where that payload sits. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import {
  type BestPayload,
  type Guideline,
  type LadenLimit,
  type NoLimits,
  type PayloadBy,
  payload,
  type ShareBand,
} from '../../load/index.js';
import type { DecodedSpec } from '../../spec/index.js';
import {
  type Decision,
  type Derived,
  minus,
  type OutsideItsRange,
  over,
  plus,
  result,
  times,
} from '../../trace/index.js';
import { has, signOfFigure } from '../../units/internal.js';
import type { LadenLimits } from './laden-limits.js';
import { sidesOfCargo } from './lean-of-cargo.js';
import { rampLimits } from './ramp-limits.js';
import type { Rig } from './rig.js';
import type { Weighed } from './weights.js';

/** The most at the best share of the band, with the places at which a load of that weight gives it. */
export interface BestPlacedPayload extends BestPayload {
  /** The balance point of the load behind the coupler, from the highest tongue share to the lowest; absent where the balance of the empty trailer is not known. */
  readonly places?: { readonly from: Derived<'in'>; readonly to: Derived<'in'> } | undefined;
}

/** Two figures; one where the spec states a share. */
export interface Carry {
  /** The most that some share of the band allows. */
  readonly best?: BestPlacedPayload | undefined;
  /** The most that holds at every share of the band. */
  readonly anywhere?: PayloadBy | undefined;
  /** What lifts, where a figure is absent for it. */
  readonly lifts: readonly string[];
  /** Every limit that was asked, for whoever draws them. */
  readonly limits: readonly LadenLimit[];
  /** The band, or the share that is stated. */
  readonly share: ShareBand;
  /** Where the program went one way because of a figure; for studies. */
  readonly decisions: readonly Decision[];
}

/** The tongue share to hold: the one it is loaded to, or the whole band of the guideline. */
export function shareBand(spec: DecodedSpec, band: Guideline): ShareBand {
  if (spec.tongueShare === undefined) return band;
  const share = spec.tongueShare;
  return { low: share, high: share };
}

/** Where a load of the best weight gives a tongue share: `x = a - (T - T0) a / P`; T0 the tongue load of the empty trailer. */
function placesFor(
  { shares, weight }: BestPayload,
  curb: Derived<'lb'>,
  rig: Rig,
  { trailer }: Weighed,
): BestPlacedPayload['places'] {
  const { group } = rig.stack;
  if (shares === undefined || group === undefined || trailer === undefined) return undefined;
  if (signOfFigure(weight.value) <= 0) return undefined;
  const a = group.at;
  const empty = has(trailer, 'at')
    ? result('tongue load of the empty trailer', over(times(curb, minus(a, trailer.at as Derived<'in'>)), a))
    : (trailer.tongue as Derived<'lb'>);
  const gross = plus(curb, weight);
  const place = (symbol: string, share: Derived<'ratio'>): Derived<'in'> =>
    result(symbol, minus(a, over(times(minus(times(gross, share), empty), a), weight)));
  return { from: place('foremost place of the load', shares.to), to: place('rearmost place of the load', shares.from) };
}

/** Field by field: an object that grows keys costs more than what is put into it. */
const placed = (
  { weight, governing, limits, shares }: BestPayload,
  places: BestPlacedPayload['places'],
): BestPlacedPayload => ({ weight, governing, limits, shares, places });

/** The payload, best and anywhere; undefined where the empty weight or every limit is unknown. */
export function payloadPart(
  rig: Rig,
  { gross, axles, tongue, sides }: LadenLimits,
  weighed: Weighed,
  share: ShareBand,
): Either<OutsideItsRange | NoLimits, Carry | undefined> {
  const { curb } = weighed;
  if (curb === undefined) return right(undefined);
  const ramps = rampLimits(rig.spec, rig.climbers);
  const lean = sidesOfCargo(rig, rig.spec);
  const limits = [...gross, ...axles, ...sides(lean.sides), ...tongue.limits, ...ramps.limits];
  if (limits.every(({ atLeast }) => atLeast === true)) return right(undefined);
  const found = payload(curb, share, limits);
  if (isLeft(found)) return found;
  const { best, anywhere, lifts, decisions } = found.right;
  return right({
    lifts,
    limits,
    share,
    decisions: [...decisions, ...lean.decisions, ...tongue.decisions, ...ramps.decisions],
    best: best && placed(best, placesFor(best, curb, rig, weighed)),
    anywhere,
  });
}
