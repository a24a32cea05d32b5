/** What the ramps allow on them, as a limit on the load. */
import type { LadenLimit } from '../../load/index.js';
import type { DecodedSpec } from '../../spec/index.js';
import { type Derived, decide, inPounds, over, result, sum, times } from '../../trace/index.js';
import { heaviestAxle } from './cargo-pieces.js';
import type { Climbers } from './climbers.js';
import { type FoundLimits, nothing } from './rig.js';

const none: FoundLimits = { limits: [], decisions: [] };

const onLoad = (limit: Derived<'lb'>): readonly LadenLimit[] => [{ name: 'ramps', on: 'payload', limit }];

/**
 * The ramps bear the heaviest piece, or the heaviest machine axle. The load is taken as the cargo of the spec in its
 * proportions, or as one piece: `rating x cargo / heaviest`. Cargo of no weight has no proportions.
 */
export function rampLimits({ trailer: { ramps }, cargo = [] }: DecodedSpec, { borne: piece }: Climbers): FoundLimits {
  if (ramps?.rating === undefined || ramps.basis === undefined) return none;
  const rated = inPounds('rating of the ramp pair', ramps.rating);
  const byMachine = ramps.basis === 'machine';
  if (piece === undefined) return byMachine ? { ...none, limits: onLoad(rated) } : none;
  if (byMachine && cargo.length === 1) return { limits: onLoad(rated), decisions: piece.decisions };
  const loaded = sum(
    'cargo',
    cargo.map((each) => inPounds(`${each.name} weight`, each.weight)),
  );
  const weighs = decide(loaded, '>', nothing);
  const decisions = [...piece.decisions, weighs];
  if (!weighs.holds) return { limits: byMachine ? onLoad(rated) : [], decisions };
  const heaviest = inPounds(`${piece.cargo.name} weight`, piece.cargo.weight);
  const bearing = byMachine ? heaviest : (heaviestAxle(piece.cargo) ?? heaviest);
  return { limits: onLoad(result('load by ramps', times(rated, over(loaded, bearing)))), decisions };
}
