/** Rates the example trailer, prints the first page, the report and the working of tongue and payload, and the same job one class up. */
import { readFileSync } from 'node:fs';
import { assess } from '../src/assessment/index.js';
import { oneClassUp, remedies, sureness } from '../src/choose/index.js';
import { orThrow } from '../src/errors.js';
import { brief, classUpText, remedyItems, report, surenessItem } from '../src/print/index.js';
import { readJson, type SpecInput } from '../src/spec/index.js';
import { explain } from '../src/trace/index.js';

// A reader who has seen enough (`| head`) closes the pipe: that is no error.
process.stdout.on('error', () => process.exit());

const read = (name: string): SpecInput =>
  orThrow(readJson(readFileSync(new URL(name, import.meta.url), 'utf8'))) as SpecInput;
const spec = read('./tilt-deck.json');
const assessment = orThrow(assess(spec));

console.log(
  brief(assessment, {
    remedies: remedyItems(orThrow(remedies(spec))),
    sureness: surenessItem(orThrow(sureness(assessment))),
  }),
);
console.log(`\n${report(assessment)}`);
if (assessment.weights.balance !== undefined)
  console.log(`WORKING OF THE TONGUE LOAD\n${explain(assessment.weights.balance.tongue)}\n`);
if (assessment.payload?.best !== undefined)
  console.log(`WORKING OF THE PAYLOAD\n${explain(assessment.payload.best.weight)}\n`);
console.log(classUpText(orThrow(oneClassUp(spec, read('./tilt-deck-16.json')))));
