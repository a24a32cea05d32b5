/** The tow side of a spec: the chain of checks, spring bars, the largest trailer, and what it leaves for payload. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import type { AxleGroup } from '../../axles/index.js';
import type { ShareBand } from '../../load/index.js';
import type { DecodedSpec } from '../../spec/index.js';
import {
  couplerChecks,
  largestTrailer,
  type TowedTrailer,
  type TowingError,
  type TowVehicle,
  towChecks,
} from '../../towing/index.js';
import type { Derived } from '../../trace/index.js';
import { frozen } from '../../units/internal.js';
import { emptyPart, open, together } from './part-of-answer.js';
import { barsPart } from './spring-bars.js';
import { openChecks } from './tow-facts.js';
import type { TowPart } from './tow-part.js';
import { unweighed } from './wanting-keys.js';

/** The tow vehicle as its chapter reads it. */
export const vehicleOf = ({ tow, trailer }: DecodedSpec): TowVehicle | undefined =>
  tow && { hitch: trailer.hitch === 'ball' ? 'ball behind' : 'gooseneck', ...tow };

/** What is not known stands there as not known: nothing is read from a prototype. */
export const nothingTowed = {
  hitched: undefined,
  combination: undefined,
  bars: undefined,
  shareReturnedByBars: undefined,
  largest: undefined,
  offLevel: undefined,
};

const nothingAsked: TowPart = frozen({ ...nothingTowed, ...emptyPart });

/** What can be asked without a tow vehicle. */
function couplerAlone(spec: DecodedSpec, trailer: TowedTrailer): Either<TowingError, TowPart> {
  const coupled = couplerChecks(trailer);
  if (isLeft(coupled)) return left({ ...coupled.left, path: coupled.left.path ?? 'trailer' });
  const { checks, notes, decisions, notChecked } = coupled.right;
  const unknown = { id: 'tow', what: 'tow vehicle', missing: 'its label, its axle loads, its hitch', paths: ['tow'] };
  return right({
    ...nothingAsked,
    checks,
    notes,
    notChecked: [...openChecks(notChecked, spec), unknown],
    decisions,
  });
}

/** Asks the tow side everything the spec lets us ask. */
export function towPart(
  spec: DecodedSpec,
  gross: Derived<'lb'> | undefined,
  tongue: Derived<'lb'> | undefined,
  group: AxleGroup | undefined,
  share: ShareBand,
): Either<TowingError, TowPart> {
  const what = 'coupler, chains and tow vehicle';
  if (gross === undefined)
    return right({
      ...nothingTowed,
      ...open({ id: 'tow/gross', what, missing: 'gross weight', paths: unweighed(spec) }),
    });
  const { coupler, chains } = spec.trailer;
  const trailer: TowedTrailer = {
    gross,
    tongue,
    coupler,
    chains: chains && { each: chains.each, count: chains.count === 1 ? 1 : 2 },
  };
  const vehicle = vehicleOf(spec);
  if (vehicle === undefined) return couplerAlone(spec, trailer);
  const chain = towChecks(vehicle, trailer);
  if (isLeft(chain)) return left({ ...chain.left, path: chain.left.path ?? 'tow' });
  const level = { ...emptyPart, ...chain.right, notChecked: openChecks(chain.right.notChecked, spec) };
  const bars = barsPart(spec, gross, tongue, group);
  if (isLeft(bars)) return bars;
  const largest = largestTrailer({ vehicle, coupler, tongueShare: share.high });
  return right({
    ...nothingTowed,
    ...level,
    ...bars.right,
    ...together([level, bars.right]),
    largest: isLeft(largest) ? undefined : largest.right,
  });
}
