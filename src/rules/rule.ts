/** A published rule as data: what it tests, against which printed figure, and what follows. */
import type { Grade, Source } from '../trace/index.js';
import type { UnitOf } from '../units/index.js';
import { own } from '../units/internal.js';
import type { LengthFact, WeightName, YesNoFact } from './facts.js';

/** The operators a rule may print. */
export const operators = ['<', '<=', '>', '>='] as const;
export type Operator = (typeof operators)[number];

/** A figure as printed: its digits, in the unit of the condition. */
export interface PrintedLine {
  readonly value: string;
}
/** A printed share of another weight: 1.75 times the tow vehicle GVWR. */
export interface ShareLine {
  readonly times: string;
  readonly of: WeightName;
}
/** The least of several. */
export interface LeastLine {
  readonly least: readonly [PrintedLine | ShareLine, ...(PrintedLine | ShareLine)[]];
}
export type Line = PrintedLine | ShareLine | LeastLine;

/** One comparison. `unit` is the unit the rule prints; the fact is converted to it, never the line to the fact. */
export type Condition =
  | { readonly test: WeightName; readonly operator: Operator; readonly line: Line; readonly unit: UnitOf<'mass'> }
  | {
      readonly test: LengthFact;
      readonly operator: Operator;
      readonly line: PrintedLine;
      readonly unit: UnitOf<'length'>;
    };

/** A duty follows where its conditions hold. A limit is kept where they hold, and crossed where one fails. */
export const ruleKinds = ['duty', 'limit'] as const;
export type RuleKind = (typeof ruleKinds)[number];

/** A question that several rules answer, of which at most one fits: together they are one finding. */
export interface RuleQuestion {
  readonly id: string;
  readonly topic: string;
}

/** One published rule. */
export interface Rule {
  readonly id: string;
  readonly topic: string;
  readonly jurisdiction: string;
  readonly kind: RuleKind;
  /** The question that it answers together with others. */
  readonly alternativeOf?: RuleQuestion;
  /** The duty whose reach this one shares: it binds only where that one applies. */
  readonly bindsWhere?: string;
  /** The exception: where that duty applies, this one does not. */
  readonly exceptWhere?: string;
  /** Questions that must be answered yes, and such that must be answered no. */
  readonly when?: readonly YesNoFact[];
  readonly unless?: readonly YesNoFact[];
  /** The range it refers to: outside of it the rule does not apply. */
  readonly where?: readonly Condition[];
  /** All of them together make the condition. */
  readonly all: readonly Condition[];
  /** What follows of a duty that applies, or of a limit that is crossed. */
  readonly effect: string;
  readonly exceptions: readonly string[];
  readonly clause: string;
  /** The same figure in the other unit as the rule prints it. Shown, never compared. */
  readonly alsoPrinted?: string;
  readonly grade: Grade;
  /** When the text was read. */
  readonly read: string;
  /** The date that the copy itself carries. */
  readonly dated?: string;
  /** What was read. */
  readonly source: string;
  readonly caution?: string;
}

/** Printed with every finding. */
export const generalCaution =
  'A finding compares the facts given with a published line as read on the date shown; the rule in force, the label and State law govern.';

/** The rule as a source for its printed figures. */
export const sourceOfRule = (rule: Pick<Rule, 'id' | 'source' | 'grade' | 'clause' | 'read' | 'dated'>): Source => {
  const dated = own(rule, 'dated');
  return {
    id: rule.id,
    title: rule.source,
    grade: rule.grade,
    clause: rule.clause,
    edition: dated === undefined ? `read ${rule.read}` : `dated ${dated}, read ${rule.read}`,
  };
};
