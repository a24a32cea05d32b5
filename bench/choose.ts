/**
 * What the questions over whole answers cost, in assessments of the same trailer: each from the JSON of the example, with every reserve,
 * the payload and the verdict read. CPU time, by turns.
 */
import { readFileSync } from 'node:fs';
import { type Assessment, assessJson } from '../dist/assessment.js';
import { fitStock, remedies, sureness } from '../dist/choose.js';
import { orThrow } from '../dist/errors.js';
import type { SpecInput } from '../dist/spec.js';
import { derivatives } from '../dist/trace.js';
import { cpuTime, judge, median } from './harness.js';

type Json = Readonly<Record<string, unknown>>;
interface Example {
  readonly tow: Json;
  readonly cargo: readonly [Json];
  readonly trailer: Json & { readonly deck: Json };
}
const spec = JSON.parse(readFileSync(new URL('../examples/tilt-deck.json', import.meta.url), 'utf8')) as Example;
const answer = orThrow(assessJson(spec));

function read({ checks, payload, verdict }: Assessment): number {
  let sum = verdict.length + (payload?.anywhere?.weight.value.value.toNumber() ?? 0);
  for (const { reserve } of checks) sum += reserve.value.value.toNumber();
  return sum;
}
const once = (): number => read(orThrow(assessJson(spec)));

/** A machine too far forward on weak parts: the example with nothing right. */
const failing = {
  ...spec,
  cargo: [{ ...spec.cargo[0], front: '90 in', weight: '10,400 lb' }],
  tow: { ...spec.tow, ballMount: { gross: '12,000 lb', tongue: '1,200 lb' } },
} as unknown as SpecInput;

/** Three hundred trailers, no two alike. */
const stock = Object.fromEntries(
  Array.from({ length: 300 }, (_, i) => [
    `trailer ${i}`,
    {
      ...spec,
      trailer: {
        ...spec.trailer,
        gvwr: `${12_000 + 10 * (i % 200)} lb`,
        rearLegs: '10,000 lb',
        deck: { ...spec.trailer.deck, rear: `${262 + (i % 40)} in` },
      },
    },
  ]),
);

interface Asked {
  readonly what: string;
  readonly most: number;
  readonly times: number;
  readonly run: () => number;
}

const all: readonly Asked[] = [
  {
    what: 'derivatives of all checks',
    most: 0.3,
    times: 40,
    run: () => answer.checks.reduce((sum, { reserve }) => sum + derivatives(reserve).slopes.length, 0),
  },
  { what: 'sureness', most: 1, times: 40, run: () => orThrow(sureness(answer)).checks.length },
  { what: 'remedies of a rig with much wrong', most: 60, times: 2, run: () => orThrow(remedies(failing)).assessed },
  {
    what: '300 trailers for a job',
    most: 600,
    times: 1,
    run: () => {
      const { fits, others } = orThrow(fitStock({ stock, tow: spec.tow, cargo: spec.cargo } as never));
      return fits.length + others.length;
    },
  },
];

let sink = 0;
function timeOf(run: () => number, times: number): number {
  const begun = cpuTime();
  for (let i = 0; i < times; i += 1) sink += run();
  return (cpuTime() - begun) / times;
}

export function benchChoose(rounds = 9): void {
  for (let i = 0; i < 300; i += 1) sink += once();
  console.log('\nQuestions over whole answers, in assessments of the same trailer');
  for (const { what, most, times, run } of all) {
    for (let i = 0; i < Math.max(1, times / 2); i += 1) sink += run();
    const ratios = Array.from({ length: rounds }, () => timeOf(run, times) / timeOf(once, 40));
    const ratio = median(ratios);
    console.log(
      `  ${what.padEnd(34)}  ${ratio.toPrecision(3).padStart(6)} x (${Math.min(...ratios).toPrecision(3)} to ${Math.max(...ratios).toPrecision(3)})`,
    );
    judge(what, ratio, most, ' assessments');
  }
  if (sink < 0) throw new Error('nothing was read');
}
