/** Securement forces in braking and turning: one test on breaking strength, one on working load limit, kept apart by type. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../../ratings/index.js';
import {
  type AnyWeight,
  allHold,
  type Decision,
  type Derived,
  decide,
  inPounds,
  minus,
  notNegative,
  type OutsideItsRange,
  result,
} from '../../trace/index.js';
import type { Direction, SecurementBasis } from '../data/securement-forces.js';
import type { SecurementNeed } from './securement-need.js';

const directions = ['forward', 'rearward', 'sideways'] as const satisfies readonly Direction[];
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

/** The force in one direction against what is offered there. */
export interface SecurementCheck {
  readonly direction: Direction;
  readonly force: Derived<'lb'>;
  readonly offered: Derived<'lb'>;
  readonly reserve: Derived<'lb'>;
  readonly verdict: 'within' | 'over';
}

/** The verdict of one of the two tests, direction by direction. */
export interface Securement {
  readonly basis: SecurementBasis;
  readonly checks: readonly SecurementCheck[];
  readonly verdict: 'within' | 'over';
  readonly decisions: readonly Decision[];
  readonly notes: readonly Note[];
}

/**
 * Do the tiedowns resist the forces?
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
  const resists = offered.map(({ force, offered: figure }) => decide(force, '<=', figure));
  const checks = offered.map(
    (one, i): SecurementCheck => ({
      ...one,
      reserve: result(`reserve ${one.direction}`, minus(one.offered, one.force)),
      verdict: resists[i]?.holds ? 'within' : 'over',
    }),
  );
  return right({
    basis: need.basis,
    checks,
    verdict: checks.every(({ verdict }) => verdict === 'within') ? 'within' : 'over',
    decisions: [...need.decisions, ...guarded.right, ...resists],
    notes: [
      note(
        'OneTestOfTwo',
        `Judged on ${need.basis}; the test on ${need.basis === 'breaking strength' ? 'working load limit' : 'breaking strength'} is another.`,
      ),
    ],
  });
}
