/** What an exercise is made of: a question, its answer with its working, and the wrong answers that have a name. */
import type { Derived, Node } from '../../trace/index.js';
import { type Quantity, show, type Unit } from '../../units/index.js';
import type { RoundedAs } from '../lesson/lesson-data.js';
import type { Draw } from './chance.js';

/** The units an exercise may ask for. */
export type AnswerUnit = 'lb' | 'in' | 'ratio';

/** A wrong answer that many give, with the thought behind it. */
export interface Mistake {
  /** Its name. Stable. */
  readonly tag: MistakeTag;
  /** What the thought was and why it does not hold, in one sentence. */
  readonly says: string;
  /** The answer that it leads to. */
  readonly figure: Derived<AnswerUnit>;
}

/** The names of the mistakes that are known. */
export type MistakeTag =
  | 'TongueAddedToPayload'
  | 'TongueTakenOffTwice'
  | 'EmptyTrailerForgotten'
  | 'AxleRatingsForGvwr'
  | 'EmptyTrailerAdded'
  | 'ShareOfTheAxleLoad'
  | 'ShareOfTheAxles'
  | 'TongueLeftOnTheAxles'
  | 'OneAxleCarriesAll'
  | 'TongueAddedToTheAxles'
  | 'FrontForBalancePoint'
  | 'LeverUpsideDown'
  | 'OwnTongueForgotten'
  | 'WrongSideOfTheAxles'
  | 'CoupledAxlesAsGross'
  | 'CombinationAsGross'
  | 'RearAxleAlone'
  | 'ReliefAdded'
  | 'PoundsForKilograms'
  | 'FactorTurnedRound'
  | 'TwoPoundsAKilogram'
  | 'OneTireForTheAxle'
  | 'SingleForDual'
  | 'GreatestForLeast'
  | 'EachForThePair'
  | 'MeanForLeast'
  | 'TongueForJack'
  | 'JackLeverUpsideDown'
  | 'CapacityRoundedUp'
  | 'LoadRoundedDown';

/** What a topic draws. */
export interface Draft {
  /** The question in plain sentences, figures included. */
  readonly text: string;
  /** The answer with its working. */
  readonly answer: Derived<AnswerUnit>;
  /** How the answer is rounded when it is written down. */
  readonly roundedAs: RoundedAs;
  /** The wrong answers that are known for it. */
  readonly mistakes: readonly Mistake[];
  /** Whether the answer is meant to need rounding. */
  readonly rounds?: boolean;
}

/** A kind of exercise. */
export interface Topic {
  /** What it trains, in a few words. */
  readonly title: string;
  /** A question of this kind. */
  readonly draw: (draw: Draw) => Draft;
}

/** A figure as a question writes it. */
export const written = ({ value }: { readonly value: Quantity<Unit> } | Node): string => show(value);
