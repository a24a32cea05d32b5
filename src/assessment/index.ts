/**
 * The whole stack: one spec in, every check, the payload and what limits it out.
 *
 * @module assessment
 */

export type { DoesNotFollow } from './answer/does-not-follow.js';
export type {
  AnswerNode,
  AnswerWorking,
  ComputedNode,
  ConstantNode,
  FigureText,
  GivenNode,
  LookedUpNode,
} from './answer/node-shape.js';
export * from './answer/shape.js';
export { libraryVersion } from './answer/version.js';
export { type AnswerOptions, answerOf } from './answer.js';
export * from './assess.js';
export type { Assessment } from './assessment.js';
export * from './errors.js';
export type { AxleLoad } from './parts/axle-and-tire-loads.js';
export { axlesMovedByLevers } from './parts/axles-moved.js';
export type { BrakesPart } from './parts/brakes.js';
export type { Longer } from './parts/built-up-weight.js';
export type { NeededPressure } from './parts/gross-and-pressures.js';
export type { JackPart } from './parts/jack.js';
export type { LoadingPart } from './parts/loading-part.js';
export type { OpenQuestion } from './parts/open-questions.js';
export type { Part } from './parts/part-of-answer.js';
export type { BestPlacedPayload, Carry } from './parts/payload.js';
export type { PiecePlacement, PlacePart } from './parts/placement-part.js';
export { type LinesPart, ruleFindings } from './parts/published-rules.js';
export type { Stack } from './parts/running-gear.js';
export type { ScalePart } from './parts/scale.js';
export type { StancePart } from './parts/stance-part.js';
export type { TiedownsPart } from './parts/tiedowns.js';
export type { RatedTires } from './parts/tires.js';
export type { TonguePart } from './parts/tongue.js';
export type { OffLevelHitch, TowPart } from './parts/tow-part.js';
export type { Pressing, Uplift } from './parts/uplift.js';
export type { AssessmentVerdict } from './parts/verdict.js';
export type { Weighed } from './parts/weights.js';
export { type Refuted, type Verified, verifyAnswer } from './verify-answer.js';
export { wordsForAssessment } from './words.js';
