/** One rail, one crossmember, one board of a trailer as beams under what the spec puts on them. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { assessJson } from '../../assessment/index.js';
import { type BeamAnswer, type BeamMember, beam, type MembersError, publishedSection } from '../../members/index.js';
import {
  type AnyLength,
  type AnyWeight,
  asDerived,
  asForce,
  inInches,
  inPounds,
  over,
  result,
} from '../../trace/index.js';
import { inch } from '../../units/index.js';
import { questionRefusal } from '../refusal.js';
import { type FrameChecks, type FrameQuestion, frameCaution } from './question.js';
import { type Problem, railOf, steelE } from './rail.js';

/** A member between two supports with the wheel at its middle. */
function underWheel(wheel: AnyWeight, span: AnyLength, member: BeamMember): Either<MembersError, BeamAnswer> {
  const length = inInches('span', span);
  const at = result('middle of the span', over(length, 2));
  const force = asForce(inPounds('wheel load', asDerived('wheel load', wheel)));
  return beam(
    { leftOverhang: inch(0), span: length, rightOverhang: inch(0) },
    [{ kind: 'point', name: 'wheel', force, at }],
    member,
  );
}

/**
 * Are a rail, a crossmember and a board of this trailer strong enough for its load?
 *
 * A rail is supported at the coupler and at the middle of the axles. Each rail bears its share of the empty trailer, spread over its
 * length, and of every piece at its place. A crossmember and a board have two supports, with the wheel at the middle.
 *
 * One member, static, alone: see the caution. The empty weight is spread evenly, axles included, which is a little more than the rails bear.
 *
 * @param question the spec, the members, the wheel, the stress allowed
 * @returns stations, greatest moment and bending check of each; Left as `assess` and `beam`, `NothingToAnswer`
 * @example isRight(frameChecks({ spec, rail: { section: 'C8X11.5', count: 2, end: inch(302) }, allowable: orThrow(statedAllowable(ksi(20), 'an invented figure')) })) // true
 * @source statics; 29,000 ksi for steel is common practice
 */
export function frameChecks(question: FrameQuestion): Either<Problem, FrameChecks> {
  const unusable = questionRefusal('frame', question);
  if (unusable !== undefined) return left(unusable);
  const assessed = assessJson(question.spec);
  if (isLeft(assessed)) return assessed;
  const rail = railOf(assessed.right, question);
  if (isLeft(rail)) return rail;
  const { crossmember, board, wheel, allowable } = question;
  let found: FrameChecks = { rail: rail.right, caution: frameCaution };
  if (wheel === undefined) return right(found);
  if (crossmember !== undefined) {
    const section = publishedSection(crossmember.section);
    if (isLeft(section)) return section;
    const { Ix: I, Sx: S } = section.right;
    const answer = underWheel(wheel, crossmember.span, { E: steelE, I, S, allowable });
    if (isLeft(answer)) return answer;
    found = { ...found, crossmember: answer.right };
  }
  if (board !== undefined) {
    const answer = underWheel(wheel, board.span, board);
    if (isLeft(answer)) return answer;
    found = { ...found, board: answer.right };
  }
  return right(found);
}
