/** Safety chains against the trailer they must hold, in both readings that are in print. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../../ratings/index.js';
import { type AnyWeight, constant, type Decision, inPounds, product } from '../../trace/index.js';
import { ratio } from '../../units/index.js';
import { ask, type Findings, gathered } from '../checks/checks-or-missing.js';
import { chainsEachByState, chainsTogether } from '../data/sources.js';
import type { TowingError } from '../errors.js';
import { allAboveZero } from '../figures.js';
import type { TrailerChains } from '../vehicle/tow-vehicle.js';

export interface ChainFindings extends Findings {
  readonly notes: readonly Note[];
  readonly decisions: readonly Decision[];
}

/**
 * Are the safety chains strong enough for this trailer?
 *
 * Two readings are in print, and both are answered: `breaking strength x number >= gross` (chains counted together) and
 * `breaking strength >= gross` (each chain by itself). Where they differ, State law and the stricter reading decide.
 * The second scheme names the coupler class limit or the trailer's GVWR, which `couplerClass` gives; here it is the gross.
 *
 * Breaking strength, not the working load limit stamped on a cargo chain. Hooks and anchors are parts of the device too.
 *
 * @param chains breaking strength of one chain with its hook and anchor, the weakest part of it, by its certificate, in any
 * unit of weight; of two unlike chains, the weaker
 * @param gross the whole laden trailer, tongue load included
 * @returns two checks in lb, or one for a single chain; Left `NotAboveZero` (a strength, gross)
 * @example safetyChains({ each: lb(7000), count: 2 }, lb(12400)) // Right together 'within', each 'over'
 * @source 49 CFR 393.70(d) (full trailers) and guidance question 2 (together); N.H. RSA 266:63 (each); other States ask
 * for two chains certified to SAE J684 (Wash. WAC 204-70-070)
 */
export function safetyChains(chains: TrailerChains, gross: AnyWeight): Either<TowingError, ChainFindings> {
  const held = inPounds('trailer gross', gross);
  const above = allAboveZero([['trailer gross', held]]);
  if (isLeft(above)) return above;
  const one = inPounds('breaking strength of one chain', chains.each, 'label');
  const both = product('chains together', one, constant(ratio(chains.count)));
  const findings = gathered([
    ...(chains.count === 1
      ? []
      : [ask('safety chains', 'gross', both, held, { clause: chainsTogether, how: 'together' })]),
    ask('safety chains', 'gross', one, held, { clause: chainsEachByState, how: 'each' }),
  ]);
  if (isLeft(findings)) return findings;
  const differ = new Set(findings.right.checks.map(({ verdict }) => verdict)).size > 1;
  const disagreement = note(
    'ChainReadingsDiffer',
    'Counted together the chains hold this trailer, each by itself it does not: both readings are in print.',
    [both, one, held],
  );
  return right({
    ...findings.right,
    notes: differ ? [disagreement] : [],
    decisions: [...above.right, ...findings.right.decisions],
  });
}
