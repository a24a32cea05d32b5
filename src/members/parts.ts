/**
 * The parts that sections are put together from: rectangles, wedges, fillets, quarter rings.
 *
 * A part knows its area, its own second moments and how far its centre of gravity stands from the two reference lines. `x` runs
 * across, `y` up; a part without x or y has its centre of gravity on that line. A hole is taken off.
 */
import { type Derived, minus, over, plus, product, result, sum, type Terms, times } from '../trace/index.js';
import type { Unit } from '../units/index.js';
import { pi } from './constants.js';

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

export const squared = (a: Derived<'in'>): Derived<'in2'> => times(a, a);
export const fourth = (a: Derived<'in'>): Derived<'in4'> => times(squared(a), squared(a));

/** `b h`, `b h^3 / 12`, `h b^3 / 12`. */
export function rectangle(name: string, width: Derived<'in'>, height: Derived<'in'>, place: Place): Part {
  const area = product(`${name} area`, width, height);
  return {
    ...place,
    area,
    Ix: over(times(area, squared(height)), 12),
    Iy: over(times(area, squared(width)), 12),
  };
}

/** A right triangle: `b h / 2`, `b h^3 / 36`, `h b^3 / 36`. */
export function wedge(name: string, width: Derived<'in'>, height: Derived<'in'>, place: Place): Part {
  const area = result(`${name} area`, over(times(width, height), 2));
  return {
    ...place,
    area,
    Ix: over(times(area, squared(height)), 18),
    Iy: over(times(area, squared(width)), 18),
  };
}

/** A full circle: `pi D^2 / 4`, `pi D^4 / 64`. */
export function disc(name: string, diameter: Derived<'in'>, place: Place): Part {
  const own = over(times(pi, fourth(diameter)), 64);
  return {
    ...place,
    area: result(`${name} area`, over(times(pi, squared(diameter)), 4)),
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
  const squares = minus(squared(outside), squared(inside));
  const cubes = minus(times(squared(outside), outside), times(squared(inside), inside));
  const area = result('bend area', over(times(pi, squares), 4));
  const fromCentre = result('bend centre of gravity from bend centre', over(times(4, cubes), times(3, pi, squares)));
  const aboutCentre = over(times(pi, minus(fourth(outside), fourth(inside))), 16);
  return {
    area,
    fromCentre,
    own: result('bend own second moment', minus(aboutCentre, times(area, squared(fromCentre)))),
  };
}

const copies = <U extends 'in2' | 'in3' | 'in4'>(count: Part['times'], figure: Derived<U>): Derived<U> =>
  count === 1 ? figure : (times(count, figure as Derived<'in2'>) as Derived<Unit> as Derived<U>);

/** The sum of some parts; one part alone is its own sum, unless the sum has a name. */
function total<U extends Unit>(terms: readonly Derived<U>[], symbol?: string): Derived<U> {
  const [first] = terms;
  if (symbol !== undefined) return sum(symbol, terms as readonly Derived<U>[] as Terms<U>);
  return terms.length === 1 && first !== undefined ? first : plus(...terms);
}

/** Total of the parts, holes taken off. */
export function net<U extends 'in2' | 'in3' | 'in4'>(
  symbol: string | undefined,
  parts: readonly Part[],
  of: (part: Part) => Derived<U>,
): Derived<U> {
  const terms = (hole: boolean): readonly Derived<U>[] =>
    parts.filter((part) => (part.hole ?? false) === hole).map((part) => copies(part.times, of(part)));
  const [solid, holes] = [terms(false), terms(true)];
  const whole = symbol !== undefined && holes.length === 0 ? total(solid, symbol) : total(solid);
  if (holes.length === 0) return whole;
  const rest = minus(whole as Derived<Unit>, total(holes)) as Derived<U>;
  return symbol === undefined ? rest : result(symbol, rest);
}
