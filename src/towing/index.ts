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
export { hitchedAxleLoads, type HitchedAxleLoads, type HitchedQuestion } from './hitched-axle-loads.js';
export type { HitchPlace, Overhang } from './hitch-lever.js';
export * from './hitch-test-forces.js';
export * from './jack.js';
export * from './largest-trailer.js';
export { leverScale, type LeverScaleQuestion, type LeverScaleReading, type TonguePoint } from './lever-scale.js';
export * from './safety-chains.js';
export * from './scale-tickets.js';
export { type Closure, scaleDivision } from './ticket-closure.js';
export type { TicketFigures } from './ticket-figures.js';
export type { CoupledPass, Tickets } from './tickets.js';
export { towingTables } from './tables.js';
export * from './tongue-by-difference.js';
export { type TongueChecks, tongueChecks, type TongueQuestion } from './tongue-checks.js';
export * from './tow-checks.js';
export * from './tow-vehicle.js';
export type { TowBound } from './tow-bounds.js';
export * from './weight-distribution.js';
export { wordsForTowing } from './words.js';
