/** Loads on a beam: at a point, or spread evenly over a length. Down is positive; places are measured from the left end. */
import {
  type AnyLength,
  asDerived,
  constant,
  converted,
  type Derived,
  decide,
  difference,
  inInches,
  type Known,
  product,
  quotient,
  weightAsForce,
} from '../../trace/index.js';
import { type AnyQuantity, foot, inch, type UnitOf } from '../../units/index.js';
import type { MembersError } from '../errors.js';
import { type Demand, demand, fits } from '../figures.js';
import type { Member } from '../member.js';

export interface PointLoad {
  readonly kind: 'point';
  readonly name: string;
  readonly force: Known<UnitOf<'force'>>;
  readonly at: AnyLength;
}

export interface SpreadLoad {
  readonly kind: 'spread';
  readonly name: string;
  readonly perLength: Known<UnitOf<'force per length'>>;
  readonly from: AnyLength;
  readonly to: AnyLength;
}

export type Load = PointLoad | SpreadLoad;

/** A load in lbf and in. */
export interface Point {
  readonly kind: 'point';
  readonly name: string;
  readonly force: Derived<'lbf'>;
  readonly at: Derived<'in'>;
}
export interface Spread {
  readonly kind: 'spread';
  readonly name: string;
  readonly intensity: Derived<'lbf/in'>;
  readonly from: Derived<'in'>;
  readonly to: Derived<'in'>;
  readonly length: Derived<'in'>;
}
export type Placed = Point | Spread;

const start = constant(inch(0));

function onBeam(load: string, place: Derived<'in'>, end: Derived<'in'>): readonly Demand[] {
  const otherwise = (): MembersError => ({
    chapter: 'members',
    tag: 'LoadOffTheBeam',
    load,
    found: place.value as AnyQuantity,
    limit: end.value as AnyQuantity,
  });
  return [demand(decide(place, '>=', start), otherwise), demand(decide(place, '<=', end), otherwise)];
}

/** A load in working units, and what must hold of its places. */
export function placeLoad(
  load: Load,
  end: Derived<'in'>,
): { readonly placed: Placed; readonly demands: readonly Demand[] } {
  const { name } = load;
  if (load.kind === 'point') {
    const at = inInches(`${name} place`, load.at);
    const force = converted(name, asDerived(name, load.force) as Derived<'N'>, 'lbf');
    return { placed: { kind: 'point', name, force, at }, demands: onBeam(name, at, end) };
  }
  const [from, to] = [inInches(`${name} start`, load.from), inInches(`${name} end`, load.to)];
  const intensity = converted(`${name} per inch`, asDerived(name, load.perLength) as Derived<'lbf/ft'>, 'lbf/in');
  return {
    placed: { kind: 'spread', name, intensity, from, to, length: difference(`${name} length`, to, from) },
    demands: [
      ...onBeam(name, from, end),
      ...onBeam(name, to, end),
      fits(`${name} end`, to, '>', from, 'beyond its start'),
    ],
  };
}

/**
 * How does a member's own weight enter a beam?
 *
 * `q [lbf/ft] = w [lb/ft]`: the weight of a foot of it, pressing under standard gravity.
 *
 * @param member from `section`, `sectionProperties`, `board`; @param from and @param to where it lies, from the left end
 * @returns a spread load
 * @example ownWeight(c6, inch(0), foot(20))
 * @source NIST SP 811, appendix B: the pound-force
 */
export function ownWeight(member: Member, from: AnyLength, to: AnyLength): SpreadLoad {
  const aFoot = constant(foot(1));
  const force = weightAsForce(null, product(null, member.weightPerFoot, aFoot));
  return {
    kind: 'spread',
    name: `${member.designation} own weight`,
    perLength: quotient(`${member.designation} own weight`, force, aFoot),
    from,
    to,
  };
}
