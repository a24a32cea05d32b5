/**
 * The answer on paper: the first page, the report, the leaflet for the buyer.
 *
 * @module print
 */
export { cautions, report } from './report.js';
