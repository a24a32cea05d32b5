/** The tow side of a spec: the chain of checks, spring bars, the largest trailer, and what it leaves for payload. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import type { AxleGroup } from '../../axles/index.js';
import type { ShareBand } from '../../load/index.js';
import type { DecodedSpec } from '../../spec/index.js';
import {
  couplerChecks,
  type HitchedAxleLoads,
  type LargestTrailer,
  largestTrailer,
  type TowedTrailer,
  type TowingError,
  type TowVehicle,
  towChecks,
  type WeightDistribution,
  weightDistribution,
} from '../../towing/index.js';
import { constant, type Derived, decide, inInches, inShare, over, plus, result, times } from '../../trace/index.js';
import { lb } from '../../units/index.js';
import { signOf } from '../../units/internal.js';
import type { NotChecked } from './not-checked.js';
import { open, type Part } from './part-of-answer.js';

/** The tongue load and the tow vehicle's axles with the ball off level. */
export interface OffLevelHitch {
  readonly tongue: Derived<'lb'>;
  /** The tow vehicle's axles, bars off. */
  readonly hitched?: HitchedAxleLoads;
  /** The same with the bars set. */
  readonly barsOn?: { readonly front: Derived<'lb'>; readonly rear: Derived<'lb'> };
}

export interface TowPart extends Part {
  readonly hitched?: HitchedAxleLoads;
  readonly combination?: Derived<'lb'>;
  readonly bars?: WeightDistribution;
  /** The part of the tongue load that the bars put back on the trailer axles. */
  readonly shareReturnedByBars?: Derived<'ratio'>;
  readonly largest?: LargestTrailer;
  readonly offLevel?: OffLevelHitch;
}

const nothing = constant(lb(0));

/** The tow vehicle as its chapter reads it. */
export const vehicleOf = ({ tow, trailer }: DecodedSpec): TowVehicle | undefined =>
  tow && { ...tow, hitch: trailer.hitch === 'ball' ? 'ball behind' : 'gooseneck' };

const joined = (missing: readonly { what: string; missing: readonly string[] }[]): readonly NotChecked[] =>
  missing.map(({ what, missing: facts }) => ({ what, missing: facts.join(', ') }));

function barsOf(
  spec: DecodedSpec,
  gross: Derived<'lb'>,
  tongue: Derived<'lb'>,
  group: AxleGroup,
): Either<TowingError, WeightDistribution | undefined> {
  const { tow } = spec;
  if (tow?.bars === undefined || tow.front === undefined || tow.rear === undefined || tow.wheelbase === undefined)
    return right(undefined);
  const { overhang } = tow;
  if (overhang === undefined || overhang === 'unknown') return right(undefined);
  return weightDistribution({
    front: tow.front,
    rear: tow.rear,
    gross,
    tongue,
    wheelbase: tow.wheelbase,
    overhang,
    hitchHardware: tow.hitchHardware,
    axlesAt: group.at,
    bars: tow.bars,
    ratings: { front: tow.frontGawr, rear: tow.rearGawr, trailerAxles: group.capacity },
  });
}

/** `k = p o / (a + o)`: the part of the tongue load that bars put back on the trailer axles, whatever the load; p the part of the front axle's loss that they restore. */
function returnedByBars({ tow }: DecodedSpec, { at }: AxleGroup): Derived<'ratio'> | undefined {
  if (tow?.bars === undefined || tow.front === undefined || tow.rear === undefined || tow.wheelbase === undefined)
    return undefined;
  if (tow.overhang === undefined || tow.overhang === 'unknown') return undefined;
  const overhang = inInches('overhang', tow.overhang);
  // Over the axle or ahead of it nothing is taken off the front axle, and there is nothing to restore.
  if (signOf(overhang.value.value) <= 0) return undefined;
  const restore = inShare('share to restore', tow.bars.restore);
  return result('share of the tongue load put back by the bars', over(times(restore, overhang), plus(at, overhang)));
}

/** Asks the tow side everything the spec lets us ask. */
export function towPart(
  spec: DecodedSpec,
  gross: Derived<'lb'> | undefined,
  tongue: Derived<'lb'> | undefined,
  group: AxleGroup | undefined,
  share: ShareBand,
): Either<TowingError, TowPart> {
  if (gross === undefined) return right(open('coupler, chains and tow vehicle', 'gross weight'));
  const { coupler, chains } = spec.trailer;
  const trailer: TowedTrailer = {
    gross,
    tongue,
    coupler,
    chains: chains && { each: chains.each, count: chains.count === 1 ? 1 : 2 },
  };
  const vehicle = vehicleOf(spec);
  if (spec.tow === undefined || vehicle === undefined) {
    const coupled = couplerChecks(trailer);
    if (isLeft(coupled)) return left({ ...coupled.left, path: coupled.left.path ?? 'trailer' });
    const { checks, notes, decisions, notChecked } = coupled.right;
    return right({
      checks,
      notes,
      decisions,
      notChecked: [...joined(notChecked), { what: 'tow vehicle', missing: 'anything about it' }],
    });
  }
  const chain = towChecks(vehicle, trailer);
  if (isLeft(chain)) return left({ ...chain.left, path: chain.left.path ?? 'tow' });
  const notChecked = joined(chain.right.notChecked);
  const returned = group && returnedByBars(spec, group);
  const presses = tongue && decide(tongue, '>', nothing);
  const bars =
    tongue === undefined || group === undefined || returned === undefined || presses?.holds !== true
      ? right(undefined)
      : barsOf(spec, gross, tongue, group);
  if (isLeft(bars)) return left({ ...bars.left, path: bars.left.path ?? 'tow.bars' });
  const largest = largestTrailer({ vehicle, coupler, tongueShare: share.high });
  const unset =
    spec.tow.bars !== undefined && bars.right === undefined
      ? [
          {
            what: 'weight distributing bars',
            missing:
              returned !== undefined && presses?.holds === false
                ? 'a tongue load that presses on the ball'
                : 'axles alone, wheelbase and a measured overhang behind the rear axle',
          },
        ]
      : [];
  return right({
    ...chain.right,
    decisions: [...chain.right.decisions, ...(presses === undefined ? [] : [presses])],
    notChecked: [...notChecked, ...unset],
    ...(bars.right &&
      tongue && {
        bars: bars.right,
        checks: [...chain.right.checks, ...bars.right.findings.barsOn.checks],
        notes: [...chain.right.notes, ...bars.right.notes],
        decisions: [...chain.right.decisions, ...(presses === undefined ? [] : [presses]), ...bars.right.decisions],
      }),
    ...(returned && { shareReturnedByBars: returned }),
    ...(isLeft(largest) ? {} : { largest: largest.right }),
  });
}
