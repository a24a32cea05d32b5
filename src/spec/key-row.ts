/** The words of the keys of a spec, record by record: what the guide, the types, the schema and forms say of them. */

/** A figure, a word, a text: what it is, where one reads it, an example, what stays unasked without it. */
export type LeafRow = readonly [key: string, what: string, where: string, example: unknown, without: string];
/** A record or a list with a table of its own: what it is, and what stays unasked without it. */
export type BranchRow = readonly [key: string, what: string, without: string];

/** The keys of one record. */
export interface KeyRows {
  /** The record, by the name of its type: `Tires`. */
  readonly type: string;
  /** What is to be known before its keys are read. */
  readonly about?: string;
  readonly rows: readonly (LeafRow | BranchRow)[];
}
