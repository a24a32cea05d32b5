/** What can go wrong with a spec: plain data. */

/** What kind of fault a place has. */
export type FaultTag =
  /** A key that must be there is not. */
  | 'missing'
  /** A key that nobody knows. */
  | 'unknown key'
  /** A key that belongs to another record. */
  | 'misplaced key'
  /** Digits without their unit. */
  | 'no unit'
  /** A figure that cannot be read, or has a unit of another kind. */
  | 'unreadable'
  /** A figure or a count outside its range. */
  | 'out of range'
  /** A value of the wrong kind: a number for a record, a word that is not on the list. */
  | 'wrong kind'
  /** A list with more in it than is read. */
  | 'too many'
  /** Two statements that cannot both be so. */
  | 'contradiction'
  /** A table or a formula does not know it; `needed` says the rest. */
  | 'refused';

/** One place in a spec that cannot be read, or that contradicts another. */
export interface Problem {
  /** The key that must change: `trailer.axles.0.gawr`. */
  readonly path: string;
  /** What kind of fault it is. */
  readonly fault: FaultTag;
  /** What was found, in a few words. */
  readonly got: string;
  /** What to write instead. */
  readonly needed: string;
}

/** The text is not JSON. */
export interface MalformedJson {
  /** The chapter of the error. */
  readonly chapter: 'spec';
  /** Which error it is: programs switch on it. */
  readonly tag: 'MalformedJson';
  /** What the reader of JSON says, in one sentence. */
  readonly says: string;
  /** Absent: the text has no keys yet. */
  readonly path?: string;
}

/** The spec has places that cannot be read, or that contradict each other; all of them are named. */
export interface UndecodableSpec {
  /** The chapter of the error. */
  readonly chapter: 'spec';
  /** Which error it is: programs switch on it. */
  readonly tag: 'UndecodableSpec';
  /** Every fault, each at the key that must change. */
  readonly problems: readonly Problem[];
  /** The first of them. */
  readonly path: string;
}

/** The errors of reading a spec. */
export type SpecError = MalformedJson | UndecodableSpec;

/** The error of a spec with these problems. */
export const undecodable = (problems: readonly Problem[]): UndecodableSpec => ({
  chapter: 'spec',
  tag: 'UndecodableSpec',
  problems,
  path: problems[0]?.path ?? 'the spec',
});
