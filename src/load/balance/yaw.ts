/** Yaw inertia of the loaded trailer, for comparing layouts of one trailer. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../../ratings/index.js';
import {
  type AnyLength,
  type AnyWeight,
  aboveZero,
  allHold,
  type Decision,
  type Derived,
  inInches,
  inPounds,
  minus,
  notNegative,
  type OutsideItsRange,
  over,
  plus,
  result,
  root,
  type Source,
  statics,
  times,
} from '../../trace/index.js';
import { collected } from '../../units/internal.js';
import type { NothingGiven } from '../errors.js';

/** A weight with its place and how long it is along the trailer. */
export interface SpreadItem {
  readonly name: string;
  readonly weight: AnyWeight;
  /** Its centre, behind the coupler. */
  readonly at: AnyLength;
  /** Taken as a uniform bar of this length, or as a point. */
  readonly length: AnyLength | 'point';
}

/** How widely the weight is spread along the trailer. */
export interface YawInertia {
  readonly gross: Derived<'lb'>;
  readonly centre: Derived<'in'>;
  /** Sum of weight times distance squared about the centre of gravity: a comparison figure, not divided by g. */
  readonly index: Derived<'lb*in2'>;
  readonly radius: Derived<'in'>;
  readonly decisions: readonly Decision[];
  readonly notes: readonly Note[];
}

const research: Source = Object.freeze({
  id: 'yaw-research',
  title: 'tow-vehicle and caravan stability research (abstracts read: University of Bath 2009; DOT-HS-803-248, 1977)',
  grade: 'B',
  note: 'yaw inertia, nose mass and axle position dominate; trailer mass alone does not',
});

/** `w (d2 + l2/12)` of a bar at d from the centre of gravity; `w d2` of a point. */
const aboutCentre = (w: Derived<'lb'>, d: Derived<'in'>, l: Derived<'in'> | undefined): Derived<'lb*in2'> =>
  times(w, l === undefined ? times(d, d) : plus(times(d, d), over(times(l, l), 12)));

/**
 * How hard is this loaded trailer to start and to stop swinging, next to another layout?
 *
 * `I = sum of w_i [(x_i - xc)^2 + l_i^2 / 12]` about the centre of gravity xc; radius of gyration `sqrt(I / W)`; w in lb,
 * x and l in inches. The smaller radius is the more compact layout.
 *
 * A comparison of layouts of one trailer with the same tongue load. It gives no safe speed and no promise against sway:
 * damping, tires, hitch, axle place and wind are not in it. Width and height of the items are left out.
 *
 * @param items trailer and cargo, each a bar of its length along the trailer or a point
 * @returns lb in2 and in. Left `NothingGiven`, `OutsideItsRange` (gross), `OutsideItsRange` (an item's weight or length)
 * @example orThrow(yawInertia([{ name: 'trailer', weight: lb(3200), at: inch('161.5'), length: inch(300) }, { name: 'machine', weight: lb(9200), at: inch(171), length: inch(120) }])).radius // 53.32 in
 * @source mechanics, derived; that spread weight matters: research abstracts named in the note
 */
export function yawInertia(items: readonly SpreadItem[]): Either<NothingGiven | OutsideItsRange, YawInertia> {
  if (items.length === 0) return left({ chapter: 'load', tag: 'NothingGiven', what: 'items along the trailer' });
  const read = items.map(({ name, weight, at, length }) => ({
    name,
    w: inPounds(`${name} weight`, weight),
    x: inInches(`${name} position`, at),
    l: length === 'point' ? undefined : inInches(`${name} length`, length),
  }));
  const gross = result('gross weight', plus(...read.map(({ w }) => w)));
  const guarded = allHold([
    ...collected(read, ({ name, w, l }) => [
      notNegative(`${name} weight`, w),
      ...(l === undefined ? [] : [notNegative(`${name} length`, l)]),
    ]),
    aboveZero('gross weight', gross),
  ]);
  if (isLeft(guarded)) return guarded;
  const centre = result('centre of gravity', over(plus(...read.map(({ w, x }) => times(w, x))), gross), statics);
  const index = result(
    'yaw inertia index',
    plus(...read.map(({ w, x, l }) => aboutCentre(w, minus(x, centre), l))),
    statics,
  );
  return right({
    gross,
    centre,
    index,
    radius: result('radius of gyration', root(over(index, gross))),
    decisions: guarded.right,
    notes: [
      note(
        'NoSafeSpeed',
        `For comparing layouts only: no speed is safe or unsafe by this figure (${research.title}; ${research.note ?? ''}).`,
      ),
    ],
  });
}
