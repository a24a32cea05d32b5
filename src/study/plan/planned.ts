/** A planned design: the point of every row. */

/** Named alternatives: how many choices there are. Choice -1 is the unchanged spec. */
export interface ChoiceFactor {
  readonly name: string;
  readonly choices: readonly string[];
}

/** A lever: one varied figure, or several that move together. */
export interface Axis {
  /** The path of the figure, or the name of the linked ones. */
  readonly name: string;
  /** How many levels it has: none for a distribution. */
  readonly levels: number;
}

/** Points by row. Choices vary slowest, then the factors in the order they were given, the last one fastest. */
export interface PlannedDesign {
  readonly count: number;
  /** The index of a choice; -1 for the unchanged spec. */
  readonly choiceAt: (row: number, choice: number) => number;
  /** The figure of a factor on a row, as a double. */
  readonly valueAt: (row: number, factor: number) => number;
  /** The level index behind it, when the design uses exact levels; -1 otherwise. */
  readonly levelAt: (row: number, factor: number) => number;
  /** The same for consecutive rows from `start`. */
  readonly fillChoices: (choice: number, start: number, rows: number, column: Int16Array) => void;
  readonly fillValues: (factor: number, start: number, rows: number, column: Float64Array) => void;
}
