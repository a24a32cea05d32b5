/** Safety chains: breaking strength against the weight they must hold, counted both ways. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { check, type Check, note, type Note, rating, weight } from '../ratings/index.js';
import { type AnyWeight, type Derived, sum } from '../trace/index.js';
import { firstLeft } from './consistency.js';
import { rulesError, type RulesError } from './errors.js';
import { federalRule } from './federal.js';
import { pounds } from './pounds.js';
import { sourceOfRule } from './rule.js';

export interface SafetyChains {
  /** The chains counted together, as the federal guidance allows. */
  readonly together: Check;
  /** Each chain by itself, as stricter texts ask. */
  readonly each: readonly Check[];
  /** Present when the two ways of counting disagree. */
  readonly notes: readonly Note[];
}

/**
 * Are the safety chains strong enough for the weight they must hold?
 *
 * Together: `sum of breaking strengths >= gross`. Each: `breaking strength >= gross` for every chain. Both are answered,
 * because the federal guidance lets two chains count together while other texts ask it of each; neither is chosen here.
 *
 * Breaking strength, not the working load limit stamped on a cargo chain. Hooks and anchors are parts of the device too.
 *
 * @param strengths breaking strength of each chain with its hook and anchor, the weakest part of each, any unit of weight
 * @param gross the whole laden trailer, tongue load included
 * @returns lb. Left `OutOfRange` for no chain or a figure not greater than zero.
 * @example safetyChains([lb(7000), lb(7000)], lb(12400)) // Right: together within, each over
 * @source 49 CFR 393.70(d) (full trailers) and guidance question 2; N.H. RSA 266:63 for each chain by itself
 */
export function safetyChains(strengths: readonly AnyWeight[], gross: AnyWeight): Either<RulesError, SafetyChains> {
  if (strengths.length === 0) return left(rulesError({ tag: 'OutOfRange', what: 'safety chains', found: 'none', needed: 'the breaking strength of at least one' }));
  const held = pounds('gross', gross);
  if (isLeft(held)) return held;
  const chains = firstLeft(strengths.map((strength, i) => pounds(`chain ${i + 1} breaking strength`, strength, 'label')));
  if (isLeft(chains)) return chains;
  const clause = sourceOfRule(federalRule('chains-fed'));
  const against = (strength: Derived<'lb'>, of: string): Check => check(rating('safety chains', strength, { of, clause }), weight('gross', held.right));
  const together = against(sum('breaking strength together', chains.right), 'together');
  const each = chains.right.map((strength, i) => against(strength, `chain ${i + 1}`));
  const disagree = together.verdict === 'within' && each.some(({ verdict }) => verdict === 'over');
  return right({ together, each, notes: disagree ? [note('ChainsTogetherOrEach', 'The chains hold the weight together but not each by itself; the federal guidance counts them together, stricter texts count each.')] : [] });
}
