/**
 * The whole stack: one spec in, every check, the payload and what limits it out.
 *
 * @module assessment
 */
export * from './assess.js';
export type { AttitudePart } from './attitude.js';
export type { BrakesPart } from './brakes.js';
export type { Carry } from './carry.js';
export type { ClimbPart } from './climb.js';
export * from './errors.js';
export type { Longer } from './frame.js';
export type { GearPart } from './gear.js';
export type { LinesPart } from './lines.js';
export type { NeededPressure } from './loads.js';
export type { NotChecked } from './not-checked.js';
export type { Part } from './part.js';
export type { PlacePart } from './place.js';
export type { Pressing } from './pressing.js';
export type { ScalePart } from './scale.js';
export type { Stack } from './stack.js';
export type { AxleLoad } from './standing.js';
export type { RatedTires } from './tires.js';
export type { OffLevelHitch, TowPart } from './tow.js';
export type { Weighed } from './weigh.js';
export { wordsForAssessment } from './words.js';
