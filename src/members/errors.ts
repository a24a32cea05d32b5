/** What can go wrong with members: plain data. */
import type { TraceError } from '../trace/index.js';
import type { UnitsError, WireQuantity } from '../units/index.js';

/** The text is not the designation of a shape. */
export interface UnreadableDesignation {
  readonly chapter: 'members';
  readonly tag: 'UnreadableDesignation';
  readonly text: string;
  readonly needed: string;
  readonly path?: string;
}

/** Two figures of one part cannot both be true: a flange narrower than its web, a radius larger than the leg. */
export interface ImpossibleShape {
  readonly chapter: 'members';
  readonly tag: 'ImpossibleShape';
  readonly what: string;
  readonly found: WireQuantity<'in'>;
  readonly needed: string;
  readonly limit: WireQuantity<'in'>;
  readonly path?: string;
}

/** An empty list has no weight and no place. */
export interface NothingListed {
  readonly chapter: 'members';
  readonly tag: 'NothingListed';
  readonly what: string;
  readonly path?: string;
}

/** No outline is known that comes close to the published figures of this shape: use the table. */
export interface NoOutline {
  readonly chapter: 'members';
  readonly tag: 'NoOutline';
  readonly designation: string;
  readonly why: string;
  readonly path?: string;
}

/** A table row has no figure in the column that was asked for. */
export interface ColumnEmpty {
  readonly chapter: 'members';
  readonly tag: 'ColumnEmpty';
  readonly table: string;
  readonly row: string;
  readonly column: string;
  readonly path?: string;
}

/** The errors that belong to this chapter. */
export type OwnMembersError = UnreadableDesignation | ImpossibleShape | NothingListed | NoOutline | ColumnEmpty;

/** Whatever a function of this chapter may answer with. */
export type MembersError = OwnMembersError | TraceError | UnitsError;
