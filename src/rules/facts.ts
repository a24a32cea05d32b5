/** The facts a rule can ask for. The list is closed: a rule that asks for anything else does not compile, or is refused. */
import type { AnyLength, AnyWeight } from '../trace/index.js';
import type { Dimension } from '../units/index.js';

/** Weights and ratings that somebody has to tell us. Gross is the whole laden trailer, tongue load included. */
export const weightFacts = [
  'trailer GVWR',
  'trailer gross',
  'trailer unloaded',
  'tow vehicle GVWR',
  'tow vehicle gross',
  'label GCWR',
  'weight on tow vehicle',
  'towing axle weights',
  'trailer axle weights',
  'added weight',
  'safety device strength',
  'cargo article weight',
  'lightest article not tied as heavy equipment',
  'heaviest single axle',
  'heaviest tandem',
] as const;

/** Weights that may not exist in a rig: no tandem axle, no cargo, only heavy equipment on the deck. */
export const absentFacts = [
  'cargo article weight',
  'lightest article not tied as heavy equipment',
  'heaviest tandem',
] as const;

/** Weights that follow from those by the definition of a rule. */
export const computedWeights = [
  'tow vehicle GVWR or gross',
  'towed GVWR or gross',
  'GCWR',
  'combined gross',
  'greatest of GVWR, gross, GCWR',
] as const;

/** Lengths. The width counts rigid fenders, not flexible extensions or mud flaps. */
export const lengthFacts = ['overall width', 'overall length', 'path deviation'] as const;

/** Questions answered by yes or no. */
export const yesNoFacts = [
  'commercial',
  'interstate',
  'full trailer',
  'surge brakes',
  'actual weights within ratings',
] as const;

export type WeightFact = (typeof weightFacts)[number];
export type AbsentFact = (typeof absentFacts)[number];
export type ComputedWeight = (typeof computedWeights)[number];
export type LengthFact = (typeof lengthFacts)[number];
export type YesNoFact = (typeof yesNoFacts)[number];

/** What a rule may test. */
export type WeightName = WeightFact | ComputedWeight;
export type FactName = WeightName | LengthFact;

/**
 * What is known about one job: a trailer coupled to a tow vehicle.
 *
 * A fact left out is not assumed; a rule that needs it cannot be decided. Figures may be in any unit of weight or length
 * and may bring their working. `'none'` says that there is no such thing, and a rule that asks for it does not apply. `label GCWR` is the figure on the certification label of the tow vehicle, or
 * `'not shown'` when somebody has looked and the label has none. `tow vehicle gross` is the loaded vehicle before the
 * trailer rests on it, so that the tongue load counts once. `actual weights within ratings` says that nobody is loaded
 * above a GVWR; it replaces the two gross weights where a rule takes the greater of rating and weight.
 */
export type Facts = { readonly [F in Exclude<WeightFact, 'label GCWR' | AbsentFact>]?: AnyWeight | undefined } & {
  readonly 'label GCWR'?: AnyWeight | 'not shown' | undefined;
} & { readonly [F in AbsentFact]?: AnyWeight | 'none' | undefined } & {
  readonly [F in LengthFact]?: AnyLength | undefined;
} & { readonly [F in YesNoFact]?: boolean | undefined };

const lengths: ReadonlySet<string> = new Set(lengthFacts);
const given: ReadonlySet<string> = new Set([...weightFacts, ...lengthFacts]);
const questions: ReadonlySet<string> = new Set(yesNoFacts);

/** Whether a word names a figure that somebody has to tell us. */
export const isGivenFact = (text: string): text is WeightFact | LengthFact => given.has(text);
export const isYesNoFact = (text: string): text is YesNoFact => questions.has(text);

/** What a fact measures. */
export const dimensionOfFact = (name: FactName): Dimension & ('mass' | 'length') =>
  lengths.has(name) ? 'length' : 'mass';
