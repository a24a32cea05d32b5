/** How the laden trailer stands: side to side, off level on independent axles, and how its weight is spread along it. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type AxlesError, type TandemSplit, tandemSplit } from '../../axles/index.js';
import {
  type Item,
  type LoadError,
  lateralCentre,
  type WheelShares,
  wheelShares,
  type YawInertia,
  yawInertia,
} from '../../load/index.js';
import { note } from '../../ratings/index.js';
import type { DecodedSpec } from '../../spec/index.js';
import {
  constant,
  type Derived,
  decide,
  inInches,
  inPounds,
  minus,
  type NotAWholeCount,
  type OutsideItsRange,
  over,
  quotient,
  result,
  statics,
  times,
} from '../../trace/index.js';
import { inch, lb } from '../../units/index.js';
import { axlePlaces } from './axle-places.js';
import { emptyPart, open, type Part, together } from './part-of-answer.js';
import type { Weighed } from './weights.js';

export interface AttitudePart extends Part {
  readonly sides?: WheelShares;
  readonly offLevel?: TandemSplit;
  readonly yaw?: YawInertia;
}

type Found = Either<AxlesError | LoadError | OutsideItsRange | NotAWholeCount, AttitudePart>;

const nothing = constant(lb(0));
const takenAsEven = note(
  'TrailerTakenAsEven',
  'From side to side the empty trailer is taken to weigh alike on both sides.',
);

/** The left and the right wheels. The ball stands in the middle and takes no roll, so the axles alone hold the whole moment across. */
function sidesOf({ trailer: { track }, cargo = [] }: DecodedSpec, { trailer, cargo: placed, balance }: Weighed): Found {
  const offset = cargo.map(({ rightOfMiddle }) => rightOfMiddle);
  if (track === undefined || offset.some((each) => each === undefined))
    return right(
      cargo.length === 0
        ? emptyPart
        : open(
            'side to side',
            track === undefined ? 'track of the trailer' : 'how far the cargo stands from the middle',
          ),
    );
  if (trailer === undefined || balance === undefined) return right(open('side to side', 'balance of the trailer'));
  const presses = decide(balance.axleLoad, '>', nothing);
  if (!presses.holds) return right({ ...open('side to side', 'a load on the axles'), decisions: [presses] });
  const across = [
    { name: trailer.name, weight: trailer.weight, rightOfMiddle: constant(inch(0)) },
    ...cargo.map(({ name, weight: w }, i) => ({
      name,
      weight: placed[i]?.weight ?? w,
      rightOfMiddle: offset[i] as NonNullable<(typeof offset)[number]>,
    })),
  ];
  const centre = lateralCentre(across);
  if (isLeft(centre)) return centre;
  const sides = wheelShares(
    balance.axleLoad,
    quotient('what the axles carry, right of the middle', centre.right.moment, balance.axleLoad, statics),
    track,
  );
  if (isLeft(sides)) return sides;
  return right({
    ...emptyPart,
    sides: sides.right,
    notes: [...sides.right.notes, takenAsEven],
    decisions: [presses, ...centre.right.decisions, ...sides.right.decisions],
  });
}

/** Independent axles with known rates, the ball off the height at which the trailer stands level. */
function offLevelOf({ trailer }: DecodedSpec, { balance }: Weighed): Found {
  const { sharing, ballAboveLevel, axles } = trailer;
  if (sharing !== 'independent' || axles.length < 2) return right(emptyPart);
  const places = axlePlaces(trailer);
  const sprung = axles.flatMap(({ rate }, i) => {
    const at = places[i];
    return at === undefined || rate === undefined ? [] : [{ at, rate }];
  });
  if (ballAboveLevel === undefined || sprung.length < axles.length || balance === undefined)
    return right(open('independent axles off level', 'spring rates, and how far the ball stands from level'));
  const split = tandemSplit(balance.axleLoad, { suspension: 'independent', axles: sprung, ballAboveLevel });
  if (isLeft(split)) return split;
  return right({ ...emptyPart, offLevel: split.right, notes: split.right.notes, decisions: split.right.decisions });
}

/** Where the weight of an item acts; a trailer known by its tongue load acts at `a (W - T) / W`. */
function placeOf(item: Item, axlesAt: Derived<'in'>): Derived<'in'> {
  if ('at' in item) return inInches(`${item.name} position`, item.at);
  const own = inPounds(`${item.name} weight`, item.weight);
  return result(
    `${item.name} position`,
    over(times(minus(own, inPounds(`${item.name} tongue load`, item.tongue)), axlesAt), own),
  );
}

/** For comparing layouts; a piece without a length counts as a point, which is said. */
function yawOf({ trailer: { length }, cargo = [] }: DecodedSpec, { trailer, cargo: placed, balance }: Weighed): Found {
  if (trailer === undefined || balance === undefined) return right(emptyPart);
  const weighs = decide(trailer.weight as Derived<'lb'>, '>', nothing);
  if (!weighs.holds) return right({ ...emptyPart, decisions: [weighs] });
  const items = [
    {
      name: trailer.name,
      weight: trailer.weight,
      at: placeOf(trailer, balance.axlesAt),
      length: length ?? ('point' as const),
    },
    ...placed
      .filter((item) => item !== undefined)
      .map((item, i) => ({ ...item, length: cargo[i]?.length ?? ('point' as const) })),
  ];
  const yaw = yawInertia(items);
  if (isLeft(yaw)) return yaw;
  const points = items.filter((item) => item.length === 'point').map(({ name }) => name);
  const told =
    points.length === 0
      ? []
      : [
          note(
            'CountedAsPoints',
            `For the spread of weight these count as points, for want of a length: ${points.join(', ')}.`,
          ),
        ];
  return right({ ...emptyPart, yaw: yaw.right, notes: told, decisions: [weighs, ...yaw.right.decisions] });
}

/** Asks all three. */
export function attitudePart(spec: DecodedSpec, weighed: Weighed): Found {
  const parts: AttitudePart[] = [];
  for (const [path, found] of [
    ['trailer.track', sidesOf(spec, weighed)],
    ['trailer.ballAboveLevel', offLevelOf(spec, weighed)],
    ['cargo', yawOf(spec, weighed)],
  ] as const) {
    if (isLeft(found)) return left({ ...found.left, path });
    parts.push(found.right);
  }
  return right({
    ...parts.reduce<Partial<AttitudePart>>((all, part) => ({ ...all, ...part }), {}),
    ...together(parts),
  });
}
