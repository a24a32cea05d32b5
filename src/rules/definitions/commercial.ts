/** Commercial motor vehicle and licence group, by weight. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import { type Decision, type Derived, decide, difference, greatestOf } from '../../trace/index.js';
import type { RulesError } from '../errors.js';
import { federalRule, printedLine } from '../federal/federal.js';
import type { Rule } from '../rule.js';
import { type CombinationRating, type CombinationWeights, gcwrByDefinition } from './gcwr.js';

/** Whether the weight makes a commercial motor vehicle of it. */
export interface CommercialByWeight {
  readonly reachesLine: boolean;
  /** The greatest of GVWR, gross, GCWR and combined gross. */
  readonly greatest: Derived<'lb'>;
  /** Greatest weight less the line; zero is on the line, and on the line it is one. */
  readonly distance: Derived<'lb'>;
  readonly rating: CombinationRating;
  readonly rule: Rule;
  readonly decisions: readonly Decision[];
}

/**
 * Is this heavy enough to be a commercial motor vehicle, if it works for hire or in business across State lines?
 *
 * `greatest of (GVWR, gross, GCWR) >= 10,001 lb`. The combined gross cannot exceed the GCWR as defined, so it is in it.
 *
 * Weight only: whether the trip is commerce and crosses a State line is another question (`screen` asks it).
 *
 * @param combination ratings from labels, weights as loaded, in any unit of weight
 * @returns lb. Left `OutOfRange`, `ContradictoryFacts`.
 * @example commercialByWeight({ powerUnit: { gvwr: lb(7000), gross: 'not above GVWR' }, towed: [{ gvwr: lb(3000), gross: 'not above GVWR' }], labelGcwr: 'not shown' }) // Right: reachesLine false, 1 lb below
 * @source 49 CFR 390.5T, commercial motor vehicle (1), read as quoted; 49 USC 31132(1)
 */
export function commercialByWeight(combination: CombinationWeights): Either<RulesError, CommercialByWeight> {
  const rating = gcwrByDefinition(combination);
  if (isLeft(rating)) return rating;
  const { powerUnit, towed, gcwr, decisions } = rating.right;
  const greatest = greatestOf(
    'greatest of GVWR, gross, GCWR',
    combination.towed.length === 0 ? [powerUnit] : [powerUnit, towed, gcwr],
  );
  const { operator, line } = printedLine('cmv-390');
  const decision = decide(greatest, operator, line);
  return right({
    reachesLine: decision.holds,
    greatest,
    distance: difference('distance to the commercial line', greatest, line),
    rating: rating.right,
    rule: federalRule('cmv-390'),
    decisions: [...decisions, decision],
  });
}

/** The licence group that the weights alone ask for. */
export interface LicenceGroup {
  readonly group: 'A' | 'B' | 'none by weight';
  readonly rating: CombinationRating;
  /** GCWR less the line of group A; towed weight less its line; power unit less the line of group B. */
  readonly distances: readonly [gcwr: Derived<'lb'>, towed: Derived<'lb'>, powerUnit: Derived<'lb'>];
  readonly caution: string;
  readonly decisions: readonly Decision[];
}

/**
 * Which commercial licence group do the weights of this combination ask for?
 *
 * A: `GCWR >= 26,001 lb` and `towed > 10,000 lb`, both. B: not A, and `power unit >= 26,001 lb`. Each unit counts with the
 * greater of its GVWR and its gross weight; towed units are added up.
 *
 * By weight only. A heavy trailer behind a light truck asks for no group while the GCWR stays below 26,001 lb.
 *
 * @param combination ratings from labels, weights as loaded, in any unit of weight; no towed unit for a truck alone
 * @returns lb. Left `OutOfRange`, `ContradictoryFacts`.
 * @example licenceGroup({ powerUnit: { gvwr: lb(16000), gross: 'not above GVWR' }, towed: [{ gvwr: lb(10001), gross: 'not above GVWR' }], labelGcwr: 'not shown' }) // Right, group 'A'
 * @source 49 CFR 383.91(a), 383.5
 */
export function licenceGroup(combination: CombinationWeights): Either<RulesError, LicenceGroup> {
  const rating = gcwrByDefinition(combination);
  if (isLeft(rating)) return rating;
  const { powerUnit, towed, gcwr } = rating.right;
  const [whole, pulled, alone] = [printedLine('cdl-A', 0), printedLine('cdl-A', 1), printedLine('cdl-B', 0)];
  const heavy = decide(gcwr, whole.operator, whole.line);
  const heavyTowed = decide(towed, pulled.operator, pulled.line);
  const heavyAlone = decide(powerUnit, alone.operator, alone.line);
  const byItself = heavyAlone.holds ? 'B' : 'none by weight';
  return right({
    group: heavy.holds && heavyTowed.holds ? 'A' : byItself,
    rating: rating.right,
    distances: [
      difference('distance to the combination line', gcwr, whole.line),
      difference('distance to the towed-unit line', towed, pulled.line),
      difference('distance to the single-vehicle line', powerUnit, alone.line),
    ],
    caution: federalRule('cdl-A').caution ?? '',
    decisions: [...rating.right.decisions, heavy, heavyTowed, heavyAlone],
  });
}
