/** What a spec's build may carry: every limit it knows, on the whole, on the axles, on the tongue. */
import { type Either, isRight } from 'fp-ts/lib/Either.js';
import { type Guideline, type LadenLimit, type NoLimits, payload, type Payload, type PayloadClaim, payloadClaim, type ShareBand, type ShareOutOfRange } from '../load/index.js';
import type { Stack } from './stack.js';
import type { Rating } from '../ratings/index.js';
import { constant, converted, type Derived, inPounds, leastOf, product } from '../trace/index.js';
import { ratio } from '../units/index.js';
import type { Spec, TrailerSpec } from './codec.js';

export interface Carry {
  readonly payload: Payload;
  readonly share: ShareBand;
  readonly claim?: PayloadClaim;
}

/** The tongue share to hold: the one it is loaded to, or the whole band of the guideline. */
export function shareBand(spec: Spec, band: Guideline): ShareBand {
  if (spec.tongueShare === undefined) return band;
  const share = converted(null, spec.tongueShare as Derived<'%'>, 'ratio');
  return { low: share, high: share };
}

/** The limits of the trailer itself: its label, its axles part by part, its coupler. */
export function trailerLimits(gvwr: Rating<'GVWR'> | undefined, stack: Stack, coupler: TrailerSpec['coupler']): readonly LadenLimit[] {
  const asRun = tiresAsRun(stack);
  const axles = (stack.group?.limits ?? []).map(({ name, limit }) => ({ name, on: 'axles', limit: name === 'tires' ? (asRun ?? limit) : limit }) as const);
  return [
    ...(gvwr === undefined ? [] : [{ name: 'GVWR', on: 'gross', limit: gvwr.limit } as const]),
    ...axles,
    ...(coupler?.gross === undefined ? [] : [{ name: 'coupler gross', on: 'gross', limit: inPounds('coupler gross rating', coupler.gross) } as const]),
    ...(coupler?.tongue === undefined ? [] : [{ name: 'coupler tongue', on: 'tongue', limit: inPounds('coupler tongue rating', coupler.tongue) } as const]),
  ];
}

/** What the axles carry with every tire full at the pressure it runs, which is never above its rating; where all axles share alike and every pressure is known. */
function tiresAsRun({ tires, group }: Stack): Derived<'lb'> | undefined {
  const asRun = tires.flatMap((each) => (each?.asRun === undefined ? [] : [product(`${each.of} tires as they run`, each.asRun, constant(ratio(each.spec.count)))]));
  if (group === undefined || asRun.length < group.axles.length || group.notes.some(({ tag }) => tag === 'SharedByRate')) return undefined;
  return asRun.length === 1 ? asRun[0] : product('axle group by tires as they run', leastOf(null, asRun), constant(ratio(asRun.length)));
}

/** The payload, and the claim that adds the tongue load beside its check. */
export function carry(curb: Derived<'lb'>, share: ShareBand, limits: readonly LadenLimit[], gvwr: Rating<'GVWR'> | undefined): Either<ShareOutOfRange | NoLimits, Carry> {
  const most = payload(curb, share, limits);
  return isRight(most)
    ? { _tag: 'Right', right: { payload: most.right, share, ...(gvwr && { claim: payloadClaim(curb, share.high, gvwr) }) } }
    : most;
}
