/** A proof by asking: how much was asked, and everything that speaks against it. Short in the suite, long by `npm run proofs`. */

export interface Proof {
  /** What was asked, and how often. */
  readonly figures: Readonly<Record<string, number>>;
  /** What speaks against the claim: no line, or it is not proved. */
  readonly against: readonly string[];
}
