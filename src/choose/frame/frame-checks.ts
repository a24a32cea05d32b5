/** One rail, one crossmember, one board of a trailer as beams under what the spec puts on them. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type AssessError, type Assessment, assessJson } from '../../assessment/index.js';
import {
  type Allowable,
  type BeamAnswer,
  type BeamMember,
  beam,
  type Load,
  type MembersError,
  publishedSection,
} from '../../members/index.js';
import type { DecodedCargo } from '../../spec/index.js';
import {
  type AnyLength,
  type AnyPressure,
  type AnyWeight,
  asDerived,
  asForce,
  constant,
  type Derived,
  inInches,
  inPounds,
  type Known,
  minus,
  over,
  plus,
  result,
} from '../../trace/index.js';
import { compare, inch, ksi } from '../../units/index.js';
import type { ChooseError } from '../errors.js';

/** What the frame is made of, beside the spec. */
export interface FrameQuestion {
  /** The trailer with its cargo as a spec. */
  readonly spec: unknown;
  /** The main rails: a published section, how many, and their rear end behind the coupler. */
  readonly rail: { readonly section: string; readonly count: number; readonly end: AnyLength };
  /** A crossmember: its section and the clear span between the rails. */
  readonly crossmember?: { readonly section: string; readonly span: AnyLength };
  /** A deck board: its own section properties, its stiffness, what it may bear, and the clear span between crossmembers. */
  readonly board?: {
    readonly I: Known<'in4'>;
    readonly S: Known<'in3'>;
    readonly E: AnyPressure;
    readonly allowable: Allowable;
    readonly span: AnyLength;
  };
  /** The heaviest wheel that rolls over a crossmember or a board, at the middle of it. */
  readonly wheel?: AnyWeight;
  /** The stress that the steel may bear, by name. */
  readonly allowable: Allowable;
}

/** Stress and deflection of one member each. */
export interface FrameChecks {
  /** One rail over coupler and axles. */
  readonly rail: BeamAnswer;
  /** One crossmember under the wheel; absent where it or the wheel is not told. */
  readonly crossmember?: BeamAnswer;
  /** One board under the wheel; absent where it or the wheel is not told. */
  readonly board?: BeamAnswer;
  /** What these figures are, and what they are not. */
  readonly caution: string;
}

export const frameCaution =
  'One member, static, alone: no road loads, no twist, no welds, no fatigue, no buckling. Real frames bear more than this. A licensed engineer decides.';

type Problem = AssessError | ChooseError | MembersError;

const missing = (what: string, path: string): Either<ChooseError, never> =>
  left({ chapter: 'choose', tag: 'NothingToAnswer', question: 'what the rails bear', missing: what, path });

/** A weight on one of several rails, spread from one place to another. */
function spread(name: string, weight: Derived<'lb'>, rails: number, from: Derived<'in'>, to: Derived<'in'>): Load {
  const each = result(`${name} on one rail`, over(weight, rails));
  const perLength = result(`${name} for each inch of a rail`, over(asForce(each), minus(to, from)));
  return { kind: 'spread', name, perLength, from, to };
}

/** A piece of cargo where it stands, from its front to its rear; on its balance point where its length is not told. */
function cargoLoad(piece: DecodedCargo, rails: number): Load | undefined {
  const weight = inPounds(`${piece.name} weight`, piece.weight);
  if (piece.front !== undefined && piece.length !== undefined) {
    const front = inInches(`${piece.name} front`, piece.front);
    return spread(
      piece.name,
      weight,
      rails,
      front,
      result(`${piece.name} rear`, plus(front, inInches('length', piece.length))),
    );
  }
  if (piece.at === undefined) return undefined;
  return {
    kind: 'point',
    name: piece.name,
    force: asForce(over(weight, rails)),
    at: inInches(`${piece.name} position`, piece.at),
  };
}

function railOf(
  { spec: { cargo = [] }, weights, runningGear }: Assessment,
  { rail, allowable }: FrameQuestion,
): Either<Problem, BeamAnswer> {
  const axlesAt = runningGear.group?.at;
  if (axlesAt === undefined) return missing('the place of the axles', 'trailer.axles');
  if (weights.curb === undefined) return missing('the weight of the empty trailer', 'trailer.curb');
  const loads = cargo.map((piece) => cargoLoad(piece, rail.count));
  if (loads.includes(undefined)) return missing('the place of every piece of cargo', 'cargo');
  const section = publishedSection(rail.section);
  if (isLeft(section)) return section;
  const end = inInches('rear end of the rails', rail.end);
  const own = spread('empty trailer', weights.curb, rail.count, constant(inch(0)), end);
  const overhang = result('rails behind the axles', minus(end, axlesAt));
  if (compare(overhang.value, inch(0)) < 0) return missing('rails that reach the axles', 'rail.end');
  return beam({ leftOverhang: inch(0), span: axlesAt, rightOverhang: overhang }, [own, ...(loads as readonly Load[])], {
    E: steelE,
    I: section.right.Ix,
    S: section.right.Sx,
    allowable,
  });
}

const steelE = ksi(29000);

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
 * What do a rail, a crossmember and a board of this trailer bear under what stands on it?
 *
 * A rail stands on the coupler and on the middle of the axles; each rail bears its share of the empty trailer, spread over its
 * length, and of every piece where it stands. A crossmember and a board stand on two supports with the wheel at the middle.
 *
 * One member, static, alone: see the caution. The empty weight is spread evenly, axles included, which is a little more than the rails feel.
 *
 * @param question the spec, the members, the wheel, the stress allowed
 * @returns stations, greatest moment and bending check of each; Left as `assess` and `beam`, `NothingToAnswer`
 * @example isRight(frameChecks({ spec, rail: { section: 'C8X11.5', count: 2, end: inch(302) }, allowable: orThrow(statedAllowable(ksi(20), 'an invented figure')) })) // true
 * @source statics; 29,000 ksi for steel is common practice
 */
export function frameChecks(question: FrameQuestion): Either<Problem, FrameChecks> {
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
