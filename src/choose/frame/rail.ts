/** One rail over coupler and axles as a beam, with what the spec puts on it. */
import { type Either, isLeft, left } from 'fp-ts/lib/Either.js';
import type { AssessError, Assessment } from '../../assessment/index.js';
import { type BeamAnswer, beam, type Load, type MembersError, publishedSection } from '../../members/index.js';
import type { DecodedCargo } from '../../spec/index.js';
import { asForce, constant, type Derived, inInches, inPounds, minus, over, plus, result } from '../../trace/index.js';
import { compare, inch, ksi } from '../../units/index.js';
import type { ChooseError } from '../errors.js';
import { nothingToAnswer } from '../refusal.js';
import type { FrameQuestion } from './question.js';

/** What keeps a frame from being answered. */
export type Problem = AssessError | ChooseError | MembersError;

/** Common practice for steel. */
export const steelE = ksi(29000);

const missing = (what: string, path: string): Either<ChooseError, never> =>
  left(nothingToAnswer('what the rails bear', what, path));

/** A weight on one of several rails, spread from one place to another. */
function spread(name: string, weight: Derived<'lb'>, rails: number, from: Derived<'in'>, to: Derived<'in'>): Load {
  const each = result(`${name} on one rail`, over(weight, rails));
  const perLength = result(`${name} for each inch of a rail`, over(asForce(each), minus(to, from)));
  return { kind: 'spread', name, perLength, from, to };
}

/** A piece of cargo as a load from its front to its rear; as a point load at its balance point where its length is unknown. */
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

/** The rail of an assessed trailer. */
export function railOf(
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
