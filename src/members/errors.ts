/** What can go wrong with members: plain data. */
import type { TraceError } from '../trace/index.js';
import type { AnyQuantity, UnitsError } from '../units/index.js';

/** The text is not the designation of a shape. */
export interface UnreadableDesignation {
  readonly chapter: 'members';
  readonly tag: 'UnreadableDesignation';
  readonly text: string;
  readonly needed: string;
  readonly path?: string;
}

/** A figure that must stand above zero (or not below it) does not: a spacing, a span, a length, a count. */
export interface FigureTooSmall {
  readonly chapter: 'members';
  readonly tag: 'FigureTooSmall';
  readonly what: string;
  readonly found: AnyQuantity;
  readonly needed: 'more than zero' | 'zero or more';
  readonly path?: string;
}

/** Two figures of one part cannot both be true: a flange narrower than its web, a radius larger than the leg. */
export interface ImpossibleShape {
  readonly chapter: 'members';
  readonly tag: 'ImpossibleShape';
  readonly what: string;
  readonly found: AnyQuantity;
  readonly needed: string;
  readonly limit: AnyQuantity;
  readonly path?: string;
}

/** A count of pieces that is not a whole number. */
export interface NotWhole {
  readonly chapter: 'members';
  readonly tag: 'NotWhole';
  readonly what: string;
  readonly found: AnyQuantity;
  readonly path?: string;
}

/** A list with nothing in it has no weight and no place. */
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

/** A moisture content for which the formula does not speak. */
export interface MoistureOutOfRange {
  readonly chapter: 'members';
  readonly tag: 'MoistureOutOfRange';
  readonly found: AnyQuantity;
  readonly path?: string;
}

/** A load that stands, wholly or in part, beyond an end of the beam. */
export interface LoadOffTheBeam {
  readonly chapter: 'members';
  readonly tag: 'LoadOffTheBeam';
  readonly load: string;
  readonly found: AnyQuantity;
  readonly limit: AnyQuantity;
  readonly path?: string;
}

/** A cut list or deck that cannot be read. */
export interface UndecodableList {
  readonly chapter: 'members';
  readonly tag: 'UndecodableList';
  readonly found: string;
  readonly needed: string;
  readonly path?: string;
}

/** The errors that belong to this chapter. */
export type OwnMembersError =
  | UnreadableDesignation
  | FigureTooSmall
  | ImpossibleShape
  | NotWhole
  | NothingListed
  | NoOutline
  | ColumnEmpty
  | MoistureOutOfRange
  | LoadOffTheBeam
  | UndecodableList;

/** Whatever a function of this chapter may answer with. */
export type MembersError = OwnMembersError | TraceError | UnitsError;
