/**
 * Published rules as data: which line a combination crosses, which it misses and by how much, and which fact is missing.
 *
 * @module rules
 */
export * from './added-weight.js';
export type { AxleGroupOptions, LengthRounding, TieRule } from './axle-group-formula.js';
export { type AxleGroupKind, type AxleGroupLimit, type AxleRun, axleGroupLimit } from './axle-groups.js';
export * from './axle-layout.js';
export * from './brake-exception.js';
export * from './commercial.js';
export { type Answer, distanceText } from './compare.js';
export * from './coupled-axle-load.js';
export type {
  BeyondLastStep,
  ContradictoryFacts,
  MissingFacts,
  OutOfRange,
  RulesError,
  UnknownName,
  UnreadableRules,
  WrongRuleUnit,
} from './errors.js';
export {
  type ComputedWeight,
  computedWeights,
  type FactName,
  type Facts,
  type LengthFact,
  lengthFacts,
  type WeightFact,
  type WeightName,
  weightFacts,
  type YesNoFact,
  yesNoFacts,
} from './facts.js';
export { type FederalId, federalRule, federalRules } from './federal.js';
export { type CombinationRating, type CombinationWeights, gcwrByDefinition, type VehicleWeights } from './gcwr.js';
export * from './gvwr-bound.js';
export * from './letters.js';
export { type LocalRules, readLocalRules } from './local.js';
export {
  type Condition,
  generalCaution,
  type LeastLine,
  type Line,
  type Operator,
  operators,
  type PrintedLine,
  type Rule,
  type ShareLine,
} from './rule.js';
export { type Finding, findingText, type Outcome, type Screening, screen } from './screen.js';
export * from './steps.js';
export * from './surge-brakes.js';
export * from './tables.js';
export { wordsForRules } from './words.js';
