/**
 * Towing: loads on the tow vehicle's axles, the tightest rating of the chain, readings of scale tickets.
 *
 * @module towing
 */

export type { BarSetting } from './bars/bar-setting.js';
export type * from './bars/bars-answer.js';
export type { Findings, NotChecked } from './checks/checks-or-missing.js';
export * from './checks/coupler-checks.js';
export { type TongueChecks, type TongueQuestion, tongueChecks } from './checks/tongue-checks.js';
export * from './checks/tow-checks.js';
export * from './errors.js';
export * from './hitch/coupler-class.js';
export type * from './hitch/coupling-plate.js';
export type { AnyForce } from './hitch/coupling-values.js';
export * from './hitch/european-coupling.js';
export type { HitchPlace, Overhang } from './hitch/hitch-lever.js';
export * from './hitch/hitch-test-forces.js';
export * from './hitch/safety-chains.js';
export * from './jack.js';
export { type LeverScaleQuestion, type LeverScaleReading, leverScale, type TonguePoint } from './scale/lever-scale.js';
export * from './scale/scale-tickets.js';
export { type Closure, scaleDivision } from './scale/ticket-closure.js';
export type { TicketFigures, WantedFigure } from './scale/ticket-figures.js';
export type { CoupledPass, Tickets } from './scale/tickets.js';
export * from './scale/tongue-by-difference.js';
export { tongueFromTickets } from './scale/tongue-from-tickets.js';
export { towingTables } from './tables.js';
export * from './vehicle/combination.js';
export { type HitchedAxleLoads, type HitchedQuestion, hitchedAxleLoads } from './vehicle/hitched-axle-loads.js';
export * from './vehicle/largest-trailer.js';
export type { TowBound } from './vehicle/tow-bound.js';
export * from './vehicle/tow-vehicle.js';
export { trailerToVehicleRatio } from './vehicle/weight-ratio.js';
export * from './weight-distribution.js';
export { wordsForTowing } from './words.js';
