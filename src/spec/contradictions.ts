/** Two statements of a spec that cannot both be so: one of them was read wrongly, and every answer built on either would be a guess. */

import { orNone } from '../units/internal.js';
import { axleContradictions, orderOfAxles } from './contradictions/axles.js';
import { cargoContradictions } from './contradictions/cargo.js';
import { type Found, gathered, type Partly } from './contradictions/found.js';
import { towContradictions } from './contradictions/tow.js';
import { trailerContradictions } from './contradictions/trailer.js';
import { type UndecodableSpec, undecodable } from './errors.js';
import type { DecodedSpec } from './types/spec.js';

export type { Partly } from './contradictions/found.js';

/** What contradicts what in a spec. */
export interface Contradictions extends Found {
  /** The same as an error; absent when there is no contradiction. */
  readonly error?: UndecodableSpec;
}

/** Those of specs that have been read, so that nobody looks for them twice. */
const known = new WeakMap<object, Contradictions>();

/**
 * Which statements of this spec contradict each other?
 *
 * Each is reported at every key that may have to change: a GAWR above its beam at `trailer.axles.0.gawr` and `trailer.axles.0.beam`.
 *
 * @param spec a spec that has been read, or what could be read of one with faults
 * @returns the problems, and the comparisons behind them, for studies
 * @example contradictionsIn(orThrow(decodeSpec(spec))).problems.length // 0
 */
export function contradictionsIn(spec: Partly<DecodedSpec>): Contradictions {
  const before = known.get(spec);
  if (before !== undefined) return before;
  const axles = spec.trailer?.axles ?? [];
  const found = [
    ...axles.map((axle, i) => axleContradictions(orNone(axle), i)),
    orderOfAxles(axles),
    trailerContradictions(orNone(spec.trailer)),
    cargoContradictions(spec.cargo ?? []),
    towContradictions(spec.trailer?.hitch, orNone(spec.tow), orNone(spec.rules)),
  ];
  const { problems, decisions } = gathered(found);
  const all = { problems, decisions, ...(problems.length > 0 && { error: undecodable(problems) }) };
  known.set(spec, all);
  return all;
}
