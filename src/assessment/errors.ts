/** What can go wrong with a spec: plain data. */

/** One place in a spec that cannot be read. */
export interface Problem {
  readonly path: string;
  readonly got: string;
  readonly needed: string;
}

/** The text is not JSON. */
export interface MalformedJson {
  readonly chapter: 'assessment';
  readonly tag: 'MalformedJson';
  readonly says: string;
  readonly path?: string;
}

/** The spec has places that cannot be read; all of them are named. */
export interface UndecodableSpec {
  readonly chapter: 'assessment';
  readonly tag: 'UndecodableSpec';
  readonly problems: readonly Problem[];
  /** The first of them. */
  readonly path: string;
}

/** A fact the question needs is not in the spec. */
export interface MissingFact {
  readonly chapter: 'assessment';
  readonly tag: 'MissingFact';
  readonly question: string;
  readonly missing: string;
  readonly path?: string;
}

export type AssessmentError = MalformedJson | UndecodableSpec | MissingFact;
