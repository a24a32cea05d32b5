/** What can go wrong with a spec: plain data. */

/** One place in a spec that cannot be read. */
export interface Problem {
  readonly path: string;
  readonly got: string;
  readonly needed: string;
}

/** The text is not JSON. */
export interface MalformedJson {
  readonly chapter: 'spec';
  readonly tag: 'MalformedJson';
  readonly says: string;
  readonly path?: string;
}

/** The spec has places that cannot be read; all of them are named. */
export interface UndecodableSpec {
  readonly chapter: 'spec';
  readonly tag: 'UndecodableSpec';
  readonly problems: readonly Problem[];
  /** The first of them. */
  readonly path: string;
}

/** The errors of reading a spec. */
export type SpecError = MalformedJson | UndecodableSpec;
