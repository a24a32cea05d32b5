/** The shape of an explanation for a learner. */
import type { Derived, Node } from '../../trace/index.js';
import type { Unit } from '../../units/index.js';

/** How an answer is rounded when it is written down. */
export type RoundedAs = 'load' | 'capacity' | 'as it stands';

/** An input of a lesson. */
export interface LessonGiven {
  /** Its name in the formulas. */
  readonly symbol: string;
  /** The figure. */
  readonly node: Node;
  /** Where one reads it: the plate, the ticket, the printed table; and its key in the spec. */
  readonly where: string;
}

/** One of several figures that a step takes the least or the greatest of. */
export interface LessonChoice {
  /** The name of the figure. */
  readonly symbol: string;
  /** The figure. */
  readonly node: Node;
  /** Whether it is the one that was taken; several where they tie. */
  readonly taken: boolean;
}

/** A step of a lesson. */
export interface LessonStep {
  /** The name of its result. */
  readonly symbol: string;
  /** The step itself. */
  readonly node: Node;
  /** The formula in names. */
  readonly formula: string;
  /** The parts of a least or greatest of more than two: a table instead of a formula. */
  readonly choices?: readonly LessonChoice[];
}

/** What one input does to the answer. */
export interface LessonMover {
  /** The input. */
  readonly symbol: string;
  /** So much more of it, such as 100 lb or an inch. */
  readonly more: Node['value'];
  /** Changes the answer by so much. */
  readonly change: Node['value'];
}

/** An explanation for a learner, as data. */
export interface Lesson {
  /** What is asked. */
  readonly question: string;
  /** The answer with its working. */
  readonly answer: Derived<Unit>;
  /** How the answer is rounded when it is written down. */
  readonly roundedAs: RoundedAs;
  /** The idea in one sentence, where there is one for this kind of figure. */
  readonly idea?: string;
  /** The inputs, each once. */
  readonly givens: readonly LessonGiven[];
  /** The steps, the answer last. What leads only to figures that a least or a greatest does not take is left out. */
  readonly steps: readonly LessonStep[];
  /** A sum or a product that must come back to where it began, in names. */
  readonly proof?: { readonly formula: string; readonly parts: readonly Node[]; readonly sum: Node };
  /** The inputs that change the answer most, the strongest first. */
  readonly movers: readonly LessonMover[];
}
