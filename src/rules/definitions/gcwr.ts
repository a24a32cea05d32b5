/** The combination rating by its definition. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type AnyWeight, constant, type Decision, type Derived, decide, greatestOf, sum } from '../../trace/index.js';
import { lb } from '../../units/index.js';
import { showCrossed } from '../../units/internal.js';
import { type RulesError, rulesError } from '../errors.js';
import { pounds } from '../pounds.js';
import { greatestKnown, type Partly, sumKnown, wholly } from '../screen/partly-known.js';

/** One vehicle: the rating on its label, and what it weighs loaded (or the statement that it is not above the rating). */
export interface VehicleWeights {
  readonly gvwr: AnyWeight;
  readonly gross: AnyWeight | 'not above GVWR';
}

/** A power unit and what it tows; an empty list for a power unit alone. */
export interface CombinationWeights {
  readonly powerUnit: VehicleWeights;
  readonly towed: readonly VehicleWeights[];
  /** The GCWR on the certification label of the power unit, or `'not shown'` when the label has none. */
  readonly labelGcwr: AnyWeight | 'not shown';
}

/** The combination rating, and the parts it came from. */
export interface CombinationRating {
  /** The greater of GVWR and gross, of the power unit. */
  readonly powerUnit: Derived<'lb'>;
  /** The same, summed over everything towed; zero for a power unit alone. */
  readonly towed: Derived<'lb'>;
  /** For a power unit alone the label figure is left out, and this is its own figure. */
  readonly gcwr: Derived<'lb'>;
  readonly decisions: readonly Decision[];
}

/** `GCWR = greatest of (label GCWR, power unit + towed)`, each the greater of GVWR and gross; facts may be known in part. */
export function largestCombination(
  powerUnit: Partly<'lb'>,
  towed: Partly<'lb'>,
  label: Partly<'lb'> | 'not shown',
): Partly<'lb'> {
  const total = sumKnown('sum of the greater of GVWR and gross', [powerUnit, towed]);
  return greatestKnown('GCWR', label === 'not shown' ? [total] : [label, total]);
}

/** The greater of rating and weight of one vehicle, lb. */
export function ofVehicle(name: string, { gvwr, gross }: VehicleWeights): Either<RulesError, Derived<'lb'>> {
  const rated = pounds(`${name} GVWR`, gvwr, 'label');
  if (isLeft(rated) || gross === 'not above GVWR') return rated;
  const weighed = pounds(`${name} gross`, gross);
  return isLeft(weighed) ? weighed : right(greatestOf(`${name} GVWR or gross`, [rated.right, weighed.right]));
}

/**
 * What is the combination rating that the licence and carrier rules mean?
 *
 * `GCWR = greatest of (label GCWR, sum over the units of the greater of GVWR and gross)`, all in lb. The label figure
 * counts only when it is shown on the certification label of the power unit and something is towed.
 *
 * Not the trailer weight plus the tow rating of a brochure; and not what the combination weighs today.
 *
 * @param combination ratings from the certification labels; gross weights as loaded, the power unit without the trailer's
 * tongue load. Any unit of weight.
 * @returns lb. Left `OutOfRange` for a figure that is not greater than zero, `ContradictoryFacts` for a label GCWR below
 * the GVWR of the power unit that shows it.
 * @example gcwrByDefinition({ powerUnit: { gvwr: lb(9900), gross: lb(9000) }, towed: [{ gvwr: lb(7000), gross: lb(7600) }], labelGcwr: lb(17000) }) // Right, gcwr 17,500 lb
 * @source 49 CFR 383.5 and 390.5, gross combination weight rating; 79 FR 15245, 2014-03-19 (read as quoted; verify)
 */
export function gcwrByDefinition({
  powerUnit,
  towed,
  labelGcwr,
}: CombinationWeights): Either<RulesError, CombinationRating> {
  const power = ofVehicle('tow vehicle', powerUnit);
  if (isLeft(power)) return power;
  const units: Derived<'lb'>[] = [];
  for (const [i, vehicle] of towed.entries()) {
    const unit = ofVehicle(towed.length === 1 ? 'trailer' : `trailer ${i + 1}`, vehicle);
    if (isLeft(unit)) return unit;
    units.push(unit.right);
  }
  const decisions: Decision[] = [];
  let label: Partly<'lb'> | 'not shown' = 'not shown';
  if (labelGcwr !== 'not shown') {
    const shown = labelAbove(labelGcwr, powerUnit.gvwr, decisions);
    if (isLeft(shown)) return shown;
    label = wholly(shown.right);
  }
  if (units.length === 0)
    return right({ powerUnit: power.right, towed: constant(lb(0), 'nothing towed'), gcwr: power.right, decisions });
  const towedSum = units.length === 1 ? (units[0] as Derived<'lb'>) : sum('towed GVWR or gross', units);
  const { figure } = largestCombination(wholly(power.right), wholly(towedSum), label);
  return right({ powerUnit: power.right, towed: towedSum, gcwr: figure as Derived<'lb'>, decisions });
}

/** The label GCWR in lb, when it is not below the GVWR of the same label. */
function labelAbove(labelGcwr: AnyWeight, gvwr: AnyWeight, decisions: Decision[]): Either<RulesError, Derived<'lb'>> {
  const shown = pounds('label GCWR', labelGcwr, 'label');
  if (isLeft(shown)) return shown;
  const rated = pounds('tow vehicle GVWR', gvwr, 'label');
  if (isLeft(rated)) return rated;
  const decision = decide(rated.right, '<=', shown.right);
  decisions.push(decision);
  if (decision.holds) return shown;
  const [high, low] = showCrossed(rated.right.value, shown.right.value);
  return left(
    rulesError({
      tag: 'ContradictoryFacts',
      facts: ['label GCWR', 'tow vehicle GVWR'],
      found: [low, high],
      needed: 'a label GCWR not below the GVWR of the vehicle that shows it',
    }),
  );
}
