/** The ramps: how steep they are, what they carry, and where they may be set. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { frictionNeeded, type LoadError, rampAngle, rampCapacity, rampSpacing } from '../../load/index.js';
import { rating } from '../../ratings/index.js';
import type { DecodedCargo, DecodedSpec } from '../../spec/index.js';
import { inPounds, type OutsideItsRange } from '../../trace/index.js';
import { heaviestPiece } from './cargo-pieces.js';
import type { LoadingPart } from './loading-part.js';
import { emptyPart, open, type Part } from './part-of-answer.js';

type Problem = LoadError | OutsideItsRange;

/** The heaviest piece of cargo against the rating of the pair. */
function capacityOf(ramps: NonNullable<DecodedSpec['trailer']['ramps']>, machine: DecodedCargo): Either<Problem, Part> {
  if (ramps.rating === undefined || ramps.basis === undefined)
    return right(open('ramps against the machine', 'rating of the pair and its basis'));
  const kind = ramps.basis === 'axle' ? 'ramp pair, axle' : 'ramp pair, machine';
  const pair = rating(kind, inPounds('rating of the ramp pair', ramps.rating));
  const strong = rampCapacity(pair as Parameters<typeof rampCapacity>[0], {
    weight: machine.weight,
    axleLoads: machine.axles ?? 'unknown',
  });
  if (isLeft(strong))
    return strong.left.tag === 'MachineAxleLoadsMissing'
      ? right(open('ramps against the machine', `axle loads of ${machine.name}, which the rating is by`))
      : left({ ...strong.left, path: 'trailer.ramps' });
  return right({ ...emptyPart, checks: [strong.right.check], decisions: strong.right.decisions });
}

/** Asks how steep the ramps are and whether they carry the heaviest piece of cargo, which is taken to climb them. */
export function rampsPart({ trailer: { ramps }, cargo = [] }: DecodedSpec): Either<Problem, LoadingPart> {
  if (ramps === undefined) return right(cargo.length === 0 ? emptyPart : open('ramps', 'length and height'));
  const angle = rampAngle(ramps.height, ramps.length);
  if (isLeft(angle)) return left({ ...angle.left, path: 'trailer.ramps' });
  const piece = heaviestPiece(cargo);
  const decisions = [...angle.right.decisions, ...(piece?.decisions ?? [])];
  if (piece === undefined) return right({ ...emptyPart, decisions, ramps: angle.right });
  const slope = frictionNeeded(piece.cargo.weight, angle.right.angle);
  const strength = capacityOf(ramps, piece.cargo);
  if (isLeft(strength)) return strength;
  return right({
    ...strength.right,
    decisions: [...decisions, ...strength.right.decisions],
    ramps: isLeft(slope) ? angle.right : { ...angle.right, ...slope.right },
  });
}

/** Asks between which settings the ramps may stand for every tire of the machine. */
export function settingPart({ trailer: { ramps }, cargo = [] }: DecodedSpec): Either<Problem, LoadingPart> {
  const gauges = cargo.find((machine) => machine.gauges !== undefined)?.gauges;
  if (ramps?.setting === undefined && gauges === undefined) return right(emptyPart);
  if (ramps?.setting === undefined || gauges === undefined)
    return right(
      open(
        'where to set the ramps',
        gauges === undefined ? 'gauge and tire width of the machine' : 'the settings the ramps allow',
      ),
    );
  const { width, ...ends } = ramps.setting;
  const setting = rampSpacing(
    gauges.map((axle, i) => ({ name: `machine axle ${i + 1}`, ...axle })),
    { rampWidth: width, ...ends },
  );
  return isLeft(setting)
    ? left({ ...setting.left, path: 'trailer.ramps.setting' })
    : right({ ...emptyPart, setting: setting.right, notes: setting.right.notes, decisions: setting.right.decisions });
}
