/** Fillets and rounded toes: what a rounded corner adds to, or takes from, a sharp one. All per radius, radius squared, radius^4. */
import { arctan, constant, cos, type Derived, minus, over, plus, result, sin, tan, times } from '../../trace/index.js';
import { degree, ratio } from '../../units/index.js';
import { pi } from '../constants.js';

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
export function squareCorner(): Corner & { readonly own: Derived<'ratio'> } {
  const area = result('corner area per r2', minus(1, over(pi, 4)));
  const from = result('corner centre of gravity per r', over(minus(10, times(3, pi)), times(3, minus(4, pi))));
  const aboutLeg = minus(1, over(times(5, pi), 16));
  const own = result('corner own second moment per r4', minus(aboutLeg, times(area, from, from)));
  return { area, leg: constant(ratio(1)), up: from, away: from, own };
}

/**
 * A corner of 90 degrees plus the slope. With h half the included angle and a = 90 - h in radians: area `cot h - a`; leg `cot h`;
 * centre of gravity on the bisector at `(cot h (cot h cos h + 1 / sin h) / 3 - (a / sin h - 2 cos h / 3)) / area` (kite minus sector).
 */
export function slopedCorner(slope: Derived<'ratio'>): Corner {
  const right = constant(degree(90));
  const h = result('half the corner angle', over(plus(right, arctan(slope)), 2));
  const other = minus(right, h);
  const [cot, sine, cosine] = [result('cot h', tan(other)), result('sin h', sin(h)), result('cos h', cos(h))];
  const a = result('half the arc', times(over(other, constant(degree(180))), pi));
  const area = result('corner area per r2', minus(cot, a));
  const kite = over(times(cot, plus(times(cot, cosine), over(1, sine))), 3);
  const sector = minus(over(a, sine), over(times(2, cosine), 3));
  const along = result('corner centre of gravity on the bisector per r', over(minus(kite, sector), area));
  return { area, leg: cot, up: times(along, cosine), away: times(along, sine) };
}
