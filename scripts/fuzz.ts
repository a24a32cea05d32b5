/**
 * Hostile strings to every parser, hostile specs to `assess`: `npm run fuzz`, or `npm run fuzz -- STRINGS SPECS SEED`.
 * Prints the seed, stops at twenty faults, and repeats exactly with the same seed.
 */

import { parsers } from '../tests/fuzz/parsers.js';
import { faultOfParser, outcomeOf } from '../tests/helpers/faults.js';
import { hostileSpec } from '../tests/helpers/hostile-specs.js';
import { hostileString } from '../tests/helpers/hostile-strings.js';
import { chanceOf } from '../tests/helpers/random/chance.js';
import { record } from './proof/record.js';

const [strings = 1_000_000, specs = 100_000, seed = Date.now() % 1_000_000_000] = process.argv.slice(2).map(Number);
console.log(`seed ${seed}: ${strings} strings a parser, ${specs} specs`);
const faults: string[] = [];
const tell = (fault: string): void => {
  faults.push(fault);
  console.log(fault);
  if (faults.length >= 20) throw new Error('twenty faults: stopped');
};

for (const [name, parse] of Object.entries(parsers)) {
  const chance = chanceOf(seed);
  const began = performance.now();
  for (let left = strings; left > 0; left -= 1) {
    const text = hostileString(chance);
    const fault = faultOfParser(parse, text);
    if (fault !== undefined) tell(`${name} ${JSON.stringify(text)}: ${fault}`);
  }
  console.log(`${name}: ${((performance.now() - began) / 1000).toFixed(0)} s`);
}

let answered = 0;
for (let i = 0; i < specs; i += 1) {
  const { fault, answered: yes } = outcomeOf(hostileSpec(seed + i), { withReport: i % 50 === 0 });
  if (fault !== undefined) tell(`spec of seed ${seed + i}: ${fault}`);
  if (yes) answered += 1;
  if (i % 10_000 === 9_999) console.log(`${i + 1} specs, ${answered} answered`);
}
record('fuzz', `npm run fuzz -- ${strings} ${specs} ${seed}`, {
  parsers: Object.keys(parsers).length,
  'hostile strings a parser': strings,
  'hostile specs': specs,
  'hostile specs answered': answered,
  faults: faults.length,
});
process.exitCode = faults.length === 0 ? 0 : 1;
