/** The working in other notations. */
export type { SheetContent } from './cells.js';
export { latexText, toLatex } from './latex.js';
export { markdownText, toMarkdown } from './markdown.js';
export { toMathML, xmlText } from './mathml.js';
export { type SheetForm, toSheet } from './sheet.js';
