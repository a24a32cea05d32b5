/** What a spec's build may carry: every limit it knows, on the whole, on the axles, on the tongue. */

import { type Either, isRight } from 'fp-ts/lib/Either.js';
import { groupCapacity } from '../../axles/index.js';
import {
  type Guideline,
  type LadenLimit,
  type NoLimits,
  type Payload,
  type PayloadClaim,
  payload,
  payloadClaim,
  type ShareBand,
} from '../../load/index.js';
import type { Rating } from '../../ratings/index.js';
import type { Spec, TrailerSpec } from '../../spec/index.js';
import { constant, type Derived, inPounds, inUnit, type OutsideItsRange, product } from '../../trace/index.js';
import { ratio } from '../../units/index.js';
import type { Stack } from './running-gear.js';

export interface Carry {
  readonly payload: Payload;
  readonly share: ShareBand;
  readonly claim?: PayloadClaim;
}

/** The tongue share to hold: the one it is loaded to, or the whole band of the guideline. */
export function shareBand(spec: Spec, band: Guideline): ShareBand {
  if (spec.tongueShare === undefined) return band;
  const share = inUnit(spec.tongueShare as Derived<'%'>, 'ratio');
  return { low: share, high: share };
}

/** What the tires of an axle carry at the pressure they run, which is never above their rating; where no pressure is known, their rating. */
const tiresOfAxle = ({ systems, tires }: Stack, i: number): Derived<'lb'> | undefined => {
  const tire = tires[i];
  return tire?.asRun === undefined
    ? systems[i]?.governed.limits.find(({ name }) => name === 'tires')?.limit
    : product(`${tire.of} tires as they run`, tire.asRun, constant(ratio(tire.spec.count)));
};

/** What the axles carry with the tires of one of them full; where the pressure of any tire is known. */
export function tiresAsRun(stack: Stack): Derived<'lb'> | undefined {
  const { group, tires } = stack;
  return group === undefined || tires.every((tire) => tire?.asRun === undefined)
    ? undefined
    : groupCapacity(
        group,
        'axle group by tires as they run',
        tires.map((_, i) => tiresOfAxle(stack, i)),
      );
}

/** The axles' limits: part by part, or axle by axle where they share by their springs; the tires as they run. */
function axleLimits(stack: Stack): readonly LadenLimit[] {
  const asRun = tiresAsRun(stack);
  const limits = stack.group?.limits ?? [];
  const rated = limits.map(
    ({ name, limit }) => ({ name, on: 'axles', limit: name === 'tires' ? (asRun ?? limit) : limit }) as const,
  );
  return asRun === undefined || limits.some(({ name }) => name === 'tires')
    ? rated
    : [...rated, { name: 'tires', on: 'axles', limit: asRun }];
}

/** The limits of the trailer itself: its label, its axles, its coupler. */
export function trailerLimits(
  gvwr: Rating<'GVWR'> | undefined,
  stack: Stack,
  coupler: TrailerSpec['coupler'],
): readonly LadenLimit[] {
  return [
    ...(gvwr === undefined ? [] : [{ name: 'GVWR', on: 'gross', limit: gvwr.limit } as const]),
    ...axleLimits(stack),
    ...(coupler?.gross === undefined
      ? []
      : [{ name: 'coupler gross', on: 'gross', limit: inPounds('coupler gross rating', coupler.gross) } as const]),
    ...(coupler?.tongue === undefined
      ? []
      : [{ name: 'coupler tongue', on: 'tongue', limit: inPounds('coupler tongue rating', coupler.tongue) } as const]),
  ];
}

/** The payload, and the claim that adds the tongue load beside its check. */
export function carry(
  curb: Derived<'lb'>,
  share: ShareBand,
  limits: readonly LadenLimit[],
  gvwr: Rating<'GVWR'> | undefined,
  shareReturnedByBars: Derived<'ratio'> | undefined,
): Either<OutsideItsRange | NoLimits, Carry> {
  const most = payload(curb, share, limits, { shareReturnedByBars });
  return isRight(most)
    ? {
        _tag: 'Right',
        right: { payload: most.right, share, ...(gvwr && { claim: payloadClaim(curb, share.high, gvwr) }) },
      }
    : most;
}
