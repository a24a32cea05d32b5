/** The arrays that a run of a study works in, made once and used again for every chunk. */
import type { TrailerError } from '../errors.js';
import type { Resolved } from './resolve.js';
import { type BlockVerdicts, verdictsFor } from './verdicts.js';

/** What one run works in; each run has its own, so that two may be read in turns. */
export interface Desk {
  readonly choices: Int16Array[];
  readonly inputs: Float64Array[];
  readonly figures: Float64Array[];
  readonly holds: Uint8Array;
  readonly governs: Uint16Array;
  readonly columns: Float64Array[];
  readonly verdicts: BlockVerdicts;
  readonly unanswered: Map<number, TrailerError>;
}

export function deskFor(size: number, { choices, factors }: Resolved, figures: number): Desk {
  const columns = (count: number): Float64Array[] => Array.from({ length: count }, () => new Float64Array(size));
  return {
    choices: choices.map(() => new Int16Array(size)), inputs: columns(factors.length), figures: columns(figures),
    holds: new Uint8Array(size), governs: new Uint16Array(size), columns: [], verdicts: verdictsFor(size), unanswered: new Map(),
  };
}
