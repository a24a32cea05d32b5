/** Weight added before the first sale: how much before the capacity figure must be corrected. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import { type AnyWeight, constant, type Decision, type Derived, decide, leastOf, product } from '../../trace/index.js';
import { lb, ratio } from '../../units/index.js';
import type { RulesError } from '../errors.js';
import { pounds } from '../pounds.js';
import { sourceOfRule } from '../rule.js';
import { federalRule, printedLine } from './federal.js';

/**
 * How much may a dealer add before the capacity figure on the trailer must be corrected?
 *
 * `limit = least of (1.5 % of GVWR, 100 lb)`; weight above the limit asks for a correction, weight on it does not. The two
 * meet at a GVWR of 6,666.67 lb.
 *
 * Asked where a capacity figure is shown: on trailers of 10,000 lb GVWR and less, and on RV trailers (from memory). Weight added
 * between certification and the first retail sale. The reach over utility trailers was not confirmed.
 *
 * @param gvwr from the certification label, any unit of weight
 * @returns lb, not rounded. Left `OutOfRange`.
 * @example addedWeightLimit(lb(5000)) // Right 75 lb
 * @source 49 CFR 571.110 S10, 571.120 S10 (section number from memory); final rule of 2007-12-04, 72 FR 68442, and 75 FR 22532
 */
export function addedWeightLimit(gvwr: AnyWeight): Either<RulesError, Derived<'lb'>> {
  const rated = pounds('trailer GVWR', gvwr, 'label');
  if (isLeft(rated)) return rated;
  const source = sourceOfRule(federalRule('relabel'));
  const part = product('1.5 % of GVWR', constant(ratio('0.015'), 'printed share', source), rated.right);
  return right(leastOf('added weight limit', [part, constant(lb(100), 'printed limit', source)], source));
}

/**
 * Does a trailer of this GVWR show a capacity figure that added weight could make wrong?
 *
 * `GVWR <= 10,000 lb`. Above that only RV trailers show one (from memory).
 *
 * @param gvwr from the certification label, lb
 * @returns the comparison
 * @example showsCapacity(given('GVWR', lb(10000), 'label')).holds // true
 * @source the GVWR of `relabel` among the federal rules
 */
export function showsCapacity(gvwr: Derived<'lb'>): Decision {
  const { operator, line } = printedLine('relabel', 1);
  return decide(gvwr, operator, line);
}
