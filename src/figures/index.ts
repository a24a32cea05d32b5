/**
 * Figures as SVG text from pure functions: no document, no dependency, one look.
 *
 * @module figures
 */

export { type BeamToDraw, beamDiagrams } from './beam/beam-diagrams.js';
export { figureStyles } from './drawing/look.js';
export type { FigureOptions, FigureUnits } from './drawing/options.js';
export { lengthsFrom, sharesFrom } from './from-assessment.js';
export { type LengthsToDraw, payloadByLength } from './payload-by-length.js';
export { payloadByShare } from './payload-by-share/payload-by-share.js';
export type { SharesToDraw } from './payload-by-share/shares.js';
export { placementBar } from './placement/placement-bar.js';
export { type RatingBarOptions, ratingBars, type SureBetween } from './rating-bars.js';
export { type DrawnSection, sectionOutline } from './sections/section-outline.js';
export { sideView } from './side-view/side-view.js';
export { type TornadoData, tornado } from './tornado.js';
