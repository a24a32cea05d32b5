/** Guards on the dimensions of a section: alone, and against another dimension of the same section. */
import {
  aboveZero,
  atLeast,
  atMost,
  type Comparison,
  constant,
  type Derived,
  decide,
  type Guard,
  guard,
  pathOf,
} from '../../trace/index.js';
import { inch, toWire } from '../../units/index.js';
import type { ImpossibleShape } from '../errors.js';

/** Two dimensions of one section must fit together; `needed` says how: `wider than the web`. */
export const fits = (
  what: string,
  figure: Derived<'in'>,
  comparison: Comparison,
  limit: Derived<'in'>,
  needed: string,
): Guard<ImpossibleShape> =>
  guard(decide(figure, comparison, limit), () => ({
    chapter: 'members',
    tag: 'ImpossibleShape',
    what,
    found: toWire(figure.value),
    needed,
    limit: toWire(limit.value),
    ...pathOf(figure.why),
  }));

const [thinnest, longest] = [constant(inch('0.0001')), constant(inch(100_000))];

/** A dimension of a section: greater than zero, and in a range in which areas and corners keep their digits. */
export const aSize = (what: string, figure: Derived<'in'>): readonly Guard[] => [
  aboveZero(what, figure),
  atLeast(what, figure, thinnest),
  atMost(what, figure, longest),
];
