/** All benchmarks: `npm run bench` in the project builds the package, installs this workspace and runs them; a few minutes. */
import { benchAssess } from './assess.js';
import { printMachine } from './harness.js';
import { benchImport } from './import-cost.js';
import { benchMembers } from './members.js';
import { benchStudy } from './study.js';
import { benchTires } from './tires.js';
import { benchUnits } from './units.js';

printMachine();
benchUnits();
benchAssess();
benchTires();
benchMembers();
benchStudy();
benchImport();
