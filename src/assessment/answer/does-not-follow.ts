/** The fault found when an answer is verified. */

/** The first place of an answer that does not follow from the figures before it. */
export interface DoesNotFollow {
  /** Where: `working.nodes.12`, `checks.3.verdict`. */
  readonly at: string;
  /** What the place holds, in words. */
  readonly what: string;
  /** What the answer says. */
  readonly found: string;
  /** What follows from the rest. */
  readonly needed: string;
}
