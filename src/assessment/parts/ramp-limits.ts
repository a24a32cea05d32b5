/** What the ramps allow on them, as a limit on the load. */
import type { LadenLimit } from '../../load/index.js';
import type { DecodedSpec } from '../../spec/index.js';
import { type Derived, greatestOf, inPounds, over, result, sum, times } from '../../trace/index.js';
import { heaviestPiece } from './cargo-pieces.js';
import type { FoundLimits } from './laden-limits.js';

const none: FoundLimits = { limits: [], decisions: [] };

const onLoad = (limit: Derived<'lb'>): readonly LadenLimit[] => [{ name: 'ramps', on: 'payload', limit }];

/**
 * The ramps bear the heaviest piece, or its heaviest axle. The load is taken as the cargo of the spec in its proportions, or as
 * one piece: `rating x cargo / heaviest`.
 */
export function rampLimits({ trailer: { ramps }, cargo = [] }: DecodedSpec): FoundLimits {
  if (ramps?.rating === undefined || ramps.basis === undefined) return none;
  const rated = inPounds('rating of the ramp pair', ramps.rating);
  const piece = heaviestPiece(cargo);
  if (piece === undefined) return ramps.basis === 'machine' ? { ...none, limits: onLoad(rated) } : none;
  const { name, weight, axles = [] } = piece.cargo;
  if (ramps.basis === 'machine' && cargo.length === 1) return { limits: onLoad(rated), decisions: piece.decisions };
  if (ramps.basis === 'axle' && axles.length === 0) return none;
  const loaded = sum(
    'cargo',
    cargo.map((each) => inPounds(`${each.name} weight`, each.weight)),
  );
  const bearing =
    ramps.basis === 'machine'
      ? inPounds(`${name} weight`, weight)
      : greatestOf(
          'heaviest machine axle',
          axles.map((axle, i) => inPounds(`load of machine axle ${i + 1}`, axle)),
        );
  return {
    limits: onLoad(result('load by ramps', times(rated, over(loaded, bearing)))),
    decisions: piece.decisions,
  };
}
