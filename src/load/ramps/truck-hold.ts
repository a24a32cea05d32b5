/** What holds the ball down while a machine comes on? */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../../ratings/index.js';
import {
  type AnyLength,
  type AnyWeight,
  aboveZero,
  allHold,
  constant,
  type Decision,
  type Derived,
  decide,
  inInches,
  inPounds,
  leastOf,
  notNegative,
  type OutsideItsRange,
  over,
  plus,
  result,
  statics,
  times,
} from '../../trace/index.js';
import { inch, lb } from '../../units/index.js';

/** The tow vehicle alone, as weighed. Overhang: rear axle to ball; below zero for a gooseneck ahead of the axle. */
export interface HoldingTruck {
  /** Asked of a gooseneck, whose pull lifts the front axle too. */
  readonly frontAxle?: AnyWeight | undefined;
  readonly rearAxle: AnyWeight;
  readonly wheelbase: AnyLength;
  readonly overhang: AnyLength;
}

/** The pull at the ball that the truck withstands; absent when the truck is not known. */
export interface Hold {
  readonly hold?: Derived<'lb'>;
  readonly decisions: readonly Decision[];
  readonly notes: readonly Note[];
}

const frontNotAsked = note(
  'FrontAxleNotAsked',
  'A pull on a gooseneck ball also lifts the front axle of the truck, and its weight was not given: only the rear axle is asked.',
);

/** `D b / (b + o)`; for a gooseneck (o below zero) at most `F b / -o`. D rear axle, F front axle, b wheelbase, o overhang. */
export function holdOf(truck: HoldingTruck | 'not coupled' | 'unknown'): Either<OutsideItsRange, Hold> {
  if (truck === 'unknown') return right({ decisions: [], notes: [] });
  if (truck === 'not coupled') return right({ hold: constant(lb(0)), decisions: [], notes: [] });
  const rear = inPounds('tow vehicle rear axle alone', truck.rearAxle);
  const base = inInches('tow vehicle wheelbase', truck.wheelbase);
  const overhang = inInches('overhang', truck.overhang);
  const reach = result('front axle to ball', plus(base, overhang));
  const guarded = allHold([
    notNegative('tow vehicle rear axle alone', rear),
    aboveZero('tow vehicle wheelbase', base),
    aboveZero('front axle to ball', reach),
  ]);
  if (isLeft(guarded)) return guarded;
  const ahead = decide(overhang, '<', constant(inch(0)));
  const decisions = [...guarded.right, ahead];
  const byRear = (symbol: string): Derived<'lb'> => result(symbol, over(times(rear, base), reach), statics);
  if (!ahead.holds || truck.frontAxle === undefined)
    return right({ hold: byRear('what the truck holds down'), decisions, notes: ahead.holds ? [frontNotAsked] : [] });
  const front = inPounds('tow vehicle front axle alone', truck.frontAxle);
  const weighed = allHold([notNegative('tow vehicle front axle alone', front)]);
  if (isLeft(weighed)) return weighed;
  const byFront = result('pull that empties the front axle', over(times(front, base), times(-1, overhang)), statics);
  return right({
    hold: leastOf('what the truck holds down', [byRear('pull that empties the rear axle'), byFront]),
    decisions: [...decisions, ...weighed.right],
    notes: [],
  });
}
