/** A proof by sampling: the number of samples, and every counterexample. Short in the suite, long by `npm run proofs`. */

export interface Proof {
  /** What was asked, and how often. */
  readonly figures: Readonly<Record<string, number>>;
  /** What speaks against the claim: no line, or it is not proved. */
  readonly against: readonly string[];
}
