/** How far apart must the ramps stand so that every tire of the machine rides on them? */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../../ratings/index.js';
import {
  type AnyLength,
  aboveZero,
  allHold,
  constant,
  type Decision,
  decide,
  inInches,
  inOrder,
  minus,
  notNegative,
  type OutsideItsRange,
  plus,
  result,
  type Source,
  times,
} from '../../trace/index.js';
import { inch, showBrief } from '../../units/index.js';
import type { NothingGiven } from '../errors.js';
import { type EndLimit, type Span, spanOf } from '../placement/span.js';

const geometry: Source = Object.freeze({ id: 'ramp-spacing', title: 'plane geometry, derived', grade: 'derived' });

/** An axle of the machine: middle to middle of its tires or tracks, and how wide each is. */
export interface MachineAxle {
  readonly name: string;
  readonly gauge: AnyLength;
  readonly tireWidth: AnyLength;
}

/** The ramps and where they can be set, middle to middle. */
export interface RampPair {
  readonly rampWidth: AnyLength;
  /** How much ramp must show on each side of the tire. A choice: say zero if none is wanted. */
  readonly margin: AnyLength;
  readonly closest: AnyLength;
  readonly widest: AnyLength;
}

/** Spacing middle to middle: from the closest to the widest that does. */
export interface RampSpacing extends Span {
  readonly limits: readonly EndLimit[];
  readonly decisions: readonly Decision[];
  readonly notes: readonly Note[];
}

const namesOf = (limits: readonly EndLimit[]): string => limits.map(({ name }) => name).join(' and ');

/**
 * Between which settings may the ramps stand?
 *
 * For each axle `G - (r - w - 2 m) <= s <= G + (r - w - 2 m)`; s spacing and G gauge middle to middle, r ramp width, w tire
 * width, m margin on each side; then what the slots allow. All axles must fit one setting.
 *
 * Straight tires driven straight. The ramps are taken square to the deck.
 *
 * @param axles of the machine, in; duals and tracks by their whole width
 * @param ramps in; closest and widest setting by the slots or brackets on the deck edge
 * @returns in. Left `NothingGiven`, `OutsideItsRange`. No setting that does is an
 * answer: `empty`, with the limits on both sides
 * @example orThrow(rampSpacing([{ name: 'front', gauge: inch(54), tireWidth: inch(12) }], { rampWidth: inch(18), margin: inch(1), closest: inch(40), widest: inch(70) })).lower.at // 50 in
 * @source plane geometry, derived
 */
export function rampSpacing(
  axles: readonly MachineAxle[],
  ramps: RampPair,
): Either<NothingGiven | OutsideItsRange, RampSpacing> {
  if (axles.length === 0) return left({ chapter: 'load', tag: 'NothingGiven', what: 'axles of the machine' });
  const width = inInches('ramp width', ramps.rampWidth);
  const margin = inInches('margin beside the tire', ramps.margin);
  const closest = inInches('closest setting', ramps.closest);
  const widest = inInches('widest setting', ramps.widest);
  const read = axles.map(({ name, gauge, tireWidth }) => ({
    name,
    gauge: inInches(`${name} gauge`, gauge),
    tire: inInches(`${name} tire width`, tireWidth),
  }));
  const guarded = allHold([
    aboveZero('ramp width', width),
    notNegative('margin beside the tire', margin),
    notNegative('closest setting', closest),
    inOrder('ramp settings', closest, widest),
    ...read.flatMap(({ name, gauge, tire }) => [
      aboveZero(`${name} gauge`, gauge),
      aboveZero(`${name} tire width`, tire),
    ]),
  ]);
  if (isLeft(guarded)) return guarded;
  const plays = read.map(({ name, gauge, tire }) => {
    const play = result(`play of the ${name} tire on its ramp`, minus(width, plus(tire, times(2, margin))), geometry);
    return {
      name,
      play,
      low: result(`closest for ${name}`, minus(gauge, play)),
      high: result(`widest for ${name}`, plus(gauge, play)),
    };
  });
  const low: EndLimit[] = [
    { name: 'closest setting', at: closest },
    ...plays.map(({ name, low: at }) => ({ name, at })),
  ];
  const high: EndLimit[] = [
    { name: 'widest setting', at: widest },
    ...plays.map(({ name, high: at }) => ({ name, at })),
  ];
  const span = spanOf('the ramp setting', low, high);
  return right({
    ...span,
    limits: [...low, ...high],
    decisions: guarded.right,
    notes: [
      ...plays
        .filter(({ play }) => decide(play, '<', constant(inch(0)), 'a remark').holds)
        .map(({ name, play }) =>
          note('TireWiderThanRamp', `The ${name} tire with its margins is wider than the ramp.`, [play]),
        ),
      ...(span.empty
        ? [
            note(
              'NoSetting',
              `No setting serves: ${namesOf(span.lower.setBy)} asks for ${showBrief(span.lower.at.value)} or wider, ${namesOf(span.upper.setBy)} for ${showBrief(span.upper.at.value)} or closer.`,
              [span.width],
            ),
          ]
        : []),
    ],
  });
}
