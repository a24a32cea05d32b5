/** What a published rule says to the facts of one job. */
import type { Decision } from '../../trace/index.js';
import type { Rule } from '../rule.js';
import type { Answer } from './compare.js';

/** What a duty says: what it asks for follows, or does not. */
export type DutyOutcome = 'applies' | 'does not apply' | 'cannot be told';
/** What a limit says: the figure keeps it or crosses it; or it does not bind here. */
export type LimitOutcome = 'kept' | 'crossed' | 'does not apply' | 'cannot be told';
export type Outcome = DutyOutcome | LimitOutcome;

/** One rule put to the facts. Rules that are alternatives of one question have one each, under one finding. */
export interface RuleAnswer {
  readonly rule: Rule;
  readonly outcome: Outcome;
  /** The findings it refers to, its questions, its range, its conditions: the last only where the rule covers such a rig at all. */
  readonly answers: readonly Answer[];
}

interface Found {
  /** What programs look up: the id of the rule, or of the question that several rules answer. */
  readonly id: string;
  /** Of alternatives the one that fits; where none does, the question. */
  readonly topic: string;
  /** The rule that decides: of alternatives the one that fits, or the first where none does. */
  readonly rule: Rule;
  /** Every rule that was asked, each with what it says. */
  readonly rows: readonly RuleAnswer[];
  /** What the outcome rests on, written out: comparisons with their distance to the line, and what other findings say. */
  readonly answers: readonly Answer[];
  /** The facts needed before the rule can answer. Empty unless the outcome is `cannot be told`. */
  readonly missing: readonly string[];
  /** True when the text of the rule, or of one it refers to, should be looked up first. */
  readonly verify: boolean;
  readonly caution: string;
  readonly decisions: readonly Decision[];
}

/** What a duty says to the facts given. */
export interface DutyFinding extends Found {
  readonly kind: 'duty';
  readonly outcome: DutyOutcome;
}
/** What a limit says to the facts given. */
export interface LimitFinding extends Found {
  readonly kind: 'limit';
  readonly outcome: LimitOutcome;
}
/** What one published rule says to the facts given. It never says that something is allowed. */
export type Finding = DutyFinding | LimitFinding;

/** Whether something follows: a duty applies, or a limit is crossed. @example hasEffect({ outcome: 'crossed' }) // true */
export const hasEffect = ({ outcome }: Pick<Finding, 'outcome'>): boolean =>
  outcome === 'applies' || outcome === 'crossed';
