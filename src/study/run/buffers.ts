/** Buffers of one run, reused for every chunk. */
import type { ReadPlan } from '../plan/read-plan.js';
import { type BlockVerdicts, verdictsFor } from './row-marks.js';

/** About a thousand rows. The arrays are used again for the next chunk: copy what is to be kept. */
export interface Chunk {
  /** The number of its first row. */
  readonly start: number;
  /** How many rows it has. */
  readonly rows: number;
  /** For each name of alternatives a column: the index of the one taken, -1 for none. */
  readonly choices: readonly Int16Array[];
  /** For each varied key a column, in the unit of the header. */
  readonly inputs: readonly Float64Array[];
  /** For each figure a column, in the unit of the header. */
  readonly figures: readonly Float64Array[];
  /** For each row, an index into `verdictNames`: over, attention, within, unchecked. */
  readonly verdict: Uint8Array;
  /** For each row, the attention notes as bits: bit k is `attentionNames[k]`. */
  readonly attention: Uint32Array;
  /** The tags of what asks attention, in the order of their bits. */
  readonly attentionNames: readonly string[];
  /** For each row, an index into `governNames`: the check closest to its limit, or all that tie. */
  readonly governs: Uint16Array;
  /** The checks closest to their limit, in the order of their index. */
  readonly governNames: readonly string[];
  /** For each row, an index into `reasonNames`: 0 for a row with an answer, else why it has none. Its figures are then meaningless. */
  readonly reasons: Uint16Array;
  /** Why rows have no answer, in the order of their index. */
  readonly reasonNames: readonly string[];
  /** Rows decided again with exact decimals, or assessed from their spec. */
  readonly exactRows: number;
}

/** What one run works in; each run has its own, so that two may be read in turns. */
export interface Buffers {
  readonly choices: Int16Array[];
  readonly inputs: Float64Array[];
  readonly figures: Float64Array[];
  readonly verdict: Uint8Array;
  readonly attention: Uint32Array;
  readonly governs: Uint16Array;
  readonly reasons: Uint16Array;
  readonly columns: Float64Array[];
  readonly verdicts: BlockVerdicts;
}

export function buffersFor(size: number, { choices, factors }: ReadPlan, figures: number): Buffers {
  const columns = (count: number): Float64Array[] => Array.from({ length: count }, () => new Float64Array(size));
  return {
    choices: choices.map(() => new Int16Array(size)),
    inputs: columns(factors.length),
    figures: columns(figures),
    verdict: new Uint8Array(size),
    attention: new Uint32Array(size),
    governs: new Uint16Array(size),
    reasons: new Uint16Array(size),
    columns: [],
    verdicts: verdictsFor(size),
  };
}
