/**
 * Towing: what the tow vehicle's axles feel, which rating in the chain is the tightest, what scale tickets tell.
 *
 * @module towing
 */
export * from './combination.js';
export * from './coupler-checks.js';
export * from './coupler-class.js';
export * from './errors.js';
export type { Findings, NotChecked } from './findings.js';
export type { HitchPlace, Overhang } from './hitch-lever.js';
export * from './hitch-test-forces.js';
export { type HitchedAxleLoads, type HitchedQuestion, hitchedAxleLoads } from './hitched-axle-loads.js';
export * from './jack.js';
export * from './largest-trailer.js';
export { type LeverScaleQuestion, type LeverScaleReading, leverScale, type TonguePoint } from './lever-scale.js';
export * from './safety-chains.js';
export * from './scale-tickets.js';
export { towingTables } from './tables.js';
export { type Closure, scaleDivision } from './ticket-closure.js';
export type { TicketFigures } from './ticket-figures.js';
export type { CoupledPass, Tickets } from './tickets.js';
export * from './tongue-by-difference.js';
export { type TongueChecks, type TongueQuestion, tongueChecks } from './tongue-checks.js';
export type { TowBound } from './tow-bounds.js';
export * from './tow-checks.js';
export * from './tow-vehicle.js';
export * from './weight-distribution.js';
export { wordsForTowing } from './words.js';
