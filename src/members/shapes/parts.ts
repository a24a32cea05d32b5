/**
 * The parts that sections are put together from: rectangles, wedges, fillets, quarter rings.
 *
 * A part has its area, its own second moments and the distances of its centre of gravity from the two reference lines. `x` runs
 * across, `y` up; a part without x or y has its centre of gravity on that line. A hole is taken off.
 */
import { type Derived, minus, over, plus, result, times } from '../../trace/index.js';
import type { Unit } from '../../units/index.js';
import { collected } from '../../units/internal.js';
import { pi } from '../constants.js';

export interface Part {
  /** How many of them, placed alike on both sides of the reference lines. */
  readonly count: 1 | 2 | 4;
  readonly area: Derived<'in2'>;
  readonly x?: Derived<'in'>;
  readonly y?: Derived<'in'>;
  /** About the part's own centre of gravity; a part without one is so small that it is left out. */
  readonly Ix?: Derived<'in4'>;
  readonly Iy?: Derived<'in4'>;
  readonly hole?: true;
}

export type Place = Pick<Part, 'count' | 'x' | 'y' | 'hole'>;

/** `b h`, `b h^3 / 12`, `h b^3 / 12`. */
export function rectangle(name: string, width: Derived<'in'>, height: Derived<'in'>, place: Place): Part {
  const area = result(`${name} area`, times(width, height));
  return {
    ...place,
    area,
    Ix: over(times(area, height, height), 12),
    Iy: over(times(area, width, width), 12),
  };
}

/** A right triangle: `b h / 2`, `b h^3 / 36`, `h b^3 / 36`. */
export function wedge(name: string, width: Derived<'in'>, height: Derived<'in'>, place: Place): Part {
  const area = result(`${name} area`, over(times(width, height), 2));
  return {
    ...place,
    area,
    Ix: over(times(area, height, height), 18),
    Iy: over(times(area, width, width), 18),
  };
}

/** A full circle: `pi D^2 / 4`, `pi D^4 / 64`. */
export function disc(name: string, diameter: Derived<'in'>, place: Place): Part {
  const own = over(times(pi, fourthPower(diameter)), 64);
  return { ...place, area: result(`${name} area`, over(times(pi, diameter, diameter), 4)), Ix: own, Iy: own };
}

/** A quarter of a ring: a bend. `fromCentre` is how far its centre of gravity is from the bend centre, in x and in y. */
export interface QuarterRing {
  readonly area: Derived<'in2'>;
  readonly fromCentre: Derived<'in'>;
  readonly own: Derived<'in4'>;
}

/** `a^4`. */
export const fourthPower = (a: Derived<'in'>): Derived<'in4'> => times(a, a, a, a);

/** `A = pi (ro^2 - ri^2) / 4`, `yc = 4 (ro^3 - ri^3) / (3 pi (ro^2 - ri^2))`, `I = pi (ro^4 - ri^4) / 16 - A yc^2`. */
export function quarterRing(ri: Derived<'in'>, ro: Derived<'in'>): QuarterRing {
  const squares = minus(times(ro, ro), times(ri, ri));
  const cubes = minus(times(ro, ro, ro), times(ri, ri, ri));
  const fourths = minus(fourthPower(ro), fourthPower(ri));
  const area = result('bend area', over(times(pi, squares), 4));
  const yc = result('bend centre of gravity from bend centre', over(times(4, cubes), times(3, pi, squares)));
  const own = result('bend own second moment', minus(over(times(pi, fourths), 16), times(area, yc, yc)));
  return { area, fromCentre: yc, own };
}

type OfPart<U extends Unit> = (part: Part) => Derived<U> | undefined;

function total<U extends 'in2' | 'in3' | 'in4'>(parts: readonly Part[], of: OfPart<U>): Derived<U> | undefined {
  const terms = collected(parts, (part) => {
    const one = of(part) as Derived<'in2'> | undefined;
    if (one === undefined) return [];
    return [(part.count === 1 ? one : times(part.count, one)) as Derived<Unit> as Derived<U>];
  });
  return terms.length > 1 ? plus(...terms) : terms[0];
}

/** Total of a figure of the parts, holes taken off; a part that has no such figure is left out. */
export function net<U extends 'in2' | 'in3' | 'in4'>(parts: readonly Part[], of: OfPart<U>): Derived<U> {
  const solid = total(
    parts.filter(({ hole }) => hole === undefined),
    of,
  ) as Derived<U>;
  const holes = total(
    parts.filter(({ hole }) => hole === true),
    of,
  );
  return holes === undefined ? solid : minus(solid, holes);
}
