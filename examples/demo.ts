/** Rates the example trailer and prints the report and the working of its payload. */
import { readFileSync } from 'node:fs';
import { assess, readJson, report } from '../src/assessment/index.js';
import { orThrow } from '../src/errors.js';
import { explain } from '../src/trace/index.js';

const spec = orThrow(readJson(readFileSync(new URL('./tilt-deck.json', import.meta.url), 'utf8')));
const assessment = orThrow(assess(spec));
console.log(report(assessment));
if (assessment.weighed.balance !== undefined) console.log(`WORKING OF THE TONGUE LOAD\n${explain(assessment.weighed.balance.tongue)}\n`);
if (assessment.carry !== undefined) console.log(`WORKING OF THE PAYLOAD\n${explain(assessment.carry.payload.most)}`);
