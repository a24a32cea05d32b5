/** What can go wrong with rules and the facts put to them: plain data. */
import type { Dimension, Unit } from '../units/index.js';
import type { FactName } from './facts.js';

interface Here {
  readonly chapter: 'rules';
  readonly path?: string;
}

/** Two facts that cannot both be true. */
export interface ContradictoryFacts extends Here {
  readonly tag: 'ContradictoryFacts';
  readonly facts: readonly [first: string, second: string];
  readonly found: readonly [first: string, second: string];
  readonly needed: string;
}

/** A figure outside what such a figure can be. */
export interface OutOfRange extends Here {
  readonly tag: 'OutOfRange';
  readonly what: string;
  readonly found: string;
  readonly needed: string;
}

/** A figure in a unit that does not measure what the fact measures. */
export interface WrongRuleUnit extends Here {
  readonly tag: 'WrongRuleUnit';
  readonly fact: FactName;
  readonly found: Unit;
  readonly needed: Dimension;
}

/** A name that is not on the list it should be on. */
export interface UnknownName extends Here {
  readonly tag: 'UnknownFact' | 'UnknownRule';
  readonly found: string;
  readonly known: readonly string[];
}

/** A question that needs facts nobody gave. */
export interface MissingFacts extends Here {
  readonly tag: 'MissingFacts';
  readonly asked: string;
  readonly missing: readonly string[];
}

/** A weight above the last printed step of a table that has no open end. */
export interface BeyondLastStep extends Here {
  readonly tag: 'BeyondLastStep';
  readonly table: string;
  readonly found: string;
  readonly last: string;
}

export type RulesError = ContradictoryFacts | OutOfRange | WrongRuleUnit | UnknownName | MissingFacts | BeyondLastStep;

/** An error without its chapter, and with a path that may be absent. */
type Bare<E> = E extends RulesError ? Omit<E, 'chapter' | 'path'> : never;

/** Fills in the chapter, and the path when there is one. */
export const rulesError = (error: Bare<RulesError>, path?: string): RulesError =>
  ({ chapter: 'rules', ...error, ...(path !== undefined && { path }) }) as RulesError;
