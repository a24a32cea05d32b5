/** The whole chain of checks on the tow side. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import type { Note } from '../ratings/index.js';
import { type Decision, decide, type Derived } from '../trace/index.js';
import { combinationWeight } from './combination.js';
import type { TowingError } from './errors.js';
import { allAboveZero, pounds } from './figures.js';
import { ask, type Findings, gathered, isMissing, loadFrom } from './findings.js';
import { hitchedBy, type HitchedAxleLoads, tongueRemark } from './hitched-axle-loads.js';
import { safetyChainChecks } from './safety-chains.js';
import { missingOf, readFacts, sumLoads, sumOrMissing, towFacts } from './tow-facts.js';
import type { TowedTrailer, TowVehicle } from './tow-vehicle.js';

export interface TowChecks extends Findings {
  /** The axles as hitched, no spring bars working; absent when a fact for them is wanting. */
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
 * listed in `notChecked`; nothing passes for want of a fact. Receiver and ball mount are not asked of a gooseneck.
 *
 * @param vehicle ratings from the door label, the owner's manual and the stampings; axles from a scale, truck alone
 * @param trailer gross weight, tongue load, coupler stamping, chains
 * @returns checks in lb. Left `NotAboveZero` (gross, a rating, wheelbase), `BelowZero`, `HitchContradicts`, `TongueAboveGross`
 * @example towChecks({ hitch: 'ball behind', gcwr: lb(11000), front: lb(2400), rear: lb(2100) }, { gross: lb(7500) }) // Right -1,000 lb, 'over'
 * @source vehicle owner manuals, trailer worked example, 2008-2010; 49 CFR 567.4 for GVWR and GAWR; chains: see safetyChainChecks
 */
export function towChecks(vehicle: TowVehicle, trailer: TowedTrailer): Either<TowingError, TowChecks> {
  const gross = pounds('trailer gross', trailer.gross);
  const above = allAboveZero([['trailer gross', gross]]);
  if (isLeft(above)) return above;
  const read = towFacts(vehicle);
  if (isLeft(read)) return read;
  const { front, rear, hardware, alone, lever } = read.right;
  const { 'tongue load': tongue } = readFacts({ 'tongue load': trailer.tongue });
  const possible = tongue === undefined ? undefined : decide(tongue, '<=', gross);
  if (tongue !== undefined && possible?.holds === false) return left({ chapter: 'towing', tag: 'TongueAboveGross', tongue: tongue.value, gross: gross.value });

  const onTongue = loadFrom(tongue, 'tongue load');
  const onBall = sumOrMissing('load on the ball', { 'tongue load': tongue, ...hardware });
  const combination = isMissing(alone) ? alone : combinationWeight(alone, gross);
  const hitched = front === undefined || rear === undefined || isMissing(onBall) || 'missing' in lever ? undefined : hitchedBy(lever, front, rear, onBall);
  const axleFacts = missingOf(alone, onBall, lever);
  const { placard = {} } = vehicle;
  const aboard = sumOrMissing('people, cargo and tongue', { ...readFacts({ 'people aboard': placard.people, 'cargo aboard': placard.cargo }), 'tongue load': tongue, ...hardware });
  const chains = trailer.chains === undefined ? ask('safety chains', 'gross', undefined, gross) : safetyChainChecks(trailer.chains, gross);
  if (isLeft(chains)) return chains;

  const found = gathered([
    ask('tow vehicle GVWR', 'tow vehicle hitched', vehicle.gvwr, sumLoads('tow vehicle hitched', alone, onTongue)),
    ask('tow vehicle front GAWR', 'tow vehicle front axle', vehicle.frontGawr, loadFrom(hitched?.front, ...axleFacts)),
    ask('tow vehicle rear GAWR', 'tow vehicle rear axle', vehicle.rearGawr, loadFrom(hitched?.rear, ...axleFacts)),
    ask('GCWR', 'combination', vehicle.gcwr, combination),
    ...(vehicle.hitch === 'gooseneck' && vehicle.receiver === undefined ? [] : [
      ask('receiver gross', 'gross', vehicle.receiver?.gross, gross), ask('receiver tongue', 'tongue', vehicle.receiver?.tongue, onTongue)]),
    ...(vehicle.hitch === 'gooseneck' && vehicle.ballMount === undefined ? [] : [
      ask('ball mount gross', 'gross', vehicle.ballMount?.gross, gross), ask('ball mount tongue', 'tongue', vehicle.ballMount?.tongue, onTongue)]),
    ask('ball gross', 'gross', vehicle.ball?.gross, gross),
    ask('coupler gross', 'gross', trailer.coupler?.gross, gross),
    ask('coupler tongue', 'tongue', trailer.coupler?.tongue, onTongue),
    chains,
    ask('trailer tow rating', 'gross', vehicle.trailerRating, gross),
    ask('tow vehicle tongue', 'tongue', vehicle.tongueRating, onTongue),
    ask('occupant and cargo placard', 'tow vehicle load', placard.limit, aboard),
  ]);
  if (isLeft(found)) return found;
  const remark = tongue === undefined ? { notes: [], decisions: [] } : tongueRemark(tongue);
  return right({
    ...found.right, ...(hitched && { hitched }), ...(isMissing(combination) ? {} : { combination }),
    notes: [...read.right.notes, ...remark.notes, ...(hitched?.notes ?? []), ...('notes' in chains.right ? chains.right.notes as readonly Note[] : [])],
    decisions: [...above.right, ...read.right.decisions, ...(possible === undefined ? [] : [possible]), ...remark.decisions, ...(hitched?.decisions ?? [])],
  });
}
