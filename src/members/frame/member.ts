/** Whatever is cut to length and weighs something per foot. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import { type AnyLineWeight, aboveZero, allHold, type Derived, inPoundsPerFoot } from '../../trace/index.js';
import type { MembersError } from '../errors.js';

/** A published section, a section computed from its outline, a bar, a board, or a member with a weight of its own. */
export interface Member {
  /** `C5X6.7`, `2x8 board`: how it is called in the working. */
  readonly designation: string;
  readonly weightPerFoot: Derived<'lb/ft'>;
}

/**
 * What does this member weigh per foot?
 *
 * The nominal weight of a published section, `w` in lb/ft as printed; `A x density` for everything made from an outline.
 *
 * The nominal weight governs: area x 490/144 differs by up to 7 % for small light shapes, and is always 5 to 7 % low for tube
 * and pipe, whose printed area is that of the design wall while their weight is that of the nominal wall. Mill tolerance,
 * galvanizing, paint and weld metal are not in it.
 *
 * @param member from `section`, `sectionProperties`, `bar`, `board` or `statedMember`
 * @returns weight in lb/ft
 * @example show(weightPerFoot(c5).value) // 6.7 lb/ft
 * @source the table the section was read from; else the density it was computed with
 */
export const weightPerFoot = (member: Member): Derived<'lb/ft'> => member.weightPerFoot;

/**
 * How does a member enter that no table here has?
 *
 * @param name how it is called; @param weight its weight per length, from the maker's sheet or a piece on the scale, any unit
 * @returns Left `OutsideItsRange` when the weight is not more than zero
 * @example statedMember('aluminium side rail', lbPerFt('2.35'))
 * @source common practice, no source
 */
export function statedMember(name: string, weight: AnyLineWeight): Either<MembersError, Member> {
  const symbol = `${name} weight per foot`;
  const perFoot = inPoundsPerFoot(symbol, weight);
  const tested = allHold([aboveZero(symbol, perFoot)]);
  return isLeft(tested) ? tested : right({ designation: name, weightPerFoot: perFoot });
}
