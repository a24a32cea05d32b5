/** What can go wrong with a question over whole answers: plain data. */

/** A tolerance, a lever or a line was told for something that the spec does not have. */
export interface NotInTheSpec {
  readonly chapter: 'choose';
  readonly tag: 'NotInTheSpec';
  readonly path: string;
  /** What the spec has that is written nearly so. */
  readonly nearest: readonly string[];
}

/** A figure of a question that cannot be read, or cannot be: a tolerance below zero, a weight where a length was asked. */
export interface UnusableFigure {
  readonly chapter: 'choose';
  readonly tag: 'UnusableFigure';
  readonly path: string;
  readonly found: string;
  readonly needed: string;
}

/** The question has nothing to go on: no trailer in the yard, a sheet with too few figures. */
export interface NothingToAnswer {
  readonly chapter: 'choose';
  readonly tag: 'NothingToAnswer';
  readonly question: string;
  readonly missing: string;
  readonly path?: string;
}

export type ChooseError = NotInTheSpec | UnusableFigure | NothingToAnswer;
