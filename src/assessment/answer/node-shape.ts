/** The nodes of a plain answer's working. Everything in them is JSON. */
import type { Basis, Operation, Source } from '../../trace/index.js';
import type { RoundingMode } from '../../units/index.js';

/** A figure as text: digits, a blank, the unit: `9000 lb`. A plain number has no unit: `0.12`. */
export type FigureText = string;

/** A figure that the spec gave. */
export interface GivenNode {
  /** What kind of node this is. */
  readonly is: 'given';
  /** Its name in formulas. */
  readonly name: string;
  /** Every digit. */
  readonly figure: FigureText;
  /** What the figure rests on. */
  readonly basis: Basis;
  /** The key of the spec it was read from: `cargo.0.weight`. */
  readonly path?: string;
}

/** A figure that was read from a published table. */
export interface LookedUpNode {
  /** What kind of node this is. */
  readonly is: 'looked up';
  /** Its name in formulas. */
  readonly name: string;
  /** Every digit. */
  readonly figure: FigureText;
  /** What the figure rests on. */
  readonly basis: Basis;
  /** The name of the table. */
  readonly table: string;
  /** The row. */
  readonly key: string;
  /** The place of its source in `working.sources`. */
  readonly source: number;
}

/** A number that belongs to a formula. */
export interface ConstantNode {
  /** What kind of node this is. */
  readonly is: 'constant';
  /** Its name in formulas, if it has one. */
  readonly name?: string;
  /** Every digit. */
  readonly figure: FigureText;
  /** The place of its source in `working.sources`, if it has one. */
  readonly source?: number;
}

/** A step: one operation on earlier nodes of the list. */
export interface ComputedNode {
  /** The operation. */
  readonly is: Operation;
  /** The places of the operands in `working.nodes`, in order. */
  readonly of: readonly number[];
  /** Its name in formulas; a step without one is part of its user's formula. */
  readonly name?: string;
  /** Every digit; 34 where the result has no end. */
  readonly figure: FigureText;
  /** The weakest basis of its operands. */
  readonly basis: Basis;
  /** How a rounding rounds, and to multiples of what. */
  readonly rounding?: { readonly mode: RoundingMode; readonly step: string };
  /** The place of the formula's source in `working.sources`, if it has one. */
  readonly source?: number;
}

/** One node of the working. */
export type AnswerNode = GivenNode | LookedUpNode | ConstantNode | ComputedNode;

/** The working behind the answer: every node once, operands before the steps that use them. */
export interface AnswerWorking {
  /** The nodes. */
  readonly nodes: readonly AnswerNode[];
  /** The texts that nodes name, each once. */
  readonly sources: readonly Source[];
}
