/** The hitch with the ball off level: the tongue takes the load that the axles lose, and each of its ratings is checked again. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { checkLoad, note, rating, weight } from '../../ratings/index.js';
import type { DecodedSpec } from '../../spec/index.js';
import { type TowingError, tongueChecks } from '../../towing/index.js';
import { difference, inPounds, sum } from '../../trace/index.js';
import { frozen } from '../../units/internal.js';
import { emptyPart, type Part } from './part-of-answer.js';
import type { StancePart } from './stance-part.js';
import type { OffLevelHitch, TowPart } from './tow-part.js';
import { vehicleOf } from './tow-side.js';
import type { Weighed } from './weights.js';

export interface OffLevelHitchPart extends Part {
  readonly hitch: OffLevelHitch | undefined;
}

const sameMoment = note('BarsOffLevel', 'Off level the spring bars are taken to be set to the same moment as level.');

const asLevel: OffLevelHitchPart = frozen({ ...emptyPart, hitch: undefined });

/** Asks what rests on the tongue load with the ball off level. What could not be asked is named for the trailer level already. */
export function offLevelHitchPart(
  spec: DecodedSpec,
  { balance }: Weighed,
  { offLevel }: StancePart,
  { bars }: TowPart,
): Either<TowingError, OffLevelHitchPart> {
  if (balance === undefined || offLevel?.tongueChange === undefined) return right(asLevel);
  const tongue = sum('tongue load, off level', [balance.tongue, offLevel.tongueChange]);
  const asked = tongueChecks({ tongue, vehicle: vehicleOf(spec), coupler: spec.trailer.coupler, how: 'off level' });
  if (isLeft(asked)) return left({ ...asked.left, path: asked.left.path ?? 'tow' });
  const { checks, hitched, decisions } = asked.right;
  if (bars === undefined || hitched === undefined)
    return right({ ...emptyPart, checks, decisions, hitch: { tongue, hitched, barsOn: undefined } });
  const barsOn = {
    front: sum('front axle, bars on and off level', [hitched.front, bars.ontoFront]),
    rear: difference('rear axle, bars on and off level', hitched.rear, bars.offRear),
  };
  const frontGawr = spec.tow?.frontGawr;
  const front =
    frontGawr === undefined
      ? []
      : [
          checkLoad(
            rating('tow vehicle front GAWR', inPounds('tow vehicle front GAWR', frontGawr, 'label')),
            weight('tow vehicle front axle', barsOn.front),
            'bars on and off level',
          ),
        ];
  return right({
    ...emptyPart,
    checks: [...checks, ...front],
    notes: [sameMoment],
    decisions,
    hitch: { tongue, hitched, barsOn },
  });
}
