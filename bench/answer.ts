/**
 * What an answer costs to send, and a spec to refuse: `answerOf` as a share of the assessment it is made from, the fault list of a
 * bad spec as a share of a good spec read. Each pair is timed by turns in one process, CPU time.
 */
import { readFileSync } from 'node:fs';
import { type Assessment, answerOf, assessJson } from '../dist/assessment.js';
import { orThrow } from '../dist/errors.js';
import { decodeSpec } from '../dist/spec.js';
import { cpuTime, judge, median } from './harness.js';

const good = readFileSync(new URL('../examples/tilt-deck.json', import.meta.url), 'utf8');

/** What people get wrong in a form, one by one and together. */
const slips: readonly (readonly [string, string, string])[] = [
  ['a figure without its unit', '"14,000 lb"', '"14,000"'],
  ['a misspelt key', '"cargo"', '"cargoo"'],
  ['a unit of another kind', '"122 in"', '"122 lb"'],
  ['a word that is not on the list', '"ball"', '"bal"'],
];
const bad = [
  ...slips.map(([what, from, to]) => ({ what, text: good.replace(from, to) })),
  { what: 'every figure without its unit', text: good.replace(/ (lb|in|ft|psi)"/g, '"') },
  { what: 'a label above what its parts bear', text: good.replace(/"gawr": "[^"]*"/g, '"gawr": "99,000 lb"') },
].filter(({ text }) => text !== good);

const rounds = 40;
const batch = 10;

/** CPU time of a batch in microseconds a run. */
function timed(run: () => unknown): number {
  const begun = cpuTime();
  for (let i = 0; i < batch; i += 1) run();
  return (cpuTime() - begun) / batch;
}

/** The second as a share of the first, round by round: the median. */
function ratioOf(first: () => unknown, second: () => unknown): number {
  for (let i = 0; i < 60; i += 1) {
    first();
    second();
  }
  return median(
    Array.from({ length: rounds }, () => {
      const base = timed(first);
      return timed(second) / base;
    }),
  );
}

function benchSending(): void {
  for (const working of [true, false]) {
    const made: Assessment[] = [];
    // A fresh assessment each: its figures have not been read, so their decimals are part of the answer's time.
    const share = ratioOf(
      () => made.push(orThrow(assessJson(JSON.parse(good)))),
      () => answerOf(made.pop() as Assessment, { working }),
    );
    const what = `answerOf ${working ? 'with' : 'without'} its working`;
    console.log(`${what}: ${share.toFixed(2)} of the assessment`);
    judge(`${what}, of the assessment`, share, 0.5);
  }
}

function benchRefusing(): void {
  for (const { what, text } of bad) {
    const refused = assessJson(JSON.parse(text));
    if (refused._tag === 'Right') throw new Error(`${what} is read`);
    const ratio = ratioOf(
      () => decodeSpec(JSON.parse(good)),
      () => assessJson(JSON.parse(text)),
    );
    const faults = 'problems' in refused.left ? refused.left.problems.length : 1;
    console.log(`${what} (${faults} faults): ${ratio.toFixed(2)} of a good spec read`);
    judge(`the faults of a bad spec: ${what}, of a good spec read`, ratio, 1);
  }
}

export function benchAnswer(): void {
  console.log('\nAn answer sent, a spec refused');
  benchSending();
  benchRefusing();
}
