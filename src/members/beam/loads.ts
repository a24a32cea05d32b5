/** Loads on a beam: at a point, or spread evenly over a length. Down is positive; places are measured from the left end. */
import {
  type AnyLength,
  above,
  asDerived,
  asForce,
  between,
  constant,
  converted,
  type Derived,
  type Guard,
  inInches,
  type Known,
  minus,
  over,
  result,
  times,
} from '../../trace/index.js';
import { foot, inch, type UnitOf } from '../../units/index.js';
import type { Member } from '../frame/member.js';

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

/** A load in working units, and what must hold of its places. */
export function placeLoad(
  load: Load,
  end: Derived<'in'>,
): { readonly placed: Placed; readonly guards: readonly Guard[] } {
  const { name } = load;
  if (load.kind === 'point') {
    const at = inInches(`${name} place`, load.at);
    const force = converted(name, asDerived(name, load.force), 'lbf');
    return { placed: { kind: 'point', name, force, at }, guards: between(`${name} place`, at, start, end, 'included') };
  }
  const [from, to] = [inInches(`${name} start`, load.from), inInches(`${name} end`, load.to)];
  const intensity = converted(`${name} per inch`, asDerived(name, load.perLength), 'lbf/in');
  return {
    placed: { kind: 'spread', name, intensity, from, to, length: result(`${name} length`, minus(to, from)) },
    guards: [
      ...between(`${name} start`, from, start, end, 'included'),
      ...between(`${name} end`, to, start, end, 'included'),
      above(`${name} end`, to, from),
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
  const force = asForce(times(member.weightPerFoot, aFoot));
  return {
    kind: 'spread',
    name: `${member.designation} own weight`,
    perLength: result(`${member.designation} own weight`, over(force, aFoot)),
    from,
    to,
  };
}
