/** All benchmarks: `npm run bench` in the project installs this workspace, builds the package and runs them. */
import { benchImport } from './import-cost.js';
import { printMachine } from './harness.js';
import { benchStudy } from './study.js';
import { benchUnits } from './units.js';

printMachine();
benchUnits();
benchStudy();
// assess with full working, against the same arithmetic written by hand without working: its place is here, as
// bench/assess.ts with one `compare(...)` of `assess`, bare decimal.js, mathjs and js-quantities (aim 1.0, at most 1.3).
benchImport();
