/**
 * Weights on the trailer and their positions: curb weight, balance, tongue load, payload; placing a machine; ramps; tiedowns.
 *
 * @module load
 */
export * from './balance/balance.js';
export { type BulkMaterial, type BulkWeight, bulkMaterials, bulkWeight } from './balance/bulk-weight.js';
export * from './balance/compare-layouts.js';
export * from './balance/curb.js';
export * from './balance/guideline.js';
export type { CoupledItem, Item, PlacedItem } from './balance/item.js';
export type { LadenLimit } from './balance/laden-limit.js';
export { leastTongueShare } from './balance/least-tongue-share.js';
export * from './balance/level-drop.js';
export * from './balance/machine-balance.js';
export * from './balance/payload.js';
export type * from './balance/payload-answer.js';
export * from './balance/payload-claim.js';
export * from './balance/place-for-tongue.js';
export * from './balance/rollover-index.js';
export * from './balance/side-to-side.js';
export * from './balance/yaw.js';
export type { BulkRow } from './data/bulk-density.js';
export type { ChainGrade, ChainRow } from './data/chain-wll.js';
export type { Direction, SecurementBasis } from './data/securement-forces.js';
export * from './errors.js';
export * from './placement/heaviest-machine.js';
export type { LimitPair } from './placement/limit-pairs.js';
export type {
  MachineShape,
  PlacedLimit,
  PlacementLimit,
  TongueRatingKind,
  TrailerForPlacing,
} from './placement/limits.js';
export type { EndLimit, Span, SpanEnd } from './placement/span.js';
export * from './placement/window.js';
export { conflictText } from './placement/window-notes.js';
export { type RampAngle, rampAngle } from './ramps/angle.js';
export * from './ramps/capacity.js';
export * from './ramps/crest-clearance.js';
export { departureAngle } from './ramps/departure-angle.js';
export { edgeRise } from './ramps/edge-rise.js';
export * from './ramps/edges.js';
export * from './ramps/length.js';
export * from './ramps/slope.js';
export * from './ramps/spacing.js';
export { tailHeight } from './ramps/tail-height.js';
export * from './ramps/tail-lift.js';
export type { HoldingTruck } from './ramps/truck-hold.js';
export { winchPull } from './ramps/winch-pull.js';
export { loadTables } from './tables.js';
export * from './tiedowns/count.js';
export { type Attachment, type Tiedown, type TiedownAnswer, tiedowns } from './tiedowns/enough.js';
export * from './tiedowns/how-many.js';
export type { CountVerdict, TiedVerdict } from './tiedowns/judge-counts.js';
export {
  chainLimit,
  type PrintedWll,
  unmarkedWireRope,
  webbingLimit,
  wireRopeLimit,
} from './tiedowns/printed-limits.js';
export type { CountReading, SecurementSection, TiedArticle } from './tiedowns/sections.js';
export * from './tiedowns/securement.js';
export * from './tiedowns/securement-need.js';
export * from './tiedowns/weakest-part.js';
export * from './tiedowns/which-size.js';
export { wordsForLoad } from './words.js';
