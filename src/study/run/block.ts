/** One block of rows on one tape: its columns, its verdicts, and the exact figures of single rows. */
import type { Operand } from '../tape/steps.js';
import { isVaried } from '../tape/tape.js';
import type { Alternative } from './alternative.js';
import type { Branch } from './branch.js';
import type { ExactRows } from './exact-rows.js';
import type { BlockVerdicts } from './row-marks.js';
import type { Share } from './shares.js';

export interface Block {
  readonly branch: Branch;
  readonly columns: readonly Float64Array[];
  readonly rows: number;
  readonly verdicts: BlockVerdicts;
  readonly exact: ExactRows;
}

/** A block of rows that have an answer. */
export interface AnsweredBlock extends Block {
  readonly branch: Alternative;
}

/** A figure as a column: its own, or `spare` filled with it. */
export const columnOf = ({ columns, rows }: Block, operand: Operand, spare: Float64Array): Float64Array =>
  isVaried(operand) ? (columns[operand.column] as Float64Array) : spare.fill(operand.value, 0, rows);

/** A figure on a row. */
export const figureAt = ({ columns }: Block, at: Operand, row: number): number =>
  isVaried(at) ? ((columns[at.column] as Float64Array)[row] as number) : at.value;

/** The share used on a row. */
export const usedAt = (block: Block, { at, times, plus }: Share, row: number): number =>
  times * figureAt(block, at, row) + plus;
