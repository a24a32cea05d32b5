/** Fillets and rounded toes: what a rounded corner adds to, or takes from, a sharp one. All per radius, radius squared, radius^4. */
import {
  arcTangent,
  constant,
  type Derived,
  difference,
  product,
  quotient,
  sine,
  sum,
  tangent,
} from '../trace/index.js';
import { degree } from '../units/index.js';
import { number, pi } from './constants.js';

/** The corner piece between two legs and the arc that touches both. */
export interface Corner {
  /** Area over r^2. */
  readonly area: Derived<'ratio'>;
  /** From the corner to the point where the arc begins, over r. */
  readonly leg: Derived<'ratio'>;
  /** Its centre of gravity, from the corner along the upright leg, over r. */
  readonly up: Derived<'ratio'>;
  /** And square to the upright leg, over r. */
  readonly away: Derived<'ratio'>;
  /** Own second moment over r^4; left out for a sloped corner, where it is about 0.02 % of Iy and less of Ix. */
  readonly own?: Derived<'ratio'>;
}

/** A square corner: area `1 - pi/4`, centre of gravity `(10 - 3 pi) / (3 (4 - pi))`, second moment about a leg `1 - 5 pi/16`. */
export function squareCorner(): Corner {
  const area = difference('corner area per r2', number(1), quotient(null, pi, number(4)));
  const from = quotient(
    'corner centre of gravity per r',
    difference(null, number(10), product(null, number(3), pi)),
    product(null, number(3), difference(null, number(4), pi)),
  );
  const aboutLeg = difference(null, number(1), quotient(null, product(null, number(5), pi), number(16)));
  const own = difference('corner own second moment per r4', aboutLeg, product(null, area, product(null, from, from)));
  return { area, leg: number(1), up: from, away: from, own };
}

/**
 * A corner of 90 degrees plus the slope. With h half the included angle and a = 90 - h in radians: area `cot h - a`; leg `cot h`;
 * centre of gravity on the bisector at `[cot h (cot h cos h + 1/sin h)/3 - a/sin h + 2/3 cos h] / area` (kite minus sector).
 */
export function slopedCorner(slope: Derived<'ratio'>): Corner {
  const right = constant(degree(90));
  const halfAngle = quotient('half the corner angle', sum(null, [right, arcTangent(null, slope)]), number(2));
  const other = difference(null, right, halfAngle);
  const cotangent = tangent('cot h', other);
  const sineOf = sine('sin h', halfAngle);
  const cosine = sine('cos h', other);
  const arc = product('half the arc', quotient(null, other, constant(degree(180))), pi);
  const area = difference('corner area per r2', cotangent, arc);
  const toCentre = quotient(null, number(1), sineOf);
  const kite = quotient(
    null,
    product(null, cotangent, sum(null, [product(null, cotangent, cosine), toCentre])),
    number(3),
  );
  const sector = difference(
    null,
    product(null, arc, toCentre),
    quotient(null, product(null, number(2), cosine), number(3)),
  );
  const along = quotient('corner centre of gravity on the bisector per r', difference(null, kite, sector), area);
  return { area, leg: cotangent, up: product(null, along, cosine), away: product(null, along, sineOf) };
}
