/** What can go wrong with a question over whole answers: plain data. */

/** A tolerance, a lever or a line was given for something that the spec does not have. */
export interface NotInTheSpec {
  /** The chapter of the error. */
  readonly chapter: 'choose';
  /** Which error it is: programs switch on it. */
  readonly tag: 'NotInTheSpec';
  /** The key of the spec, or the place, at fault. */
  readonly path: string;
  /** What the spec has that is written nearly so. */
  readonly nearest: readonly string[];
}

/** A figure of a question that cannot be read, or cannot be: a tolerance below zero, a weight where a length was asked. */
export interface UnusableFigure {
  /** The chapter of the error. */
  readonly chapter: 'choose';
  /** Which error it is: programs switch on it. */
  readonly tag: 'UnusableFigure';
  /** The key of the spec, or the place, at fault. */
  readonly path: string;
  /** What was found there, in a few words. */
  readonly found: string;
  /** What is needed there. */
  readonly needed: string;
}

/** The question lacks its input: no trailer in the stock, no build to compare, a sheet with too few figures. */
export interface NothingToAnswer {
  /** The chapter of the error. */
  readonly chapter: 'choose';
  /** Which error it is: programs switch on it. */
  readonly tag: 'NothingToAnswer';
  /** What was asked, in shop words. */
  readonly question: string;
  /** The fact that is missing, in shop words. */
  readonly missing: string;
  /** The key of the spec, or the place, at fault. */
  readonly path?: string;
}

export type ChooseError = NotInTheSpec | UnusableFigure | NothingToAnswer;
