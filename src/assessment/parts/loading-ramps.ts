/** The ramps: how steep they are, what they carry, and where they may be set. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import {
  frictionNeeded,
  type LoadError,
  type RampAngle,
  type RampSpacing,
  rampCapacity,
  rampSpacing,
} from '../../load/index.js';
import { rating } from '../../ratings/index.js';
import type { DecodedSpec } from '../../spec/index.js';
import { inPounds, type OutsideItsRange } from '../../trace/index.js';
import { collected } from '../../units/internal.js';
import { type Piece, withLeast } from './cargo-pieces.js';
import type { Climbers } from './climbers.js';
import type { LoadingPart } from './loading-part.js';
import { emptyPart, open } from './part-of-answer.js';
import { wantingOf, wantingOfCargo } from './wanting-keys.js';
import type { Weighed } from './weights.js';

type Problem = LoadError | OutsideItsRange;

/** A rating by machine is compared with the heaviest piece; a rating by axle with the heaviest known axle, and pieces with unknown axle loads stay open. */
export function rampRatingPart(
  { trailer: { ramps }, cargo = [] }: DecodedSpec,
  { weightless }: Weighed,
  { heaviest, borne: piece }: Climbers,
): Either<Problem, LoadingPart> {
  const asked = { id: 'ramps/rating', what: 'ramps against the machine' };
  if (ramps === undefined || heaviest === undefined) return right(emptyPart);
  if (ramps.rating === undefined || ramps.basis === undefined)
    return right(
      open({
        ...asked,
        missing: 'rating of the pair and its basis',
        paths: wantingOf('trailer.ramps', ramps, 'rating', 'basis'),
      }),
    );
  const rated = inPounds('rating of the ramp pair', ramps.rating);
  const byAxle = ramps.basis === 'axle';
  const untold = byAxle ? collected(cargo, ({ axles = [], name }, i) => (axles.length === 0 ? [{ name, i }] : [])) : [];
  const still =
    untold.length === 0
      ? emptyPart
      : open({
          ...asked,
          missing: `axle loads of ${untold.map(({ name }) => name).join(', ')}, which the rating is by`,
          paths: untold.map(({ i }) => `cargo.${i}.axles`),
        });
  if (piece === undefined) return right(still);
  const chosen = byAxle ? piece.decisions : [];
  if (weightless[piece.index]?.holds === true) {
    const paths = [`cargo.${piece.index}.weight`];
    const unasked = open({ ...asked, missing: `a weight above zero of ${piece.cargo.name}`, paths });
    return right({ ...unasked, decisions: chosen });
  }
  const { weight, axles } = piece.cargo;
  const strong = rampCapacity(byAxle ? rating('ramp pair, axle', rated) : rating('ramp pair, machine', rated), {
    weight,
    axleLoads: axles ?? 'unknown',
  });
  if (isLeft(strong)) return left({ ...strong.left, path: `cargo.${piece.index}.${byAxle ? 'axles' : 'weight'}` });
  const { check, decisions } = strong.right;
  return right({ ...still, checks: [check], decisions: [...chosen, ...decisions] });
}

/** How steep the ramps are, and what the heaviest piece asks of grip and pull. */
export function slopePart(angle: RampAngle, heaviest: Piece | undefined): LoadingPart {
  const climb = heaviest && frictionNeeded(heaviest.cargo.weight, angle.angle);
  return {
    ramps: climb === undefined || isLeft(climb) ? angle : { ...angle, ...climb.right },
    ...emptyPart,
    decisions: angle.decisions,
  };
}

/** Ramp spacings at which every tire of a machine rides on a ramp; of several machines the one that leaves least room. */
export function settingPart({ trailer: { ramps }, cargo = [] }: DecodedSpec): Either<Problem, LoadingPart> {
  const machines = cargo.filter((machine) => machine.gauges !== undefined);
  if (ramps?.setting === undefined && machines.length === 0) return right(emptyPart);
  if (ramps?.setting === undefined || machines.length === 0)
    return right(
      open({
        id: 'ramps/setting',
        what: 'where to set the ramps',
        missing: machines.length === 0 ? 'gauge and tire width of the machine' : 'the settings the ramps allow',
        paths: machines.length === 0 ? wantingOfCargo({ cargo }, 'gauges') : ['trailer.ramps.setting'],
      }),
    );
  const { width, ...ends } = ramps.setting;
  const settings: RampSpacing[] = [];
  for (const { name, gauges = [] } of machines) {
    const machine = machines.length === 1 ? 'machine' : name;
    const setting = rampSpacing(
      gauges.map((axle, i) => ({ name: `${machine} axle ${i + 1}`, ...axle })),
      { rampWidth: width, ...ends },
    );
    if (isLeft(setting)) return left({ ...setting.left, path: 'trailer.ramps.setting' });
    settings.push(setting.right);
  }
  const worst = withLeast(settings, ({ width: room }) => room);
  if (worst === undefined) return right(emptyPart);
  return right({
    setting: worst.found,
    ...emptyPart,
    notes: collected(settings, ({ notes }) => notes),
    decisions: [...collected(settings, ({ decisions }) => decisions), ...worst.decisions],
  });
}
