/**
 * Published rules as data: which line a combination crosses, which it misses and by how much, and which fact is missing.
 *
 * @module rules
 */

export type { AxleGroupOptions, LengthRounding, TieRule } from './axle-groups/axle-group-formula.js';
export { type AxleGroupKind, type AxleGroupLimit, type AxleRun, axleGroupLimit } from './axle-groups/axle-groups.js';
export * from './axle-groups/axle-layout.js';
export * from './definitions/commercial.js';
export {
  type CombinationRating,
  type CombinationWeights,
  gcwrByDefinition,
  type VehicleWeights,
} from './definitions/gcwr.js';
export type {
  BeyondLastStep,
  ContradictoryFacts,
  MissingFacts,
  OutOfRange,
  RulesError,
  UnknownName,
  WrongRuleUnit,
} from './errors.js';
export {
  type AbsentFact,
  absentFacts,
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
export * from './federal/added-weight.js';
export * from './federal/agency-letters.js';
export * from './federal/brake-exception.js';
export * from './federal/coupled-axle-load.js';
export { type FederalId, federalRule, federalRules } from './federal/federal.js';
export * from './federal/gvwr-bound.js';
export * from './federal/surge-brakes.js';
export type { LocalRules } from './local/local-rules.js';
export * from './local/steps.js';
export {
  type Condition,
  generalCaution,
  type LeastLine,
  type Line,
  type Operator,
  operators,
  type PrintedLine,
  type Rule,
  type RuleKind,
  type RuleQuestion,
  ruleKinds,
  type ShareLine,
} from './rule.js';
export { type Answer, distanceText } from './screen/compare.js';
export * from './screen/finding.js';
export { findingText } from './screen/finding-text.js';
export { type RulesOfQuestion, rulesByQuestion } from './screen/questions.js';
export { type Askable, askable, type Screening, screen } from './screen/screen.js';
export * from './tables.js';
export { wordsForRules } from './words.js';
