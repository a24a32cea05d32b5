/** What a spec's build may carry: every limit it knows, on the whole, on the axles, on the tongue. */
import { type Either, isRight } from 'fp-ts/lib/Either.js';
import type { AxleGroup } from '../axles/index.js';
import { type Guideline, type LadenLimit, payload, type Payload, type PayloadClaim, payloadClaim, type ShareBand, type ShareOutOfRange } from '../load/index.js';
import type { Rating } from '../ratings/index.js';
import { converted, type Derived } from '../trace/index.js';
import type { Spec } from './codec.js';

export interface Carry {
  readonly payload: Payload;
  readonly share: ShareBand;
  readonly claim?: PayloadClaim;
}

/** The tongue share to hold: the one it is loaded to, or the whole band of the guideline. */
export function shareBand(spec: Spec, band: Guideline): ShareBand {
  if (spec.tongueShare === undefined) return band;
  const share = converted('tongue share it is loaded to', spec.tongueShare as Derived<'%'>, 'ratio');
  return { low: share, high: share };
}

/** The limits of the trailer itself. */
export function trailerLimits(gvwr: Rating<'GVWR'> | undefined, group: AxleGroup | undefined, coupler: { gross?: Rating<'coupler gross'>; tongue?: Rating<'coupler tongue'> }): readonly LadenLimit[] {
  const limits: LadenLimit[] = [];
  if (gvwr !== undefined) limits.push({ name: 'GVWR', on: 'gross', limit: gvwr.limit });
  for (const { name, limit } of group?.limits ?? []) limits.push({ name, on: 'axles', limit });
  if (coupler.gross !== undefined) limits.push({ name: 'coupler gross rating', on: 'gross', limit: coupler.gross.limit });
  if (coupler.tongue !== undefined) limits.push({ name: 'coupler tongue rating', on: 'tongue', limit: coupler.tongue.limit });
  return limits;
}

/** The payload, and the claim that adds the tongue load beside its check. */
export function carry(curb: Derived<'lb'>, share: ShareBand, limits: readonly LadenLimit[], gvwr: Rating<'GVWR'> | undefined): Either<ShareOutOfRange, Carry> {
  const most = payload(curb, share, limits);
  return isRight(most)
    ? { _tag: 'Right', right: { payload: most.right, share, ...(gvwr && { claim: payloadClaim(curb, share.high, gvwr) }) } }
    : most;
}
