/** Verdicts and marks of the rows of a block. */

/** Marks of a row: decided again in exact decimals; to be assessed from its spec; another branch of the program. */
export const mark = { exact: 1, elsewhere: 2, otherWay: 4 } as const;

/** What became of the rows of a block, in arrays that are used again. */
export interface BlockVerdicts {
  readonly holds: Uint8Array;
  /** Index into the alternative's `shares`; ties are broken exactly and listed in `ties`. */
  readonly governs: Uint16Array;
  /** For each row a `mark`, or 0. */
  readonly marks: Uint8Array;
  /** For a row that takes another branch, the first decision that falls out otherwise: its place in the recorded program. */
  readonly turns: Int32Array;
  readonly ties: Map<number, readonly number[]>;
  /** True when some row has a mark. */
  marked: boolean;
  readonly most: Float64Array;
  readonly second: Float64Array;
  /** Columns for figures that are the same on every row, so that a comparison has one loop. */
  readonly fixed: Float64Array[];
  readonly spare: Float64Array;
}

export const verdictsFor = (rows: number): BlockVerdicts => ({
  holds: new Uint8Array(rows),
  governs: new Uint16Array(rows),
  marks: new Uint8Array(rows),
  turns: new Int32Array(rows),
  ties: new Map(),
  marked: false,
  most: new Float64Array(rows),
  second: new Float64Array(rows),
  fixed: [],
  spare: new Float64Array(rows),
});

/** Whether the tape answers a row: its input is in range and it takes the recorded branches. */
export const isAnswered = ({ marks }: BlockVerdicts, row: number): boolean =>
  ((marks[row] as number) & (mark.elsewhere | mark.otherWay)) === 0;

/** Marks a row. */
export function setMark(verdicts: BlockVerdicts, row: number, as: number): void {
  verdicts.marks[row] = (verdicts.marks[row] as number) | as;
  verdicts.marked = true;
}
