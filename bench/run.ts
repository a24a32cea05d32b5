/**
 * All benchmarks: `npm run bench` in the project builds the package, installs this workspace and runs them; a few minutes.
 * With names, `npm --prefix bench start -- assess study`, only those.
 */
import { benchAnswer } from './answer.js';
import { benchAssess } from './assess.js';
import { benchChoose } from './choose.js';
import { printAims, printMachine } from './harness.js';
import { benchImport } from './import-cost.js';
import { benchMembers } from './members.js';
import { benchPage } from './page.js';
import { benchStudy } from './study.js';
import { benchTires } from './tires.js';
import { benchUnits } from './units.js';

const all = {
  units: benchUnits,
  assess: benchAssess,
  answer: benchAnswer,
  tires: benchTires,
  members: benchMembers,
  study: benchStudy,
  choose: benchChoose,
  page: benchPage,
  import: benchImport,
};
const asked = process.argv.slice(2);
printMachine();
for (const [name, bench] of Object.entries(all)) if (asked.length === 0 || asked.includes(name)) bench();
printAims();
