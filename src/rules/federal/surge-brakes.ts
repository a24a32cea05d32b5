/** Surge brakes: which pairs of trailer and tow vehicle the carrier rule accepts them for. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import { type AnyWeight, type Decision, type Derived, decide, difference, product } from '../../trace/index.js';
import type { RulesError } from '../errors.js';
import { pounds } from '../pounds.js';
import type { Rule } from '../rule.js';
import { federalRule, printedLine, printedShare } from './federal.js';

/** What the section says to one pair. */
export type SurgeBrakes =
  | {
      readonly accepted: boolean;
      readonly rule: Rule;
      /** The greatest trailer GVWR for this tow vehicle in this range. */
      readonly limit: Derived<'lb'>;
      /** Trailer GVWR less the limit; zero is accepted. */
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
 * `trailer GVWR <= 1.75 x tow vehicle GVWR` up to 12,000 lb; `<= 1.25 x` above 12,000 and below 20,001 lb; not above that.
 *
 * Binds commercial motor vehicles. By (d)(2) and (3), from memory, the gross weight stands in for a GVWR whose label is
 * missing, and must be used where it is above the GVWR: give the greater. State law may differ for private towing.
 *
 * @param trailerGvwr from the certification label of the trailer, any unit of weight
 * @param towVehicleGvwr from the certification label of the tow vehicle, any unit of weight
 * @returns lb. Left `OutOfRange` for a figure not greater than zero.
 * @example surgeBrakes(lb(10500), lb(6000)) // Right: accepted, on the limit
 * @source 49 CFR 393.48(d)(1), final rule of 2007-03-06 as printed in the Federal Register, plain copy (verify)
 */
export function surgeBrakes(trailerGvwr: AnyWeight, towVehicleGvwr: AnyWeight): Either<RulesError, SurgeBrakes> {
  const trailer = pounds('trailer GVWR', trailerGvwr, 'label');
  if (isLeft(trailer)) return trailer;
  const tow = pounds('tow vehicle GVWR', towVehicleGvwr, 'label');
  if (isLeft(tow)) return tow;
  const [lower, upper] = [printedLine('surge-1', 0), printedLine('surge-2', 1)];
  const light = decide(trailer.right, lower.operator, lower.line);
  const inRange = decide(trailer.right, upper.operator, upper.line);
  if (!inRange.holds) {
    const distance = difference('distance to the end of the surge range', trailer.right, upper.line);
    return right({
      accepted: false,
      rule: federalRule('surge-2'),
      limit: undefined,
      distance,
      decisions: [light, inRange],
    });
  }
  const { operator, share } = light.holds ? printedShare('surge-1', 1) : printedShare('surge-2', 2);
  const limit = product('greatest trailer GVWR for surge brakes', share, tow.right);
  const fits = decide(trailer.right, operator, limit);
  return right({
    accepted: fits.holds,
    rule: federalRule(light.holds ? 'surge-1' : 'surge-2'),
    limit,
    distance: difference('distance to the surge brake limit', trailer.right, limit),
    decisions: [light, inRange, fits],
  });
}
