/**
 * What stands on the trailer and where: curb weight, gross, balance, tongue, payload; placing a machine, ramps, tiedowns.
 *
 * @module load
 */
export * from './balance.js';
export * from './curb.js';
export type { ChainGrade, ChainRow } from './data/chain-wll.js';
export type { Direction, SecurementBasis } from './data/securement-forces.js';
export * from './errors.js';
export * from './guideline.js';
export * from './heaviest-machine.js';
export type { CoupledItem, Item, PlacedItem } from './item.js';
export * from './level-drop.js';
export * from './machine-balance.js';
export * from './payload.js';
export * from './place-for-tongue.js';
export * from './placement.js';
export type {
  MachineShape,
  PlacedLimit,
  PlacementLimit,
  TongueRatingKind,
  TrailerForPlacing,
} from './placement-limits.js';
export { frictionNeeded, type RampAngle, type RampLength, rampAngle, rampLength, type SlopeLoad } from './ramps.js';
export * from './ramps-capacity.js';
export * from './ramps-crest.js';
export * from './ramps-edges.js';
export * from './ramps-spacing.js';
export * from './securement.js';
export * from './side-to-side.js';
export type { EndLimit, Span, SpanEnd } from './span.js';
export { loadTables } from './tables.js';
export * from './tail-lift.js';
export { type Attachment, type CountVerdict, type Tiedown, type TiedownAnswer, tiedowns } from './tiedowns.js';
export * from './tiedowns-count.js';
export { chainLimit, type PrintedWll, unmarkedWireRope, webbingLimit, wireRopeLimit } from './tiedowns-limits.js';
export * from './tiedowns-needed.js';
export * from './tiedowns-parts.js';
export { wordsForLoad } from './words.js';
export * from './yaw.js';
