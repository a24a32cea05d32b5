/** The shape of the first page as data. */
import type { AssessmentVerdict, Pressing } from '../assessment/index.js';
import type { Check, Note } from '../ratings/index.js';
import type { Finding } from '../rules/index.js';
import type { Derived } from '../trace/index.js';

/** A payload and what sets it. */
export interface BriefPayload {
  /** Not above this. */
  readonly weight: Derived<'lb'>;
  /** The tongue shares at which it holds. */
  readonly shares: { readonly from: Derived<'ratio'>; readonly to: Derived<'ratio'> };
  /** Places of the balance point of such a load, from the highest of these shares to the lowest. */
  readonly places?: { readonly from: Derived<'in'>; readonly to: Derived<'in'> };
  /** The limits that set it. */
  readonly setBy: readonly string[];
}

/** Where a piece of cargo may be placed, by its front, which can be measured with a tape. */
export interface BriefPlace {
  /** The piece. */
  readonly name: string;
  /** Whether no place meets every limit. */
  readonly none: boolean;
  /** The front of the piece at the front end of its window. */
  readonly from: Derived<'in'>;
  /** The front of the piece at the rear end of its window. */
  readonly to: Derived<'in'>;
  /** The middle of the window: the same distance from both ends. */
  readonly best: Derived<'in'>;
  /** The limits that set the front end, then those that set the rear end. */
  readonly setBy: readonly [front: readonly string[], rear: readonly string[]];
  /** Where its front is now, and the limits that this place breaks. */
  readonly now?: { readonly front: Derived<'in'>; readonly breaks: readonly string[] };
}

/** Something that would put the answer right, in words for people. */
export interface BriefRemedy {
  /** What to do, with its figures. */
  readonly says: string;
}

/** Results of other questions, for the first page. */
export interface BriefExtras {
  /** What would put right what is wrong. */
  readonly remedies?: readonly BriefRemedy[];
  /** How sure the verdict is. */
  readonly sureness?: { readonly says: string };
}

/** A missing fact, and the questions that it would answer. */
export interface BriefOpen {
  /** The ids of the questions. */
  readonly ids: readonly string[];
  /** The fact, in shop words. */
  readonly missing: string;
  /** The keys of the spec that would tell it. */
  readonly paths: readonly string[];
  /** What was not checked; of many questions the first two. */
  readonly what: string;
}

/** The first page as data. */
export interface Brief {
  /** The name of the spec or of the trailer. */
  readonly title: string;
  /** The verdict of the whole answer. */
  readonly verdict: AssessmentVerdict;
  /** How many checks were made, of loads and of parts. */
  readonly asked: number;
  /** What is over, the worst first; of several ways of standing the worst one. */
  readonly over: readonly Check[];
  /** What lifts off its support. */
  readonly lifts: readonly Pressing[];
  /** What is not right and exceeds no rating. */
  readonly attention: readonly Note[];
  /** The most that it carries at a share of the tongue band; absent where the answer holds for the whole band alone. */
  readonly best?: BriefPayload;
  /** What it carries at every share of the tongue band. */
  readonly anywhere?: BriefPayload;
  /** Where each piece may be placed. */
  readonly places: readonly BriefPlace[];
  /** What would put it right. */
  readonly remedies: readonly BriefRemedy[];
  /** How sure the verdict is. */
  readonly sureness?: { readonly says: string };
  /** The published rules that have an effect: limits crossed, then duties that apply. */
  readonly rules: readonly Finding[];
  /** Every open question, those first that would decide most. */
  readonly open: readonly BriefOpen[];
}
