/** Properties of a section from its outline. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import {
  type AnyDensity,
  aboveZero,
  allHold,
  type Decision,
  type Derived,
  greatestOf,
  inPoundsPerCubicFoot,
  inUnit,
  minus,
  over,
  result,
  root,
  times,
} from '../../trace/index.js';
import type { MembersError } from '../errors.js';
import type { Member } from '../frame/member.js';
import { type Composed, compose } from './compose.js';
import type { Taken } from './decomposition.js';
import type { Outline } from './outline.js';
import { takeRectangularTube, takeRoundTube } from './outline-hollow.js';
import { takeAngle, takeFlat, takeFormed } from './outline-plain.js';
import { takeRolled } from './outline-rolled.js';
import { net } from './parts.js';

/** Gross properties; x is the horizontal axis, y the upright one. */
export interface SectionProperties extends Member {
  readonly outline: Outline;
  readonly area: Derived<'in2'>;
  /** Centre of gravity from the back of a channel or the upright leg's face of an angle; half the width where it is symmetric. */
  readonly fromBack: Derived<'in'>;
  /** Centre of gravity from the bottom. */
  readonly fromBottom: Derived<'in'>;
  readonly Ix: Derived<'in4'>;
  readonly Sx: Derived<'in3'>;
  readonly rx: Derived<'in'>;
  readonly Iy: Derived<'in4'>;
  readonly Sy: Derived<'in3'>;
  readonly ry: Derived<'in'>;
  readonly decisions: readonly Decision[];
}

function take(outline: Outline): Taken {
  switch (outline.kind) {
    case 'tapered channel':
    case 'tapered beam':
    case 'parallel beam':
    case 'parallel channel':
      return takeRolled(outline);
    case 'formed channel':
      return takeFormed(outline);
    case 'rectangular tube':
      return takeRectangularTube(outline);
    case 'round tube':
      return takeRoundTube(outline);
    case 'angle':
      return takeAngle(outline);
    case 'flat':
      return takeFlat(outline);
  }
}

/** `S = I / c`, c to the farther edge. */
function modulus(I: Derived<'in4'>, whole: Derived<'in'>, centre: Derived<'in'> | undefined): Derived<'in3'> {
  const c = centre === undefined ? over(whole, 2) : greatestOf([centre, minus(whole, centre)]);
  return over(I, c);
}

function assemble(
  outline: Outline,
  taken: Taken,
  all: Composed,
  density: Derived<'lb/ft3'>,
  decisions: readonly Decision[],
): SectionProperties {
  const weighed =
    taken.weighed === undefined
      ? all.area
      : result(
          'area with the nominal wall',
          net(taken.weighed(), (part) => part.area),
        );
  return {
    designation: outline.name ?? outline.kind,
    outline,
    area: all.area,
    decisions,
    weightPerFoot: result('weight per foot', times(density, inUnit(weighed, 'ft2'))),
    fromBack: all.x ?? result('half the width', over(taken.width, 2)),
    fromBottom: all.y ?? result('half the height', over(taken.height, 2)),
    Ix: all.Ix,
    Sx: result('Sx', modulus(all.Ix, taken.height, all.y)),
    rx: result('rx', root(over(all.Ix, all.area))),
    Iy: all.Iy,
    Sy: result('Sy', modulus(all.Iy, taken.width, all.x)),
    ry: result('ry', root(over(all.Iy, all.area))),
  };
}

/**
 * What are the area, weight per foot, Ix, Sx, rx, Iy, Sy, ry and centre of gravity of this section?
 *
 * The outline is taken apart into rectangles, wedges, fillets and bends: `A = sum of a`, `x = sum of (a x) / A`,
 * `I = sum of (own + a d^2)`, `S = I / c` with c to the farther edge, `r = sqrt(I / A)`, `w = A x density`.
 *
 * How closely it reproduces the published tables (largest gap over every row held here, in per cent):
 * - tapered channel (C; root radius least web + 0.10 in, toe 0.6 of the least web, slope 1/6): A 0.50, Ix 0.56, Sx 0.49, Iy 2.9, Sy 3.0;
 * - tapered beam (S, same rule): A 0.56, Ix 0.93, Sx 0.73, Iy 1.7; parallel beam (W; root radius k - flange): A 0.30, Ix 0.94, Sx 0.71, Iy 0.44;
 * - rectangular tube (design wall of the table, outside radius twice the wall): A 0.29, Ix 0.42, Sx 0.44; weight, from the nominal wall, 0.25;
 * - round tube: A 0.50, Ix 0.67, Sx 0.54; pipe: A 1.7, Ix 1.9, Sx 0.45; angle (two rectangles, no fillet or toe): A 1.4, Ix 2.4, Sx 2.9;
 * - parallel channel: none held here; formed channel: no published table; against the centre-line method Ix up to 0.2 higher, A equal.
 * MC slopes differ by size and M shapes miss by up to 9 in area: use their tables. Printed figures have three digits, up to 0.5 of it is rounding.
 *
 * Gross properties: thin formed sections may need the effective width of AISI S100, which is not in it. Not for torsion.
 *
 * @param outline outside dimensions, any unit of length: calipers at the cut end, or the mill's drawing
 * @param density of the material: `steelDensity` (490 lb/ft3), `aluminiumDensity`, or your own; it enters the weight only
 * @returns in2, in, in4, in3, lb/ft; Left `OutsideItsRange`, or `ImpossibleShape` (a flange narrower than its web, a radius larger than the leg)
 * @example sectionProperties({ kind: 'flat', height: inch(3), width: inch('0.25') }, steelDensity) // A 0.75 in2, Sx 0.375 in3
 * @source parallel-axis theorem, derived; corner pieces by integration, derived
 */
export function sectionProperties(outline: Outline, density: AnyDensity): Either<MembersError, SectionProperties> {
  const taken = take(outline);
  const perCubicFoot = inPoundsPerCubicFoot('density', density);
  const tested = allHold<MembersError>([...taken.guards, aboveZero('density', perCubicFoot)]);
  if (isLeft(tested)) return tested;
  const further = allHold(taken.further?.() ?? []);
  if (isLeft(further)) return further;
  const all = compose(taken.parts(), taken.across, taken.up);
  return right(assemble(outline, taken, all, perCubicFoot, [...tested.right, ...further.right]));
}
