/** The plain answer: what `answerOf` writes and `verifyAnswer` reads. Everything in it is JSON. */
import type { Verdict } from '../../ratings/index.js';
import type { Basis, Operation, Source } from '../../trace/index.js';
import type { RoundingMode } from '../../units/index.js';
import type { Json } from '../../spec/index.js';

/** A figure as text: digits, a blank, the unit: `9000 lb`. A plain number has no unit: `0.12`. */
export type FigureText = string;

/** Names the format of the plain answer. */
export const answerFormat = 'trailer-ratings answer';
/** The version of the format. It changes when a reader of the old one would misread the new one. */
export const answerVersion = 1;

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

/** A step: one operation on nodes that stand before it. */
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

/** One check. Its figures are rounded at the edge: loads and shares up, ratings and reserves down. */
export interface AnswerCheck {
  /** The weakest basis that the check rests on. */
  readonly basis: Basis;
  /** A stable name for programs. */
  readonly id: string;
  /** The load, rounded up. */
  readonly load: FigureText;
  /** What was asked, in shop words. */
  readonly name: string;
  /** The places of load, rating, reserve and share in `working.nodes`, when the working is written out. */
  readonly nodes?: readonly [load: number, rating: number, reserve: number, used: number];
  /** The rating, rounded down. */
  readonly rating: FigureText;
  /** Rating minus load, rounded down. */
  readonly reserve: FigureText;
  /** The share of the rating that is used, rounded up to a tenth of a percent. */
  readonly used: FigureText;
  /** Within, or over. */
  readonly verdict: Verdict;
}

/** A figure of the answer that is no check: rounded, and where it stands in the working. */
export interface AnswerFigure {
  /** The figure, rounded: capacities down, loads up. */
  readonly figure: FigureText;
  /** Its place in `working.nodes`, when the working is written out. */
  readonly node?: number;
}

/** A remark, or something that asks attention. */
export interface AnswerNote {
  /** The figures it speaks of. */
  readonly figures?: readonly AnswerFigure[];
  /** The keys of the spec it speaks of. */
  readonly paths?: readonly string[];
  /** The remark in one sentence. Sentences may change from version to version. */
  readonly says: string;
  /** A stable name for programs. */
  readonly tag: string;
}

/** What the trailer may carry, and by what it is limited. */
export interface AnswerPayload extends AnswerFigure {
  /** The limits that set it; more than one when they tie. */
  readonly governing: readonly string[];
  /** The tongue shares it holds at. */
  readonly shares: { readonly from: AnswerFigure; readonly to: AnswerFigure };
}

/** A load that must press down and is below zero: the ball, an axle or a side lifts. */
export interface AnswerUplift extends AnswerFigure {
  /** What lifts. */
  readonly what: string;
}

/** What could not be asked, for want of which fact. */
export interface AnswerOpenQuestion {
  /** The fact that is missing. */
  readonly missing: string;
  /** What was not checked. */
  readonly what: string;
}

/** The verdict on the whole. */
export type AnswerVerdict = 'over' | 'attention' | 'within' | 'unchecked';

/** An assessment as plain JSON: it can be sent, kept, and verified by somebody else. */
export interface Answer {
  /** What asks attention and is no check of a rating. */
  readonly attention: readonly AnswerNote[];
  /** Every load against the rating that limits it. */
  readonly checks: readonly AnswerCheck[];
  /** CRC-32 of everything else: a slip shows. It is no signature. */
  readonly checksum: string;
  /** Names the format. */
  readonly format: typeof answerFormat;
  /** The version of the library that wrote it. */
  readonly library: string;
  /** Remarks: disagreements of sources, assumptions. */
  readonly notes: readonly AnswerNote[];
  /** What could not be asked. */
  readonly open: readonly AnswerOpenQuestion[];
  /** Every part of an axle against the GAWR it must bear. */
  readonly partChecks: readonly AnswerCheck[];
  /** What it may carry, when a limit and the weight of the trailer are known. */
  readonly payload?: AnswerPayload;
  /** The spec as it was written; absent when it was changed by a program after it was read. */
  readonly spec?: Json;
  /** A fingerprint of the published tables of the library that wrote it. */
  readonly tables: string;
  /** What lifts that must press. */
  readonly uplift: readonly AnswerUplift[];
  /** Over, attention, within, or unchecked. */
  readonly verdict: AnswerVerdict;
  /** The version of the format. */
  readonly version: number;
  /** The working, when it was asked for. */
  readonly working?: AnswerWorking;
}
