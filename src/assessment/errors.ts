/** What can go wrong with an assessment: plain data. */
import type { AxlesError } from '../axles/errors.js';
import type { LoadError } from '../load/errors.js';
import type { MembersError } from '../members/errors.js';
import type { RulesError } from '../rules/errors.js';
import type { SpecError } from '../spec/errors.js';
import type { TiresError } from '../tires/errors.js';
import type { TowingError } from '../towing/errors.js';
import type { TraceError } from '../trace/errors.js';
import type { UnitsError } from '../units/errors.js';

/** A fact the question needs is not in the spec. */
export interface MissingFact {
  /** The chapter of the error. */
  readonly chapter: 'assessment';
  /** Which error it is: programs switch on it. */
  readonly tag: 'MissingFact';
  /** What was asked, in shop words. */
  readonly question: string;
  /** The fact that is missing, in shop words. */
  readonly missing: string;
  /** The key of the spec, or the place, at fault. */
  readonly path?: string;
}

/** The JSON value is no plain answer. */
export interface NotAnAnswer {
  /** The chapter of the error. */
  readonly chapter: 'assessment';
  /** Which error it is: programs switch on it. */
  readonly tag: 'NotAnAnswer';
  /** Where in the answer. */
  readonly path: string;
  /** What was found there, in short. */
  readonly found: string;
  /** What is needed there. */
  readonly needed: string;
}

/** A plain answer of another version of the format: it is neither right nor wrong here. */
export interface OtherAnswerVersion {
  /** The chapter of the error. */
  readonly chapter: 'assessment';
  /** Which error it is: programs switch on it. */
  readonly tag: 'OtherAnswerVersion';
  /** Where in the answer. */
  readonly path: string;
  /** The version it says. */
  readonly found: string;
  /** The version that this library reads. */
  readonly known: number;
}

export type AssessmentError = MissingFact | NotAnAnswer | OtherAnswerVersion;

/** Everything for which a spec can be refused: the reader's errors and those of every chapter that an assessment asks. */
export type AssessError =
  | UnitsError
  | TraceError
  | TiresError
  | MembersError
  | AxlesError
  | LoadError
  | TowingError
  | RulesError
  | SpecError
  | AssessmentError;
