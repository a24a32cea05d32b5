/** The heaviest trailer a set of limits allows, and the limit that governs. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Bound, governedBy, type Note, note } from '../../ratings/index.js';
import {
  type AnyShare,
  type Decision,
  type Derived,
  decide,
  greatestOf,
  product,
  quotient,
} from '../../trace/index.js';
import { collected } from '../../units/internal.js';
import type { NotChecked } from '../checks/checks-or-missing.js';
import type { TowingError } from '../errors.js';
import { aShare, noneOf, plainShare } from '../figures.js';
import type { TowBound } from './tow-bound.js';
import { towBounds } from './tow-bounds.js';
import { towFacts } from './tow-facts.js';
import type { HitchPart, TowVehicle } from './tow-vehicle.js';

/** The trailer gross weight at which a rating is reached, at the tongue share that was asked. */
export interface TrailerBound extends Bound {
  readonly name: TowBound['name'];
}

export interface LargestTrailer {
  /** Gross weight, tongue load included; never less than zero. */
  readonly trailer: Derived<'lb'>;
  /** Its tongue load at the share that was asked. */
  readonly tongue: Derived<'lb'>;
  /** Every limit that ties at this weight. */
  readonly governing: readonly TrailerBound[];
  readonly bounds: readonly TrailerBound[];
  /** The same limits before the share: on the trailer's gross weight or on its tongue load. */
  readonly limits: readonly TowBound[];
  /** Tongue loads not to fall below. */
  readonly least: readonly Bound[];
  readonly notChecked: readonly NotChecked[];
  readonly notes: readonly Note[];
  readonly decisions: readonly Decision[];
}

/** The limits of the tow vehicle, those of the trailer's coupler, and the share of its weight the trailer puts on the ball. */
export interface LargestTrailerQuestion {
  readonly vehicle: TowVehicle;
  readonly coupler?: HitchPart | undefined;
  readonly tongueShare: AnyShare;
}

const noRoom = (bounds: readonly TrailerBound[]): Note =>
  note(
    'OverBeforeTheTrailer',
    'The tow vehicle stands at or over this limit before any trailer is on it.',
    bounds.map(({ limit }) => limit),
  );

/**
 * How heavy a trailer do these limits allow?
 *
 * Each limit gives a weight, and the least governs: gross ratings directly; `GCWR - truck`; tongue ratings over f;
 * `(GVWR - truck) / f`; `(rear GAWR - rear) b / ((b + o) f)`; `(placard - people - cargo) / f`. f tongue share of the
 * trailer gross, b wheelbase, o overhang. A gooseneck also loads the front axle: `(front GAWR - front) b / (-o f)`.
 *
 * The answer is the weight these limits allow at this tongue share, not the trailer to buy: a limit that is not given is
 * listed in `notChecked` and could be lower. The trailer's own GVWR, axles, tires, brakes and chains are not asked here.
 *
 * @param question ratings from label, manual and stampings; axles from a scale, truck alone; share of the trailer's gross
 * @returns lb, not rounded, with every limit that ties. Left `NotAShare`, `NotAboveZero`, `BelowZero`, `HitchContradicts`, `NothingLimits`
 * @example largestTrailer({ vehicle: { hitch: 'ball behind', front: lb(3100), rear: lb(3100), overhang: 'unknown', rearGawr: lb(4000) }, tongueShare: percent(10) }) // Right 6,000 lb
 * @source vehicle owner manuals, trailer worked example, 2008-2010
 */
export function largestTrailer({
  vehicle,
  coupler,
  tongueShare,
}: LargestTrailerQuestion): Either<TowingError, LargestTrailer> {
  const share = plainShare('tongue share', tongueShare);
  const fraction = aShare('tongue share', share);
  if (isLeft(fraction)) return fraction;
  const facts = towFacts(vehicle);
  if (isLeft(facts)) return facts;
  const found = towBounds(vehicle, coupler, facts.right);
  if (isLeft(found)) return found;
  const { bounds: limits, least, notChecked } = found.right;
  const bounds = limits.map(
    ({ name, on, limit }): TrailerBound => ({
      name,
      limit: on === 'gross' ? limit : quotient(`trailer by ${name}`, limit, share),
    }),
  );
  if (bounds.length === 0)
    return left({
      chapter: 'towing',
      tag: 'NothingLimits',
      missing: [...new Set(collected(notChecked, ({ missing }) => missing))],
    });

  const { limit: lowest, governing: by } = governedBy('least of the bounds', bounds);
  const governing = bounds.filter((bound) => by.includes(bound));
  const room = decide(lowest, '>', noneOf('lb'));
  const trailer = greatestOf('largest trailer', [lowest, noneOf('lb')]);
  return right({
    trailer,
    tongue: product('tongue load of the largest trailer', trailer, share),
    governing,
    bounds,
    limits,
    least,
    notChecked,
    notes: [...facts.right.notes, ...(room.holds ? [] : [noRoom(governing)])],
    decisions: [...fraction.right, ...facts.right.decisions, ...found.right.decisions, room],
  });
}
