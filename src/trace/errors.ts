/** What can go wrong with tables: plain data. */

/** The table has no such row. */
export interface NotTabulated {
  readonly chapter: 'trace';
  readonly tag: 'NotTabulated';
  readonly table: string;
  readonly asked: string;
  /** The nearest rows there are. */
  readonly nearest: readonly string[];
  readonly path?: string;
}

export type TraceError = NotTabulated;
