/** Jack, ramps and tiedowns of a spec. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import {
  frictionNeeded,
  type LoadError,
  type RampAngle,
  rampAngle,
  rampCapacity,
  type SlopeLoad,
  type Tiedown,
  type TiedownAnswer,
  tiedowns,
  tiedownWll,
} from '../../load/index.js';
import { rating } from '../../ratings/index.js';
import type { DecodedCargo, DecodedSpec, DecodedTiedown } from '../../spec/index.js';
import { jackLoad, type TowingError } from '../../towing/index.js';
import { type Derived, inPounds, type TraceError } from '../../trace/index.js';
import { heaviestPiece } from './cargo-pieces.js';
import { emptyPart, open, type Part, together } from './part-of-answer.js';

export interface GearPart extends Part {
  readonly jackFoot?: Derived<'lb'>;
  readonly ramp?: RampAngle & Partial<SlopeLoad>;
  readonly tied: readonly { readonly name: string; readonly answer: TiedownAnswer }[];
}

type Problem = LoadError | TowingError | TraceError;
type Found = Either<Problem, Part & Partial<Omit<GearPart, keyof Part>>>;

function jackOf(
  { trailer: { jack } }: DecodedSpec,
  tongue: Derived<'lb'> | undefined,
  axlesAt: Derived<'in'> | undefined,
): Found {
  if (jack === undefined) return right(open('jack against tongue', 'jack rating and place'));
  if (tongue === undefined || axlesAt === undefined) return right(open('jack against tongue', 'tongue load'));
  const answer = jackLoad({ tongue, jackBehindBall: jack.at, axlesAt, rating: jack.rating, margin: jack.margin });
  if (isLeft(answer))
    return answer.left.tag === 'NotAboveZero'
      ? right(open('jack against tongue', 'a tongue load above zero'))
      : left({ ...answer.left, path: 'trailer.jack' });
  return right({
    ...emptyPart,
    checks: [answer.right.check],
    decisions: answer.right.decisions,
    jackFoot: answer.right.foot,
  });
}

/** The heaviest piece of cargo is the one that climbs. */
function rampsOf({ trailer: { ramps }, cargo = [] }: DecodedSpec): Found {
  if (ramps === undefined) return right(cargo.length === 0 ? emptyPart : open('ramps', 'length and height'));
  const angle = rampAngle(ramps.height, ramps.length);
  if (isLeft(angle)) return left({ ...angle.left, path: 'trailer.ramps' });
  const piece = heaviestPiece(cargo);
  const base = { ...emptyPart, decisions: [...angle.right.decisions, ...(piece?.decisions ?? [])] };
  const machine = piece?.cargo;
  if (machine === undefined) return right({ ...base, ramp: angle.right });
  const climb = frictionNeeded(machine.weight, angle.right.angle);
  const ramp = isLeft(climb) ? angle.right : { ...angle.right, ...climb.right };
  if (ramps.rating === undefined || ramps.basis === undefined)
    return right({
      ...base,
      ramp,
      notChecked: open('ramps against the machine', 'rating of the pair and its basis').notChecked,
    });
  const kind = ramps.basis === 'axle' ? 'ramp pair, axle' : 'ramp pair, machine';
  const pair = rating(kind, inPounds('rating of the ramp pair', ramps.rating));
  const strong = rampCapacity(pair as Parameters<typeof rampCapacity>[0], {
    weight: machine.weight,
    axleLoads: machine.axles ?? 'unknown',
  });
  if (isLeft(strong)) {
    if (strong.left.tag === 'MachineAxleLoadsMissing')
      return right({
        ...base,
        ramp,
        notChecked: open('ramps against the machine', `axle loads of ${machine.name}, which the rating is by`)
          .notChecked,
      });
    return left({ ...strong.left, path: 'trailer.ramps' });
  }
  return right({
    ...base,
    ramp,
    checks: [strong.right.check],
    decisions: [...base.decisions, ...strong.right.decisions],
  });
}

/** A tiedown by its marking, or by the printed table of what it is made of. */
function tiedownOf({ runs, marked, chain, webbing }: DecodedTiedown): Either<Problem, Tiedown | undefined> {
  if (marked !== undefined) return right({ wll: marked, runs });
  if (chain === undefined && webbing === undefined) return right(undefined);
  const part =
    chain === undefined
      ? ({ part: 'webbing', width: webbing as string } as const)
      : ({ part: 'chain', size: chain.size, grade: chain.grade } as const);
  const limit = tiedownWll([part]);
  return isLeft(limit) ? limit : right({ wll: limit.right.wll, runs });
}

function tiedOf(cargo: DecodedCargo, index: number): Found {
  const { name, length, tiedowns: given, section } = cargo;
  if (given === undefined || length === undefined || section === undefined)
    return right(
      open(`tiedowns of ${name}`, given === undefined ? 'tiedowns' : 'length and the section it is tied by'),
    );
  const fitted: Tiedown[] = [];
  for (const [place, each] of given.entries()) {
    const read = tiedownOf(each);
    if (isLeft(read)) return left({ ...read.left, path: `cargo.${index}.tiedowns.${place}` });
    if (read.right === undefined) return right(open(`tiedowns of ${name}`, `what tiedown ${place + 1} is`));
    fitted.push(read.right);
  }
  const answer = tiedowns(
    { weight: cargo.weight, length, blockedForward: cargo.blockedForward ?? false, section },
    fitted,
  );
  if (isLeft(answer)) return left({ ...answer.left, path: `cargo.${index}` });
  return right({
    ...emptyPart,
    notes: answer.right.notes,
    decisions: answer.right.decisions,
    tied: [{ name, answer: answer.right }],
  });
}

/** Asks jack, ramps and tiedowns. */
export function gearPart(
  spec: DecodedSpec,
  tongue: Derived<'lb'> | undefined,
  axlesAt: Derived<'in'> | undefined,
): Either<Problem, GearPart> {
  const found = [jackOf(spec, tongue, axlesAt), rampsOf(spec), ...(spec.cargo ?? []).map(tiedOf)];
  const all: GearPart[] = [];
  for (const part of found) {
    if (isLeft(part)) return part;
    all.push({ tied: [], ...part.right });
  }
  const { checks, notChecked, decisions, notes } = together(all);
  return right({
    checks,
    notChecked,
    decisions,
    notes: notes.filter((each, i) => notes.findIndex(({ says }) => says === each.says) === i),
    tied: all.flatMap(({ tied }) => tied),
    ...Object.assign(
      {},
      ...all.map(({ jackFoot, ramp }) => ({ ...(jackFoot && { jackFoot }), ...(ramp && { ramp }) })),
    ),
  });
}
