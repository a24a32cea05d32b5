/**
 * A working flattened to a tape and read in Float64 over blocks of rows.
 *
 * What does not depend on a varied input is folded to a number; what is linear between two nonlinear steps is folded to a form;
 * results of the same columns share a loop. No code is generated; each step is a plain loop. Decimals are never used
 * in these loops.
 */
import type { Decision, Node } from '../../trace/index.js';
import { byColumn, type DecidedBound } from './bounds.js';
import { Flattening } from './flatten-working.js';
import type { Scaled } from './loops/step-loops.js';
import { isVaried, type Operand, type Step } from './steps.js';
import { variesWith } from './varies.js';

/** Rows that are worked on at once: small enough for the columns of a tape to stay in the cache. */
export const blockRows = 1024;

export interface Tape {
  /** The paths that vary; one input column each, in the unit of the leaf. */
  readonly inputs: readonly string[];
  readonly steps: readonly Step[];
  /** How many columns there are, the inputs first. */
  readonly registers: number;
  /** The column of each output after a block. Outputs of the same form share a column. */
  readonly outputs: readonly Operand[];
  /** For each output that varies, the column it is a straight line of: outputs of one direction share it, and a bound may stand on it. */
  readonly lines: readonly (Scaled | undefined)[];
  /** Between which figures a column must lie for the recorded decisions to fall out as recorded. */
  readonly bounds: readonly DecidedBound[];
}

/**
 * Flattens workings.
 *
 * @param outputs the figures wanted, as nodes of one recorded working
 * @param inputs the spec paths that vary
 * @param decisions the recorded comparisons on which the program branched, in their order
 * @param varies which nodes depend on an input: all others are taken as recorded, and not looked into
 */
export function tapeOf(
  outputs: readonly Node[],
  inputs: readonly string[],
  decisions: readonly Decision[] = [],
  varies: (node: Node) => boolean = variesWith(inputs),
): Tape {
  const flattening = new Flattening(inputs, varies);
  const operands = flattening.outputs(outputs);
  const bounds = flattening.bounds(decisions);
  return {
    inputs,
    steps: flattening.steps,
    registers: flattening.registers,
    outputs: operands,
    lines: outputs.map((node) => flattening.lineOf(node)),
    bounds: byColumn(bounds),
  };
}

/** Enough columns for a tape, of so many rows; those there are already are used again. */
export function enoughColumns(columns: Float64Array[], tape: Tape, rows: number): Float64Array[] {
  while (columns.length < tape.registers) columns.push(new Float64Array(rows));
  return columns;
}

/** Runs a block whose input columns are filled; `tape.outputs` gives the places of the figures afterwards. */
export function runBlock(tape: Tape, columns: readonly Float64Array[], rows: number): void {
  for (const step of tape.steps) step.run(columns, rows);
}

export { isVaried };
