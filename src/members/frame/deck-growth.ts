/** What one more foot of deck weighs, and what it costs in payload. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import {
  type AnyAreaWeight,
  type AnyLength,
  aboveZero,
  allHold,
  asDerived,
  type Decision,
  type Derived,
  type Guard,
  inFeet,
  inPoundsPerSquareFoot,
  type Known,
  over,
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
