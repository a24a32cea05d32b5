/** What a codec of the spec says of itself: forms, the JSON Schema, the types and the guide are made of it. */
import type * as t from 'io-ts';
import type { Basis } from '../../trace/index.js';
import type { Dimension, Quantity, Unit } from '../../units/index.js';

/** A figure with its unit. */
export interface FigureKind {
  readonly kind: 'figure';
  readonly dimension: Dimension;
  /** The unit it has when it has been read; absent for one that keeps its own. */
  readonly unit?: Unit | undefined;
  readonly least: Quantity<Unit>;
  readonly most: Quantity<Unit>;
  /** Its basis by default. */
  readonly basis: Basis;
  /** Words that may replace it: `unknown`. */
  readonly orWords?: readonly string[] | undefined;
}

/** A number of pieces that a study may vary: a plain number, or its digits. */
export interface PiecesKind {
  readonly kind: 'pieces';
  readonly least: number;
  readonly most: number;
}

/** One of a few words. */
export interface ChoiceKind {
  readonly kind: 'choice';
  readonly words: readonly string[];
}

/** A whole number. */
export interface CountKind {
  readonly kind: 'count';
  readonly least: number;
  readonly most: number;
}

/** A short text on one line. */
export interface TextKind {
  readonly kind: 'text';
  readonly most: number;
}

/** True or false. */
export interface YesNoKind {
  readonly kind: 'yes or no';
}

/** A record that knows all its keys. */
export interface RecordKind {
  readonly kind: 'record';
  /** Its name among the types: `Tires` makes `TiresInput`. */
  readonly type: string;
  readonly title: string;
  readonly required: Shape;
  readonly optional: Shape;
  /** Something else is made of it when it has been read. */
  readonly made?: boolean;
}

/** A list of alike. */
export interface ListKind {
  readonly kind: 'list';
  /** What it is a list of, in the plural. */
  readonly of: string;
  readonly each: AnyCoded;
  readonly least: number;
  readonly most: number;
}

/** One of several forms of one thing, distinguished by their keys. */
export interface FormsKind {
  readonly kind: 'forms';
  readonly type: string;
  readonly title: string;
  readonly forms: readonly AnyCoded[];
  /** Something else is made of it when it has been read. */
  readonly made?: boolean;
}

export type Kind =
  | FigureKind
  | PiecesKind
  | ChoiceKind
  | CountKind
  | TextKind
  | YesNoKind
  | RecordKind
  | ListKind
  | FormsKind;

/** A codec that can say what it is made of. */
export interface Coded<A = unknown, O = unknown> extends t.Type<A, O, unknown> {
  readonly says: Kind;
}

/** A codec of any type, with what it says of itself. */
export type AnyCoded = t.Mixed & { readonly says: Kind };

/** The codecs of a record by their keys. */
export type Shape = Readonly<Record<string, AnyCoded>>;

/** A codec and what it says of itself. */
export const coded = <A, O>(codec: t.Type<A, O, unknown>, says: Kind): Coded<A, O> => Object.assign(codec, { says });
