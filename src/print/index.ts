/**
 * The answer on paper: the first page, the report, the leaflet for the buyer.
 *
 * @module print
 */
export { classUpText } from './class-up.js';
export { comparisonText } from './comparison.js';
export * from './notation/index.js';
export { cautions, report } from './report.js';
export { surenessText } from './sureness-text.js';
