/** What one more foot of deck weighs, and what it costs in payload. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import {
  type AnyAreaWeight,
  type AnyLength,
  type AnyLineWeight,
  type AnyWeight,
  aboveZero,
  allHold,
  asDerived,
  type Decision,
  type Derived,
  decide,
  type Guard,
  inFeet,
  inPounds,
  inPoundsPerFoot,
  inPoundsPerSquareFoot,
  type Known,
  minus,
  over,
  plus,
  result,
  sum,
  times,
} from '../../trace/index.js';
import type { Unit } from '../../units/index.js';
import type { MembersError } from '../errors.js';
import type { Member } from './member.js';

/** What grows with the deck: lengthwise members, crossmembers at their spacing, the deck surface. */
export interface DeckGrowth {
  readonly rails: readonly { readonly name: string; readonly member: Member; readonly count: Known<'ratio'> }[];
  readonly crossmembers: readonly {
    readonly name: string;
    readonly member: Member;
    readonly length: AnyLength;
    readonly spacing: AnyLength;
  }[];
  readonly surfaces: readonly { readonly name: string; readonly width: AnyLength; readonly weight: AnyAreaWeight }[];
}

export interface GrowthPerFoot {
  readonly perFoot: Derived<'lb/ft'>;
  readonly lines: readonly { readonly name: string; readonly perFoot: Derived<'lb/ft'> }[];
  readonly decisions: readonly Decision[];
}

/**
 * What does one more foot of this deck weigh?
 *
 * `lambda = sum of (rail weight per foot x count) + sum of (crossmember weight / spacing) + sum of (deck width x weight per square foot)`
 *
 * An average: real crossmembers come in whole pieces. A design that needs deeper rails or another axle when it grows is another design.
 *
 * @param growth the members as on the drawing, widths and spacings in any unit
 * @returns lb/ft and its lines; Left `OutsideItsRange`, `NothingListed`
 * @example weightPerFootOfDeck({ rails: [{ name: 'rails', member: c6, count: ratio(2) }], crossmembers: [], surfaces: [] }) // Right 16.4 lb/ft
 * @source common practice, no source
 */
export function weightPerFootOfDeck(growth: DeckGrowth): Either<MembersError, GrowthPerFoot> {
  const guards: Guard[] = [];
  const above = <U extends Unit>(what: string, figure: Derived<U>): Derived<U> => {
    guards.push(aboveZero(what, figure));
    return figure;
  };
  const parts: (() => { readonly name: string; readonly perFoot: Derived<'lb/ft'> })[] = [];
  for (const { name, member, count } of growth.rails) {
    const pieces = above(`number of ${name}`, asDerived(`number of ${name}`, count));
    parts.push(() => ({ name, perFoot: result(`${name} per foot of deck`, times(member.weightPerFoot, pieces)) }));
  }
  for (const { name, member, length, spacing } of growth.crossmembers) {
    const [long, apart] = [
      above(`${name} length`, inFeet(`${name} length`, length)),
      above(`${name} spacing`, inFeet(`${name} spacing`, spacing)),
    ];
    parts.push(() => ({
      name,
      perFoot: result(`${name} per foot of deck`, over(times(member.weightPerFoot, long), apart)),
    }));
  }
  for (const { name, width, weight } of growth.surfaces) {
    const [wide, perArea] = [
      above(`${name} width`, inFeet(`${name} width`, width)),
      above(`${name} weight per square foot`, inPoundsPerSquareFoot(`${name} weight per square foot`, weight)),
    ];
    parts.push(() => ({ name, perFoot: result(`${name} per foot of deck`, times(perArea, wide)) }));
  }
  if (parts.length === 0)
    return left({ chapter: 'members', tag: 'NothingListed', what: 'members and surfaces that grow with the deck' });
  const tested = allHold(guards);
  if (isLeft(tested)) return tested;
  const lines = parts.map((part) => part());
  return right({
    perFoot: sum(
      'growth per foot of deck',
      lines.map(({ perFoot }) => perFoot),
    ),
    lines,
    decisions: tested.right,
  });
}

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
