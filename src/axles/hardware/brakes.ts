/** Brakes against the axles they sit on. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Check, capacity, checkLoad, checkPart, type Note, note, rating, weight } from '../../ratings/index.js';
import {
  type AnyWeight,
  constant,
  type Decision,
  type Derived,
  decide,
  inPounds,
  quotient,
  sum,
} from '../../trace/index.js';
import { ratio } from '../../units/index.js';
import { collected } from '../../units/internal.js';
import type { HardwareError } from './hardware-errors.js';
import { allPositive } from './hardware-guards.js';

/** An axle and its brakes; without `brakes` it rolls free. */
export interface BrakedAxle {
  readonly of: string;
  readonly gawr: AnyWeight;
  /** The rating of the left and of the right brake, by the brake maker's sheet. */
  readonly brakes?: readonly [left: AnyWeight, right: AnyWeight] | undefined;
}

export interface BrakeCapacity {
  /** Every brake of the trailer together. */
  readonly total: Derived<'lb'>;
  /** Together against the sum of the GAWRs; then per braked axle the pair against its GAWR and each brake against half of it. */
  readonly checks: readonly Check[];
  readonly unbraked: readonly string[];
  readonly notes: readonly Note[];
  readonly decisions: readonly Decision[];
}

const rollsFree = (axles: readonly string[]): Note =>
  note(
    'UnbrakedAxle',
    `No brakes on ${axles.join(', ')}: whether that is allowed is a question of the rules and of State law.`,
  );
const unequal = (of: string, pair: readonly Derived<'lb'>[]): Note =>
  note('UnequalBrakes', `The two brakes of ${of} are not of one rating: the trailer pulls to the stronger side.`, pair);

interface Pair {
  readonly of: string;
  readonly gawr: Derived<'lb'>;
  readonly brakes: readonly Derived<'lb'>[];
}

function pairChecks({ of, gawr, brakes }: Pair): readonly Check[] {
  const half = quotient(`half the GAWR of ${of}`, gawr, constant(ratio(2)));
  return [
    checkPart(capacity('brakes', sum(`brakes of ${of}`, brakes), of), rating('GAWR', gawr, { part: of })),
    ...brakes.map((brake, i) =>
      checkLoad(
        rating('brake capacity', brake, { part: `${of} ${i === 0 ? 'left' : 'right'}` }),
        weight('braked weight', half),
      ),
    ),
  ];
}

/**
 * Are the brakes big enough for the axles?
 *
 * `sum of brake ratings >= sum of GAWRs`; on each axle `left + right >= GAWR`, and each brake >= GAWR / 2: a strong brake
 * does not make up for a weak one on the other side. lb throughout.
 *
 * A brake rating does not cover adjustment, magnets, controller or heat. Whether brakes are required is a question
 * for the `rules` chapter.
 *
 * @param axles from the front; GAWR from the label, brake ratings from the brake maker's sheet (drum size does not give them)
 * @returns lb. Left `NoBrakes` when not one axle has a pair, `HardwareNotAboveZero`
 * @example brakeCapacity([{ of: 'axle 1', gawr: lb(7000), brakes: [lb(3500), lb(3500)] }]) // Right total 7,000 lb
 * @source 49 CFR 571.3 (GAWR as the capacity of one axle system, brakes included); half an axle for each brake: common practice, no source
 */
export function brakeCapacity(axles: readonly BrakedAxle[]): Either<HardwareError, BrakeCapacity> {
  const read = axles.map(({ of, gawr, brakes }) => ({
    of,
    gawr: inPounds(`${of} GAWR`, gawr, 'label'),
    brakes:
      brakes === undefined
        ? []
        : [inPounds(`${of} left brake`, brakes[0], 'label'), inPounds(`${of} right brake`, brakes[1], 'label')],
  }));
  const positive = allPositive(
    collected(read, ({ of, gawr, brakes }) => [
      [`${of} GAWR`, gawr] as const,
      ...brakes.map((brake) => [`brake of ${of}`, brake] as const),
    ]),
  );
  if (isLeft(positive)) return positive;
  const braked = read.filter(({ brakes }) => brakes.length > 0);
  const unbraked = read.filter(({ brakes }) => brakes.length === 0).map(({ of }) => of);
  if (braked.length === 0) return left({ chapter: 'axles', tag: 'NoBrakes', axles: unbraked });
  const total = sum(
    'all brakes',
    collected(braked, ({ brakes }) => brakes),
  );
  const pairs = braked.map(({ of, brakes }) => ({
    of,
    brakes,
    alike: decide(brakes[0] as Derived<'lb'>, '=', brakes[1] as Derived<'lb'>),
  }));
  return right({
    total,
    unbraked,
    decisions: [...positive.right, ...pairs.map(({ alike }) => alike)],
    checks: [
      checkLoad(
        rating('brake capacity', total),
        weight(
          'braked weight',
          sum(
            'sum of GAWRs',
            read.map(({ gawr }) => gawr),
          ),
        ),
      ),
      ...collected(braked, pairChecks),
    ],
    notes: [
      ...(unbraked.length === 0 ? [] : [rollsFree(unbraked)]),
      ...pairs.filter(({ alike }) => !alike.holds).map(({ of, brakes }) => unequal(of, brakes)),
    ],
  });
}
