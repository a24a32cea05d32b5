/**
 * The answer on paper: the first page, the report, the leaflet for the buyer.
 *
 * @module print
 */
export { type BriefOptions, brief } from './brief.js';
export type { Brief, BriefExtras, BriefOpen, BriefPayload, BriefPlace, BriefRemedy } from './brief-data.js';
export { briefExtras } from './brief-extras.js';
export { briefOf } from './brief-of.js';
export { cautions } from './cautions.js';
export { classUpText } from './class-up.js';
export { comparisonText } from './comparison.js';
export * from './exercises/index.js';
export { type LeafletPrint, leaflet } from './leaflet.js';
export type { Leaflet, LeafletBar, LoadingStep } from './leaflet-data.js';
export { type LeafletOptions, leafletOf } from './leaflet-of.js';
export { type LessonPrint, lesson } from './lesson/lesson.js';
export type { Lesson, LessonChoice, LessonGiven, LessonMover, LessonStep, RoundedAs } from './lesson/lesson-data.js';
export { type LessonOptions, lessonOf } from './lesson/lesson-of.js';
export * from './notation/index.js';
export { remediesText, remedyItems } from './remedies-text.js';
export { type ReportOptions, report } from './report.js';
export type { RulesInFull } from './sections/rules.js';
export { sheetText } from './sheet-text.js';
export { surenessItem, surenessText } from './sureness-text.js';
