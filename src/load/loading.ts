/** Placing a machine, tandems, ramps and tiedowns: everything of the chapter beyond weights and balance. */
export * from './heaviest-machine.js';
export type { AnyLength, AnyWeight } from './loading-guards.js';
export type { MachineShape, PlacedLimit, PlacementLimit, TongueRatingKind, TrailerForPlacing } from './placement-limits.js';
export * from './loading-errors.js';
export { wordsForLoading } from './loading-words.js';
export * from './place-for-tongue.js';
export * from './placement.js';
export type { EndLimit, Span, SpanEnd } from './span.js';
export * from './side-to-side.js';
export * from './tandem.js';
export * from './yaw.js';
export * from './ramps-capacity.js';
export * from './ramps-crest.js';
export * from './ramps-spacing.js';
export { type AnyAngle, type Climb, gripNeeded, rampAngle, type RampAngle, rampLength, type RampLength } from './ramps.js';
export * from './tail-lift.js';
