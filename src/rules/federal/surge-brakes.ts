/** Surge brakes: which pairs of trailer and tow vehicle the carrier rule accepts them for. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import { type AnyWeight, type Decision, type Derived, decide, difference, product } from '../../trace/index.js';
import { ofVehicle, type VehicleWeights } from '../definitions/gcwr.js';
import type { RulesError } from '../errors.js';
import { pounds } from '../pounds.js';
import type { Rule } from '../rule.js';
import { federalRule, printedLine, printedShare } from './federal.js';

/** What the section says to one pair. */
export type SurgeBrakes =
  | {
      readonly accepted: boolean;
      readonly rule: Rule;
      /** The most that the greater of GVWR and gross of the trailer may be behind this tow vehicle, in this range. */
      readonly limit: Derived<'lb'>;
      /** The greater of GVWR and gross less the limit; zero is accepted. */
      readonly distance: Derived<'lb'>;
      readonly decisions: readonly Decision[];
    }
  | {
      /** 20,001 lb and more: the section prints no ratio. */
      readonly accepted: false;
      readonly rule: Rule;
      readonly limit: undefined;
      readonly distance: Derived<'lb'>;
      readonly decisions: readonly Decision[];
    };

/**
 * Are surge brakes accepted on this trailer behind this tow vehicle?
 *
 * `W <= 1.75 x tow vehicle GVWR` up to 12,000 lb; `<= 1.25 x` above 12,000 and below 20,001 lb; not above that. `W` is the greater
 * of GVWR and gross of the trailer: by (d)(2) and (3), from memory, the gross must be used where it is above the GVWR.
 *
 * Binds commercial motor vehicles. State law may differ for private towing.
 *
 * @param trailer GVWR from its certification label, and its gross as loaded, any unit of weight
 * @param towVehicleGvwr from the certification label of the tow vehicle, any unit of weight
 * @returns lb. Left `OutOfRange` for a figure not greater than zero.
 * @example surgeBrakes({ gvwr: lb(10500), gross: lb(9000) }, lb(6000)) // Right: accepted, on the limit
 * @source 49 CFR 393.48(d)(1), final rule of 2007-03-06 as printed in the Federal Register, plain copy (verify)
 */
export function surgeBrakes(trailer: VehicleWeights, towVehicleGvwr: AnyWeight): Either<RulesError, SurgeBrakes> {
  const weighed = ofVehicle('trailer', trailer);
  if (isLeft(weighed)) return weighed;
  const heavier = weighed.right;
  const tow = pounds('tow vehicle GVWR', towVehicleGvwr, 'label');
  if (isLeft(tow)) return tow;
  const [lower, upper] = [printedLine('surge-1', 0, 'where'), printedLine('surge-2')];
  const inRange = decide(heavier, upper.operator, upper.line);
  if (!inRange.holds) {
    const distance = difference('distance to the end of the surge range', heavier, upper.line);
    return right({
      accepted: false,
      rule: federalRule('surge-2'),
      limit: undefined,
      distance,
      decisions: [inRange],
    });
  }
  const light = decide(heavier, lower.operator, lower.line);
  const { operator, share } = light.holds ? printedShare('surge-1', 0) : printedShare('surge-2', 1);
  const limit = product('most of the trailer for surge brakes', share, tow.right);
  const fits = decide(heavier, operator, limit);
  return right({
    accepted: fits.holds,
    rule: federalRule(light.holds ? 'surge-1' : 'surge-2'),
    limit,
    distance: difference('distance to the surge brake limit', heavier, limit),
    decisions: [light, inRange, fits],
  });
}
