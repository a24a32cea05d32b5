/** Securement forces in braking and turning: one test on breaking strength, one on working load limit, kept apart by type. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../../ratings/index.js';
import {
  type AnyWeight,
  aboveZero,
  allHold,
  type Decision,
  type Derived,
  fromTable,
  inPounds,
  minus,
  notNegative,
  type OutsideItsRange,
  result,
  type Source,
  times,
} from '../../trace/index.js';
import { compare, ratio } from '../../units/index.js';
import { type Direction, type SecurementBasis, securementForces } from '../data/securement-forces.js';

const directions = ['forward', 'rearward', 'sideways'] as const satisfies readonly Direction[];
const downward: Source = { ...securementForces.source, clause: '(b)' };

/** The forces to stand, for one of the two tests. */
export interface SecurementNeed<B extends SecurementBasis> {
  readonly basis: B;
  readonly forces: Readonly<Record<Direction, Derived<'lb'>>>;
  /** Downward hold on cargo the vehicle does not fully contain. */
  readonly down: Derived<'lb'> | 'contained';
  readonly decisions: readonly Decision[];
}

/** What the securement offers in each direction, on the strength the test is for. */
export interface SecurementOffer<B extends SecurementBasis> {
  readonly basis: B;
  readonly offers: Readonly<Record<Direction, AnyWeight>>;
}

/** Names what is offered as breaking strengths. @example breakingStrengths({ forward: lb(32000), rearward: lb(20000), sideways: lb(20000) }) */
export const breakingStrengths = (
  offers: SecurementOffer<'breaking strength'>['offers'],
): SecurementOffer<'breaking strength'> => ({ basis: 'breaking strength', offers });
/** Names what is offered as working load limits. @example workingLoadLimits({ forward: lb(9000), rearward: lb(9000), sideways: lb(5000) }) */
export const workingLoadLimits = (
  offers: SecurementOffer<'working load limit'>['offers'],
): SecurementOffer<'working load limit'> => ({ basis: 'working load limit', offers });

/**
 * What forces must the securement stand?
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
  const forces: Partial<Record<Direction, Derived<'lb'>>> = {};
  for (const row of securementForces.rows) {
    if (row.basis !== basis) continue;
    const source: Source = { ...securementForces.source, clause: row.clause };
    const share = fromTable(`${row.direction} share on ${basis}`, ratio(row.g), {
      table: securementForces.name,
      key: `${basis}, ${row.direction}`,
      source,
    });
    forces[row.direction] = result(`${row.direction} force on ${basis}`, times(weight, share), source);
  }
  const down = contained === 'contained' ? contained : result('downward hold', times(weight, 0.2), downward);
  return right({ basis, forces: forces as Record<Direction, Derived<'lb'>>, down, decisions: guarded.right });
}

export interface SecurementCheck {
  readonly direction: Direction;
  readonly force: Derived<'lb'>;
  readonly offered: Derived<'lb'>;
  readonly reserve: Derived<'lb'>;
  readonly verdict: 'within' | 'over';
}

export interface Securement {
  readonly basis: SecurementBasis;
  readonly checks: readonly SecurementCheck[];
  readonly verdict: 'within' | 'over';
  readonly decisions: readonly Decision[];
  readonly notes: readonly Note[];
}

/**
 * Does what is offered stand the forces?
 *
 * Each direction by itself: the force must not exceed what is offered there. Compiles only when both are on one basis.
 *
 * How gear at an angle adds up in a direction is not asked here: offer what it holds in that direction.
 *
 * @param need from `securementNeed`
 * @param offer from `breakingStrengths` or `workingLoadLimits`, lb in each direction
 * @returns a verdict for each direction. Left `OutsideItsRange`
 * @example orThrow(securementCheck(need, breakingStrengths({ forward: lb(8000), rearward: lb(5000), sideways: lb(5000) }))).verdict // within
 * @source 49 CFR 393.102(a), agency rules page; binds commercial carriers
 */
export function securementCheck<B extends SecurementBasis>(
  need: SecurementNeed<B>,
  offer: SecurementOffer<NoInfer<B>>,
): Either<OutsideItsRange, Securement> {
  const offered = directions.map((direction) => ({
    direction,
    force: need.forces[direction],
    offered: inPounds(`${offer.basis} offered ${direction}`, offer.offers[direction]),
  }));
  const guarded = allHold(
    offered.map(({ direction, offered: figure }) => notNegative(`${offer.basis} offered ${direction}`, figure)),
  );
  if (isLeft(guarded)) return guarded;
  const checks = offered.map(
    (one): SecurementCheck => ({
      ...one,
      reserve: result(`reserve ${one.direction}`, minus(one.offered, one.force)),
      verdict: compare(one.force.value, one.offered.value) <= 0 ? 'within' : 'over',
    }),
  );
  return right({
    basis: need.basis,
    checks,
    verdict: checks.every(({ verdict }) => verdict === 'within') ? 'within' : 'over',
    decisions: [...need.decisions, ...guarded.right],
    notes: [
      note(
        'OneTestOfTwo',
        `Judged on ${need.basis}; the test on ${need.basis === 'breaking strength' ? 'working load limit' : 'breaking strength'} is another.`,
      ),
    ],
  });
}
