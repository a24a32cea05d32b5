/**
 * The parts that sections are put together from: rectangles, wedges, fillets, quarter rings.
 *
 * A part knows its area, its own second moments and how far its centre of gravity stands from the two reference lines. `x` runs
 * across, `y` up; a part without x or y has its centre of gravity on that line. A hole is taken off.
 */
import { type Derived, difference, product, quotient, sum, type Terms } from '../trace/index.js';
import { number, pi } from './constants.js';

export interface Part {
  /** How many of them, placed alike on both sides of the reference lines. */
  readonly times: 1 | 2 | 4;
  readonly area: Derived<'in2'>;
  readonly x?: Derived<'in'>;
  readonly y?: Derived<'in'>;
  /** About the part's own centre of gravity; a part without one is so small that it is left out. */
  readonly Ix?: Derived<'in4'>;
  readonly Iy?: Derived<'in4'>;
  readonly hole?: true;
}

export type Place = Pick<Part, 'times' | 'x' | 'y' | 'hole'>;

export const half = (symbol: string | null, a: Derived<'in'>): Derived<'in'> => quotient(symbol, a, number(2));
export const twice = (symbol: string | null, a: Derived<'in'>): Derived<'in'> => product(symbol, number(2), a);
export const squared = (a: Derived<'in'>): Derived<'in2'> => product(null, a, a);
export const fourth = (a: Derived<'in'>): Derived<'in4'> => product(null, squared(a), squared(a));

/** `b h`, `b h^3 / 12`, `h b^3 / 12`. */
export function rectangle(name: string, width: Derived<'in'>, height: Derived<'in'>, place: Place): Part {
  const area = product(`${name} area`, width, height);
  return {
    ...place,
    area,
    Ix: quotient(null, product(null, area, squared(height)), number(12)),
    Iy: quotient(null, product(null, area, squared(width)), number(12)),
  };
}

/** A right triangle: `b h / 2`, `b h^3 / 36`, `h b^3 / 36`. */
export function wedge(name: string, width: Derived<'in'>, height: Derived<'in'>, place: Place): Part {
  const area = quotient(`${name} area`, product(null, width, height), number(2));
  return {
    ...place,
    area,
    Ix: quotient(null, product(null, area, squared(height)), number(18)),
    Iy: quotient(null, product(null, area, squared(width)), number(18)),
  };
}

/** A full circle: `pi D^2 / 4`, `pi D^4 / 64`. */
export function disc(name: string, diameter: Derived<'in'>, place: Place): Part {
  const own = quotient(null, product(null, pi, fourth(diameter)), number(64));
  return {
    ...place,
    area: quotient(`${name} area`, product(null, pi, squared(diameter)), number(4)),
    Ix: own,
    Iy: own,
  };
}

/** A quarter of a ring: a bend. `fromCentre` is how far its centre of gravity stands from the bend centre, in x and in y. */
export interface QuarterRing {
  readonly area: Derived<'in2'>;
  readonly fromCentre: Derived<'in'>;
  readonly own: Derived<'in4'>;
}

/** `A = pi/4 (ro^2 - ri^2)`, `yc = 4 (ro^3 - ri^3) / (3 pi (ro^2 - ri^2))`, `I = pi/16 (ro^4 - ri^4) - A yc^2`. */
export function quarterRing(inside: Derived<'in'>, outside: Derived<'in'>): QuarterRing {
  const squares = difference(null, squared(outside), squared(inside));
  const cubes = difference(null, product(null, squared(outside), outside), product(null, squared(inside), inside));
  const area = quotient('bend area', product(null, pi, squares), number(4));
  const fromCentre = quotient(
    'bend centre of gravity from bend centre',
    product(null, number(4), cubes),
    product(null, product(null, number(3), pi), squares),
  );
  const aboutCentre = quotient(null, product(null, pi, difference(null, fourth(outside), fourth(inside))), number(16));
  return {
    area,
    fromCentre,
    own: difference('bend own second moment', aboutCentre, product(null, area, squared(fromCentre))),
  };
}

/** Total of the parts, holes taken off. */
export function net<U extends 'in2' | 'in3' | 'in4'>(
  symbol: string | null,
  parts: readonly Part[],
  of: (part: Part) => Derived<U>,
): Derived<U> {
  const total = (hole: boolean, name: string | null): Derived<U> | undefined => {
    const terms = parts
      .filter((part) => (part.hole ?? false) === hole)
      .map(
        (part): Derived<U> =>
          part.times === 1
            ? of(part)
            : (product(null, number(part.times), of(part) as Derived<'in2'>) as Derived<'in2' | U> as Derived<U>),
      );
    return terms.length === 0
      ? undefined
      : terms.length === 1 && name === null
        ? terms[0]
        : sum(name, terms as readonly Derived<U>[] as Terms<U>);
  };
  const holes = total(true, null);
  const solid = total(false, holes === undefined ? symbol : null) as Derived<U>;
  return holes === undefined ? solid : difference(symbol, solid, holes);
}
