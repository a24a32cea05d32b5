/**
 * Questions over whole assessments: how do builds compare, what changes one class up, which of ours carries it, how sure is
 * an answer?
 *
 * @module choose
 */

export { axlePlace } from './axle-place/axle-place.js';
export type { AxleDesign, AxleInterval, AxleLimit, DesignMachine } from './axle-place/design.js';
export { axleIntervalText } from './axle-place/text.js';
export { type BoundedCheck, type Bounds, boundsFrom } from './bounds/bounds-from.js';
export type { UnknownFact } from './bounds/fill.js';
export { type ClassUp, type LineCrossed, oneClassUp } from './class-up.js';
export { type ComparedFigure, type Comparison, changeOf, compare, type Print } from './compare.js';
export * from './errors.js';
export { frameChecks } from './frame/frame-checks.js';
export { type FrameChecks, type FrameQuestion, frameCaution } from './frame/question.js';
export type { Interval } from './ranges/interval.js';
export type { Changes } from './remedies/asking.js';
export { type LeverWord, leverWords, type Who } from './remedies/lever.js';
export { mostAssessments, remedies } from './remedies/remedies.js';
export type { Remedies, Remedy, RemedyStep } from './remedies/remedy.js';
export { auditSheet, type SheetAudit, type SheetConflict } from './sheet/audit.js';
export type { PrintedFigure, ReadFigure, Sheet } from './sheet/sheet.js';
export { type Duty, dutyOf, type Trip, type TripFound } from './stock/duty.js';
export { fitStock } from './stock/fit-stock.js';
export { type LineAsLimit, linesAsLimits, type MostOf } from './stock/lines-as-limits.js';
export type { StockFit, StockQuestion, StockTrailer, Want } from './stock/question.js';
export type { Sure, SureCheck, Sureness } from './sureness/answer.js';
export type { Question } from './sureness/asked.js';
export { sureness } from './sureness/sureness.js';
export { type Tolerance, type Tolerances, type Unsure, usualTolerances } from './sureness/tolerances.js';
export type { WeighNext } from './sureness/weigh-next.js';
export { wordsForChoose } from './words.js';
