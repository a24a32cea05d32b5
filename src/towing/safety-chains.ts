/** Safety chains against the trailer they must hold, in both readings that are in print. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../ratings/index.js';
import { constant, type Derived, inPounds, named, product } from '../trace/index.js';
import { ratio } from '../units/index.js';
import { chainsEach, chainsTogether } from './data/sources.js';
import type { TowingError } from './errors.js';
import { ask, type Findings, gathered, labelled } from './findings.js';
import type { TrailerChains } from './tow-vehicle.js';

export interface ChainFindings extends Findings {
  readonly notes: readonly Note[];
}

/**
 * Are the safety chains strong enough for this trailer?
 *
 * Two readings are in print, and both are answered: `breaking strength x number >= gross` (chains counted together) and
 * `breaking strength >= gross` (each chain by itself). Where they differ, State law and the stricter reading decide.
 * The second scheme names the coupler class limit or the trailer's GVWR, which `couplerClass` gives; here it is the gross.
 *
 * @param chains breaking strength of one chain with its hooks, by its certificate; not the working load limit
 * @param gross the whole laden trailer, lb
 * @returns two checks, or one for a single chain; Left `NotAboveZero`
 * @source 49 CFR 393.70(d) and guidance (together); two secondary pages on SAE J684 (each)
 */
export function safetyChainChecks(chains: TrailerChains, gross: Derived<'lb'>): Either<TowingError, ChainFindings> {
  const one = inPounds('breaking strength of one chain', chains.each, 'label');
  const both = product('chains together', one, constant(ratio(chains.count)));
  const findings = gathered([
    ...(chains.count === 1 ? [] : [labelled('together', ask('safety chains', 'gross', both, gross, { clause: chainsTogether }))]),
    labelled('each', ask('safety chains', 'gross', named('each chain', one), gross, { clause: chainsEach })),
  ]);
  if (isLeft(findings)) return findings;
  const differ = new Set(findings.right.checks.map(({ verdict }) => verdict)).size > 1;
  const disagreement = note('ChainReadingsDiffer', 'Counted together the chains hold this trailer, each by itself it does not: both readings are in print.', [both, one, gross]);
  return right({ ...findings.right, notes: differ ? [disagreement] : [] });
}
