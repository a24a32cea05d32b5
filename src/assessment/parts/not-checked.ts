/** A question the spec leaves open. It narrows the answer and is said aloud. */
export interface NotChecked {
  /** What was not checked. */
  readonly what: string;
  /** The fact that is missing. */
  readonly missing: string;
  /** The keys of the spec that would answer it, where they are known. */
  readonly paths?: readonly string[];
}
