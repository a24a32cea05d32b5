/** Payload of one design in several deck lengths. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import {
  type AnyLength,
  type AnyLineWeight,
  type AnyWeight,
  aboveZero,
  allHold,
  type Decision,
  type Derived,
  decide,
  inFeet,
  inPounds,
  inPoundsPerFoot,
  minus,
  plus,
  result,
  times,
} from '../../trace/index.js';
import type { MembersError } from '../errors.js';

export interface LengthsOfOneDesign {
  /** From the label. */
  readonly gvwr: AnyWeight;
  /** Empty weight of the trailer at `baseLength`, options fitted. */
  readonly baseWeight: AnyWeight;
  readonly baseLength: AnyLength;
  /** From `weightPerFootOfDeck`. */
  readonly perFoot: AnyLineWeight;
  readonly lengths: readonly AnyLength[];
}

export interface PayloadAtLength {
  readonly length: Derived<'ft'>;
  readonly emptyWeight: Derived<'lb'>;
  /** Negative when the empty trailer is above its GVWR: the verdict says so. */
  readonly payload: Derived<'lb'>;
  readonly verdict: 'within' | 'over';
}

export interface PayloadByLength {
  readonly rows: readonly PayloadAtLength[];
  readonly decisions: readonly Decision[];
}

/**
 * What do two more feet of deck cost in payload?
 *
 * `P = GVWR - [W + lambda (L - L0)]`: W the empty weight at the base length L0, lambda the growth per foot, L the length.
 *
 * Payload on the GVWR alone: axles, tires and tongue may allow less, and a longer deck moves the load. The GVWR is taken as unchanged.
 *
 * @param design GVWR from the label, empty weight by scale, lengths of deck, growth per foot from `weightPerFootOfDeck`; any units
 * @returns one row a length, in ft and lb; Left `OutsideItsRange`, `NothingListed`
 * @example payloadByLength({ gvwr: lb(14000), baseWeight: lb(2950), baseLength: foot(18), perFoot: lbPerFt(71), lengths: [foot(20)] }) // Right 10,908 lb
 * @source common practice, no source
 */
export function payloadByLength(design: LengthsOfOneDesign): Either<MembersError, PayloadByLength> {
  if (design.lengths.length === 0)
    return left({ chapter: 'members', tag: 'NothingListed', what: 'lengths to compare' });
  const [gvwr, base] = [inPounds('GVWR', design.gvwr), inPounds('empty weight at the base length', design.baseWeight)];
  const baseLength = inFeet('base length', design.baseLength);
  const perFoot = inPoundsPerFoot('growth per foot', design.perFoot);
  const lengths = design.lengths.map((length) => inFeet('length', length));
  const tested = allHold([
    aboveZero('GVWR', gvwr),
    aboveZero('empty weight', base),
    aboveZero('base length', baseLength),
    aboveZero('growth per foot', perFoot),
    ...lengths.map((length) => aboveZero('length', length)),
  ]);
  if (isLeft(tested)) return tested;
  const decisions: Decision[] = [...tested.right];
  const rows: PayloadAtLength[] = [];
  for (const length of lengths) {
    const emptyWeight = result('empty weight', plus(base, times(perFoot, minus(length, baseLength))));
    const light = allHold([aboveZero('empty weight at this length', emptyWeight)]);
    if (isLeft(light)) return light;
    const within = decide(emptyWeight, '<=', gvwr);
    decisions.push(...light.right, within);
    rows.push({
      length,
      emptyWeight,
      payload: result('payload on the GVWR', minus(gvwr, emptyWeight)),
      verdict: within.holds ? 'within' : 'over',
    });
  }
  return right({ rows, decisions });
}
