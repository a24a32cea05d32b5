/** The whole chain of checks on the tow side. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import type { Note } from '../../ratings/index.js';
import type { Decision, Derived } from '../../trace/index.js';
import type { TowingError } from '../errors.js';
import { combinationWeight } from '../vehicle/combination.js';
import type { HitchedAxleLoads } from '../vehicle/hitched-axle-loads.js';
import { towFacts } from '../vehicle/tow-facts.js';
import type { TowedTrailer, TowVehicle } from '../vehicle/tow-vehicle.js';
import { ask, type Findings, gathered, isMissing } from './checks-or-missing.js';
import { couplerChecks } from './coupler-checks.js';
import { askedOfTongue } from './tongue-checks.js';

export interface TowChecks extends Findings {
  /** The axles as hitched, no spring bars working; absent when a fact for them is missing. */
  readonly hitched?: HitchedAxleLoads;
  readonly combination?: Derived<'lb'>;
  readonly notes: readonly Note[];
  readonly decisions: readonly Decision[];
}

/**
 * Can this truck pull this trailer: which of its ratings hold, which do not, and which could not be checked?
 *
 * Tow vehicle GVWR against truck + tongue; front and rear GAWR against the axles as hitched, bars off; GCWR against truck
 * alone + trailer gross, the tongue counted once; receiver, ball mount, ball and coupler against gross and tongue; chains;
 * the vehicle maker's trailer and tongue ratings; the placard against people + cargo + tongue.
 *
 * The trailer's own GVWR, axles and tires are other chapters' questions. A check whose rating or weight is not given is
 * listed in `notChecked`; a missing input never counts as a pass. Receiver and ball mount are not asked of a gooseneck.
 *
 * @param vehicle ratings from the door label, the owner's manual and the stampings; axles from a scale, truck alone
 * @param trailer gross weight, tongue load, coupler stamping, chains
 * @returns checks in lb. Left `NotAboveZero` (gross, a rating, wheelbase), `BelowZero`, `HitchContradicts`
 * @example towChecks({ hitch: 'ball behind', gcwr: lb(11000), front: lb(2400), rear: lb(2100) }, { gross: lb(7500) }) // Right -1,000 lb, 'over'
 * @source vehicle owner manuals, trailer worked example, 2008-2010; 49 CFR 567.4 for GVWR and GAWR; chains: see safetyChains
 */
export function towChecks(vehicle: TowVehicle, trailer: TowedTrailer): Either<TowingError, TowChecks> {
  const coupled = couplerChecks(trailer);
  if (isLeft(coupled)) return coupled;
  const { gross, tongue } = coupled.right;
  const read = towFacts(vehicle);
  if (isLeft(read)) return read;
  const { alone } = read.right;
  const combination = isMissing(alone) ? alone : combinationWeight(alone, gross);
  const asked = askedOfTongue(vehicle, read.right, tongue);
  const { hitched } = asked;

  const found = gathered([
    ...asked.vehicle,
    ask('GCWR', 'combination', vehicle.gcwr, combination),
    ...(vehicle.hitch === 'gooseneck' && vehicle.receiver === undefined
      ? []
      : [ask('receiver gross', 'gross', vehicle.receiver?.gross, gross), ...asked.receiver]),
    ...(vehicle.hitch === 'gooseneck' && vehicle.ballMount === undefined
      ? []
      : [ask('ball mount gross', 'gross', vehicle.ballMount?.gross, gross), ...asked.ballMount]),
    ask('ball gross', 'gross', vehicle.ball?.gross, gross),
    coupled,
    ask('trailer tow rating', 'gross', vehicle.trailerRating, gross),
    ...asked.rating,
    ...asked.placard,
  ]);
  if (isLeft(found)) return found;
  return right({
    ...found.right,
    ...(hitched && { hitched }),
    ...(isMissing(combination) ? {} : { combination }),
    notes: [...read.right.notes, ...coupled.right.notes, ...(hitched?.notes ?? [])],
    decisions: [...read.right.decisions, ...found.right.decisions, ...(hitched?.decisions ?? [])],
  });
}
