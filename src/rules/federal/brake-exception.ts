/** The light-trailer exception from the brakes of a commercial motor vehicle. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import {
  type AnyWeight,
  asDerived,
  converted,
  type Decision,
  type Derived,
  decide,
  difference,
  product,
} from '../../trace/index.js';
import { dimensionOf } from '../../units/index.js';
import { showInWords } from '../../units/internal.js';
import { type RulesError, rulesError } from '../errors.js';
import { pounds } from '../pounds.js';
import type { Rule } from '../rule.js';
import { federalRule, printedLine, printedShare } from './federal.js';

/** A semitrailer rests partly on the towing vehicle; a full trailer rests on its own axles. */
export type LightTrailer =
  | {
      readonly kind: 'semitrailer';
      readonly gross: AnyWeight;
      readonly weightOnTowVehicle: AnyWeight;
      readonly towingAxleWeights: AnyWeight;
    }
  | {
      readonly kind: 'full trailer';
      readonly gross: AnyWeight;
      readonly trailerAxleWeights: AnyWeight;
      readonly towingAxleWeights: AnyWeight;
    };

export interface BrakeException {
  /** True when the section asks for no brakes on this trailer. */
  readonly excepted: boolean;
  readonly rule: Rule;
  /** 40 percent of the axle weights of the towing vehicle. */
  readonly shareLimit: Derived<'lb'>;
  /** Gross less 3,000 lb; and the weight that the share limits less the share. Zero is still excepted. */
  readonly distances: readonly [gross: Derived<'lb'>, share: Derived<'lb'>];
  readonly decisions: readonly Decision[];
}

/**
 * Is this trailer light enough that the carrier rule asks for no brakes on it?
 *
 * Both: `gross <= 3,000 lb`, and for a semitrailer `weight on the tow vehicle <= 40 % of the axle weights of the tow
 * vehicle`, for a full trailer `its axle weights <= 40 %` of them.
 *
 * Binds commercial motor vehicles only: private towing follows State law, which starts anywhere from 1,500 to 5,000 lb.
 *
 * @param trailer gross weight as weighed, laden or empty; what rests on the hitch (may be below zero); the axle weights of
 * the tow vehicle as coupled, from a ticket. Any unit of weight.
 * @returns lb. Left `OutOfRange`.
 * @example brakeException({ kind: 'semitrailer', gross: lb(3000), weightOnTowVehicle: lb(300), towingAxleWeights: lb(5000) }) // Right: excepted
 * @source 49 CFR 393.42(b)(3) and (4), FMCSA guidance question 3 (the full-trailer wording is secondary; verify)
 */
export function brakeException(trailer: LightTrailer): Either<RulesError, BrakeException> {
  const id = trailer.kind === 'semitrailer' ? 'brake-3000-semi' : 'brake-3000-full';
  const gross = pounds('trailer gross', trailer.gross);
  if (isLeft(gross)) return gross;
  const towing = pounds('towing axle weights', trailer.towingAxleWeights);
  if (isLeft(towing)) return towing;
  const limited =
    trailer.kind === 'semitrailer'
      ? resting(trailer.weightOnTowVehicle)
      : pounds('trailer axle weights', trailer.trailerAxleWeights);
  if (isLeft(limited)) return limited;
  const [weight, part] = [printedLine(id, 0), printedShare(id, 1)];
  const shareLimit = product('share of the towing axle weights', part.share, towing.right);
  const light = decide(gross.right, weight.operator, weight.line);
  const small = decide(limited.right, part.operator, shareLimit);
  return right({
    excepted: light.holds && small.holds,
    rule: federalRule(id),
    shareLimit,
    distances: [
      difference('distance to the weight line', gross.right, weight.line),
      difference('distance to the share', limited.right, shareLimit),
    ],
    decisions: [light, small],
  });
}

/** The load on the hitch may have any sign, but it must be a weight. */
function resting(figure: AnyWeight): Either<RulesError, Derived<'lb'>> {
  const taken = asDerived('weight on tow vehicle', figure);
  if (dimensionOf(taken.value.unit) !== 'mass')
    return left(
      rulesError({
        tag: 'OutOfRange',
        what: 'weight on tow vehicle',
        found: showInWords(taken.value),
        needed: 'a weight',
      }),
    );
  return right(converted('weight on tow vehicle', taken, 'lb'));
}
