/** What the oracle asks of each copy of the library. */
export * from '../../src/assessment/index.js';
export * from '../../src/print/index.js';
export { boundOf, doubleOf } from '../../src/units/figure.js';
export { lb } from '../../src/units/index.js';
