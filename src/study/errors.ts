/** What can go wrong with a study: plain data. */
import type { AssessError } from '../assessment/errors.js';

/** The spec has no figure at this path. */
export interface UnknownPath {
  readonly chapter: 'study';
  readonly tag: 'UnknownPath';
  readonly path: string;
  readonly nearest: readonly string[];
}

/** A variation without levels, with a level that is not a figure of the right kind, or outside what the input may be. */
export interface UnusableVariation {
  readonly chapter: 'study';
  readonly tag: 'UnusableVariation';
  readonly path: string;
  readonly found: string;
  readonly needed: string;
}

/** More variants than a study takes on. */
export interface TooManyVariants {
  readonly chapter: 'study';
  readonly tag: 'TooManyVariants';
  readonly count: number;
  readonly most: number;
  readonly path?: string;
}

/** More rows than memory holds as columns. */
export interface TooManyRows {
  readonly chapter: 'study';
  readonly tag: 'TooManyRows';
  readonly count: number;
  readonly most: number;
  readonly path?: string;
}

/** The tape and the exact working disagree: a defect of the library, always reported. */
export interface TapeMismatch {
  readonly chapter: 'study';
  readonly tag: 'TapeMismatch';
  readonly row: number;
  readonly column: string;
  readonly tape: string;
  readonly exact: string;
  readonly path?: string;
}

/** Somebody stopped the run. */
export interface Aborted {
  readonly chapter: 'study';
  readonly tag: 'Aborted';
  readonly afterRows: number;
  readonly path?: string;
}

/** No value of the input brings the reserve to zero. */
export interface NoSolution {
  readonly chapter: 'study';
  readonly tag: 'NoSolution';
  readonly path: string;
  readonly what: string;
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
