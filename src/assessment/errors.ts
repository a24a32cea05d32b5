/** What can go wrong with an assessment: plain data. */

/** A fact the question needs is not in the spec. */
export interface MissingFact {
  readonly chapter: 'assessment';
  readonly tag: 'MissingFact';
  readonly question: string;
  readonly missing: string;
  readonly path?: string;
}

export type AssessmentError = MissingFact;
