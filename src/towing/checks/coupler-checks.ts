/** The trailer's own side of the hitch: its coupler and chains, whatever tows it. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import type { Note } from '../../ratings/index.js';
import { type Decision, type Derived, inPounds } from '../../trace/index.js';
import type { TowingError } from '../errors.js';
import { allAboveZero } from '../figures.js';
import { safetyChains } from '../hitch/safety-chains.js';
import { tongueRemark } from '../vehicle/hitched-axle-loads.js';
import type { TowedTrailer } from '../vehicle/tow-vehicle.js';
import { ask, type Findings, gathered, loadFrom } from './checks-or-missing.js';

export interface CouplerChecks extends Findings {
  readonly gross: Derived<'lb'>;
  readonly tongue?: Derived<'lb'> | undefined;
  readonly notes: readonly Note[];
  readonly decisions: readonly Decision[];
}

/**
 * Do coupler and safety chains hold this trailer, whatever tows it?
 *
 * Coupler against gross and against tongue load; chains against gross, in both readings that are in print.
 *
 * Not the truck's side of the hitch: ball, mount and receiver are asked by `towChecks`, which asks these too.
 *
 * @param trailer gross weight and tongue load, the stamping of the coupler, the breaking strength of the chains
 * @returns checks in lb, and by name what could not be checked. Left `NotAboveZero` (gross, a rating); a tongue that pulls up, or
 * presses with more than the whole trailer weighs, is an answer with a note
 * @example couplerChecks({ gross: lb(12400), tongue: lb(1400), coupler: { gross: lb(14000), tongue: lb(1250) } }) // Right 'over' -150 lb
 * @source common practice, no source (coupler stampings are limits); chains: see safetyChains
 */
export function couplerChecks(trailer: TowedTrailer): Either<TowingError, CouplerChecks> {
  const gross = inPounds('trailer gross', trailer.gross);
  const above = allAboveZero([['trailer gross', gross]]);
  if (isLeft(above)) return above;
  const tongue = trailer.tongue === undefined ? undefined : inPounds('tongue load', trailer.tongue);
  const chains = trailer.chains && safetyChains(trailer.chains, gross);
  if (chains !== undefined && isLeft(chains)) return chains;
  const found = gathered([
    ask('coupler gross', 'gross', trailer.coupler?.gross, gross),
    ask('coupler tongue', 'tongue', trailer.coupler?.tongue, loadFrom(tongue, 'tongue load')),
    chains ?? ask('safety chains', 'gross', undefined, gross),
  ]);
  if (isLeft(found)) return found;
  const remark = tongue === undefined ? { notes: [], decisions: [] } : tongueRemark(tongue, gross);
  const { checks, notChecked } = found.right;
  const notes = [...remark.notes, ...(chains?.right.notes ?? [])];
  const decisions = [...above.right, ...found.right.decisions, ...(chains?.right.decisions ?? []), ...remark.decisions];
  return right({ checks, notChecked, gross, tongue, notes, decisions });
}
