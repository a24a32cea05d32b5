/** What can go wrong with a study: plain data. */
import type { AssessError } from '../assessment/errors.js';

/** The spec has no figure at this path. */
export interface UnknownPath {
  /** The chapter of the error. */
  readonly chapter: 'study';
  /** Which error it is: programs switch on it. */
  readonly tag: 'UnknownPath';
  /** The key of the spec, or the place, at fault. */
  readonly path: string;
  /** Keys that are written nearly so. */
  readonly nearest: readonly string[];
}

/** A variation without levels, with a level that is not a figure of the right kind, or outside what the input may be. */
export interface UnusableVariation {
  /** The chapter of the error. */
  readonly chapter: 'study';
  /** Which error it is: programs switch on it. */
  readonly tag: 'UnusableVariation';
  /** The key of the spec, or the place, at fault. */
  readonly path: string;
  /** What was found there, in a few words. */
  readonly found: string;
  /** What is needed there. */
  readonly needed: string;
}

/** More variants than a study takes on. */
export interface TooManyVariants {
  /** The chapter of the error. */
  readonly chapter: 'study';
  /** Which error it is: programs switch on it. */
  readonly tag: 'TooManyVariants';
  /** How many there would be. */
  readonly count: number;
  /** How many there may be. */
  readonly most: number;
  /** The key of the spec, or the place, at fault. */
  readonly path?: string;
}

/** More rows than memory holds as columns. */
export interface TooManyRows {
  /** The chapter of the error. */
  readonly chapter: 'study';
  /** Which error it is: programs switch on it. */
  readonly tag: 'TooManyRows';
  /** How many there would be. */
  readonly count: number;
  /** How many there may be. */
  readonly most: number;
  /** The key of the spec, or the place, at fault. */
  readonly path?: string;
}

/** The tape and the exact working disagree: a defect of the library, always reported. */
export interface TapeMismatch {
  /** The chapter of the error. */
  readonly chapter: 'study';
  /** Which error it is: programs switch on it. */
  readonly tag: 'TapeMismatch';
  /** The number of the row. */
  readonly row: number;
  /** The figure that differs. */
  readonly column: string;
  /** What the tape says. */
  readonly tape: string;
  /** What the working in decimals says. */
  readonly exact: string;
  /** The key of the spec, or the place, at fault. */
  readonly path?: string;
}

/** Somebody stopped the run. */
export interface Aborted {
  /** The chapter of the error. */
  readonly chapter: 'study';
  /** Which error it is: programs switch on it. */
  readonly tag: 'Aborted';
  /** How many rows were done. */
  readonly afterRows: number;
  /** The key of the spec, or the place, at fault. */
  readonly path?: string;
}

/** No value of the input brings the reserve to zero. */
export interface NoSolution {
  /** The chapter of the error. */
  readonly chapter: 'study';
  /** Which error it is: programs switch on it. */
  readonly tag: 'NoSolution';
  /** The key of the spec, or the place, at fault. */
  readonly path: string;
  /** The reserve or the figure that was to be solved for. */
  readonly what: string;
  /** What was found instead, in a few words. */
  readonly found: string;
}

export type StudyError =
  | UnknownPath
  | UnusableVariation
  | TooManyVariants
  | TooManyRows
  | TapeMismatch
  | Aborted
  | NoSolution;

/** Whatever a study can be refused for: its own errors, and those of the specs it assesses. */
export type StudyFailure = AssessError | StudyError;
