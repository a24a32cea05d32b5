/** Ramp spacing at which every tire of the machine rides on a ramp. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import type { Note } from '../../ratings/index.js';
import {
  type AnyLength,
  aboveZero,
  allHold,
  constant,
  type Decision,
  type Derived,
  decide,
  inInches,
  inOrder,
  minus,
  notNegative,
  type OutsideItsRange,
  plus,
  result,
  times,
} from '../../trace/index.js';
import { inch } from '../../units/index.js';
import { collected } from '../../units/internal.js';
import type { NothingGiven } from '../errors.js';
import { type EndLimit, type Span, spanOf } from '../placement/span.js';
import { geometry, narrowRamps, noSetting, playOf } from './axle-on-ramps.js';

/** An axle of the machine: middle to middle of its tires or tracks, and how wide each is. Gauge 0 for one middle wheel. */
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
  /** Clear gap between the ramps at the closest and at the widest setting that does: `s - r`. */
  readonly gap: { readonly least: Derived<'in'>; readonly most: Derived<'in'> };
  readonly limits: readonly EndLimit[];
  readonly decisions: readonly Decision[];
  readonly notes: readonly Note[];
}

/**
 * Which ramp spacings keep every tire on a ramp?
 *
 * For each axle `G - (r - w - 2 m) <= s <= G + (r - w - 2 m)`; s spacing and G gauge middle to middle, r ramp width, w tire
 * width, m margin on each side; then what the slots allow. All axles must fit one setting.
 *
 * One middle wheel (gauge 0) runs over the gap and must rest on both ramps: `s <= r + w - 2 m`, m how much of the tire is to
 * rest on each. Where the outer wheels need a wider spacing, no setting works: use a third ramp, or another way on.
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
    ...collected(read, ({ name, gauge, tire }) => [
      notNegative(`${name} gauge`, gauge),
      aboveZero(`${name} tire width`, tire),
    ]),
  ]);
  if (isLeft(guarded)) return guarded;
  const middle = read.map(({ gauge }) => decide(gauge, '=', constant(inch(0))));
  const plays = collected(read, (axle, i) => (middle[i]?.holds ? [] : [playOf(axle, width, margin)]));
  const bridged = collected(read, ({ name, tire }, i) =>
    middle[i]?.holds
      ? [{ name, at: result(`widest for ${name}`, minus(plus(width, tire), times(2, margin)), geometry) }]
      : [],
  );
  const low: EndLimit[] = [
    { name: 'closest setting', at: closest },
    ...plays.map(({ name, low: at }) => ({ name, at })),
  ];
  const high: EndLimit[] = [
    { name: 'widest setting', at: widest },
    ...plays.map(({ name, high: at }) => ({ name, at })),
    ...bridged,
  ];
  const decisions = [...guarded.right, ...middle];
  const span = spanOf('the ramp setting', low, high, decisions);
  return right({
    ...span,
    gap: {
      least: result('clear gap at the closest setting', minus(span.lower.at, width)),
      most: result('clear gap at the widest setting', minus(span.upper.at, width)),
    },
    limits: [...low, ...high],
    decisions,
    notes: [...narrowRamps(plays), ...noSetting(span)],
  });
}
