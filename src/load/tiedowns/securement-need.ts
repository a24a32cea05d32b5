/** The forces of braking and turning that the securement must withstand. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import {
  type AnyWeight,
  aboveZero,
  allHold,
  type Decision,
  type Derived,
  fromTable,
  inPounds,
  type OutsideItsRange,
  result,
  type Source,
  times,
} from '../../trace/index.js';
import { ratio } from '../../units/index.js';
import { type Direction, type SecurementBasis, securementForces } from '../data/securement-forces.js';

const downward: Source = Object.freeze({ ...securementForces.source, clause: '(b)' });

/** The forces to resist, for one of the two tests. */
export interface SecurementNeed<B extends SecurementBasis> {
  readonly basis: B;
  readonly forces: Readonly<Record<Direction, Derived<'lb'>>>;
  /** Downward hold on cargo the vehicle does not fully contain. */
  readonly down: Derived<'lb'> | 'contained';
  readonly decisions: readonly Decision[];
}

/** `W x g` in one direction, g from the table. */
function forceToward(direction: Direction, basis: SecurementBasis, weight: Derived<'lb'>): Derived<'lb'> {
  const row = securementForces.rows.find((each) => each.basis === basis && each.direction === direction);
  if (row === undefined) throw new RangeError(`no force ${direction} on ${basis}`);
  const source: Source = Object.freeze({ ...securementForces.source, clause: row.clause });
  const share = fromTable(`${direction} share on ${basis}`, ratio(row.g), {
    table: securementForces.name,
    key: `${basis}, ${direction}`,
    source,
  });
  return result(`${direction} force on ${basis}`, times(weight, share), source);
}

/**
 * What forces must the securement resist?
 *
 * Breaking strength: 0.8 of the weight forward, 0.5 rearward, 0.5 sideways. Working load limit: 0.435, 0.5, 0.25. Each
 * direction by itself. Downward 0.2 of the weight when the vehicle does not contain the cargo.
 *
 * The two sets are separate tests; passing one does not imply passing the other. Meeting the detailed rules for number and
 * aggregate strength counts as meeting these.
 *
 * @param articleWeight lb
 * @param basis which of the two tests
 * @param contained whether sides and ends of the vehicle hold the cargo
 * @returns lb. Left `OutsideItsRange`
 * @example orThrow(securementNeed(lb(10000), 'breaking strength', 'not contained')).forces.forward // 8,000 lb
 * @source 49 CFR 393.102(a) and (b), agency rules page; binds commercial carriers
 */
export function securementNeed<B extends SecurementBasis>(
  articleWeight: AnyWeight,
  basis: B,
  contained: 'contained' | 'not contained',
): Either<OutsideItsRange, SecurementNeed<B>> {
  const weight = inPounds('article weight', articleWeight);
  const guarded = allHold([aboveZero('article weight', weight)]);
  if (isLeft(guarded)) return guarded;
  const forces = {
    forward: forceToward('forward', basis, weight),
    rearward: forceToward('rearward', basis, weight),
    sideways: forceToward('sideways', basis, weight),
  };
  const down = contained === 'contained' ? contained : result('downward hold', times(weight, 0.2), downward);
  return right({ basis, forces, down, decisions: guarded.right });
}
