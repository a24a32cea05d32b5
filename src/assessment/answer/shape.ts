/** The plain answer: what `answerOf` writes and `verifyAnswer` reads. Everything in it is JSON. */
import type { Verdict } from '../../ratings/index.js';
import type { Outcome, RuleKind } from '../../rules/index.js';
import type { Json } from '../../spec/index.js';
import type { Basis } from '../../trace/index.js';
import type { AssessmentVerdict } from '../parts/verdict.js';
import type { AnswerWorking, FigureText } from './node-shape.js';

/** Names the format of the plain answer. */
export const answerFormat = 'trailer-ratings answer';
/** The version of the format. It changes when a reader of the old one would misread the new one. */
export const answerVersion = 1;

/** One check. Its figures are rounded at the edge: loads and shares up, a load that lifts away from zero, ratings and reserves down. */
export interface AnswerCheck {
  /** The weakest basis that the check rests on; left out of an answer without working where it is `stated`. */
  readonly basis?: Basis;
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

/** A figure of the answer that is not a check: rounded, with its node in the working. */
export interface AnswerFigure {
  /** The figure, rounded: capacities down, loads up. */
  readonly figure: FigureText;
  /** Its place in `working.nodes`, when the working is written out. */
  readonly node?: number;
}

/** A remark, or something that asks attention. */
export interface AnswerNote {
  /** The figures it is about, when the working is written out. */
  readonly figures?: readonly AnswerFigure[];
  /** The keys of the spec it is about; an attention note always names the keys its figures come from. */
  readonly paths?: readonly string[];
  /** The remark in one sentence. Sentences may change from version to version. */
  readonly says: string;
  /** A stable name for programs. */
  readonly tag: string;
}

/** What the trailer may carry, and by what it is limited. */
export interface AnswerPayloadFigure extends AnswerFigure {
  /** The limits that set it; more than one when they tie. */
  readonly governing: readonly string[];
  /** The tongue shares it holds at; absent when the payload is zero or less. */
  readonly shares?: { readonly from: AnswerFigure; readonly to: AnswerFigure };
}

/** The payload at the best share of the band, and at every share of it. */
export interface AnswerPayload {
  /** At the best share. */
  readonly best?: AnswerPayloadFigure;
  /** At every share. */
  readonly anywhere?: AnswerPayloadFigure;
}

/** A load that must press down and is below zero: the ball, an axle or a side lifts. */
export interface AnswerUplift extends AnswerFigure {
  /** What lifts. */
  readonly what: string;
}

/** An open question, and the missing facts. */
export interface AnswerOpenQuestion {
  /** A stable name for programs. */
  readonly id: string;
  /** The fact that is missing. */
  readonly missing: string;
  /** The keys of the spec that would answer it. */
  readonly paths: readonly string[];
  /** What was not checked. */
  readonly what: string;
}

/** The finding of one published rule. It is not verified, because the text of a rule is not a figure. */
export interface AnswerRule {
  /** The clause of the rule. */
  readonly clause: string;
  /** What follows, of a duty that applies or a limit that is crossed. */
  readonly effect?: string;
  /** A stable name for programs: the rule, or the question that several rules answer. */
  readonly id: string;
  /** A duty, or a limit. */
  readonly kind: RuleKind;
  /** The facts needed before the rule can be decided. */
  readonly missing?: readonly string[];
  /** A duty applies or not, a limit is kept or crossed; either may not apply, or cannot be decided. */
  readonly outcome: Outcome;
  /** What it is about. */
  readonly topic: string;
  /** Whether its text should be looked up first. */
  readonly verify: boolean;
}

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
  /** Without the working: the ids of the published rules that apply or are crossed. */
  readonly inEffect?: readonly string[];
  /** The version of the library that wrote it. */
  readonly library: string;
  /** Remarks: disagreements of sources, assumptions. */
  readonly notes: readonly AnswerNote[];
  /** What could not be asked. */
  readonly open: readonly AnswerOpenQuestion[];
  /** Every part of an axle against the GAWR it must bear; without the working only those that are over. */
  readonly partChecks: readonly AnswerCheck[];
  /** How many parts were checked. */
  readonly partsChecked: number;
  /** What it may carry, when a limit and the weight of the trailer are known. */
  readonly payload?: AnswerPayload;
  /** Every published rule that was asked, with what it says; left out without the working. */
  readonly rules?: readonly AnswerRule[];
  /** The spec as it was written; absent when it was changed by a program after it was read. */
  readonly spec?: Json;
  /** A fingerprint of the published tables of the library that wrote it. */
  readonly tables: string;
  /** What lifts that must press. */
  readonly uplift: readonly AnswerUplift[];
  /** Over, attention, within, or unchecked. */
  readonly verdict: AssessmentVerdict;
  /** The version of the format. */
  readonly version: number;
  /** The working, when it was asked for. */
  readonly working?: AnswerWorking;
}
