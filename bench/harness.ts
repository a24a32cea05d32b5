/**
 * One process, alternating runs, medians, ratios. Each contender does the same job; before anything is timed their answers
 * are compared, because a fast wrong answer is no result.
 */

import { readFileSync } from 'node:fs';
import { cpus } from 'node:os';

export interface Contender {
  readonly name: string;
  /** Does the job once and returns the figures it came to, in an order that all contenders share. */
  readonly run: () => readonly number[];
}

export const median = (times: readonly number[]): number => {
  const sorted = [...times].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
};

function mustAgree(contenders: readonly Contender[]): void {
  const [first, ...others] = contenders.map(({ name, run }) => ({ name, figures: run() }));
  for (const { name, figures } of others) {
    const far =
      figures.length !== first!.figures.length ||
      figures.some((figure, i) => !(Math.abs(figure - first!.figures[i]!) <= 1e-9 * Math.abs(figure)));
    if (far) throw new Error(`${name} comes to ${figures.join(', ')}, ${first!.name} to ${first!.figures.join(', ')}`);
  }
}

/** Keeps the optimiser from dropping work whose result nobody reads. */
export let sink = 0;

/** Time of one job in nanoseconds: the batch is long enough for the clock to count it. */
function timeOf(run: Contender['run'], batch: number): number {
  const begun = process.hrtime.bigint();
  for (let i = 0; i < batch; i += 1) sink += run()[0]!;
  return Number(process.hrtime.bigint() - begun) / batch;
}

/** Until the compiler has done with it: a fifth of a second at a time, until five in a row have not been faster by a fiftieth. A long working needs many thousands of runs for that. */
function warmUp(run: Contender['run']): void {
  let best = Infinity;
  for (let idle = 0, spell = 0; idle < 5 && spell < 60; spell += 1) {
    const begun = performance.now();
    let jobs = 0;
    for (; performance.now() - begun < 200; jobs += 1) sink += run()[0]!;
    const each = (performance.now() - begun) / jobs;
    idle = each < 0.98 * best ? 0 : idle + 1;
    best = Math.min(best, each);
  }
}

/** How many jobs fill about five milliseconds. */
function batchFor(run: Contender['run']): number {
  warmUp(run);
  let batch = 1;
  while (timeOf(run, batch) * batch < 5e6) batch *= 2;
  return batch;
}

/** Runs the contenders by turns and prints the median of each, and its ratio to the first. */
export function compare(title: string, contenders: readonly Contender[], rounds = 41): void {
  mustAgree(contenders);
  const lanes = contenders.map((contender) => ({
    ...contender,
    batch: batchFor(contender.run),
    times: [] as number[],
  }));
  for (let round = 0; round < rounds; round += 1)
    for (const lane of lanes) lane.times.push(timeOf(lane.run, lane.batch));
  table(
    title,
    lanes.map(({ name, times }) => ({ name, figure: median(times) / 1000 })),
    'us a job',
  );
}

/** Prints figures with their ratio to the first. */
export function table(
  title: string,
  rows: readonly { readonly name: string; readonly figure: number }[],
  unit: string,
): void {
  console.log(`\n${title}`);
  const wide = Math.max(...rows.map(({ name }) => name.length));
  for (const { name, figure } of rows) {
    console.log(
      `  ${name.padEnd(wide)}  ${figure.toPrecision(3).padStart(10)} ${unit}  ${(figure / rows[0]!.figure).toPrecision(3).padStart(8)} x`,
    );
  }
}

const versionOf = (file: string): string =>
  (JSON.parse(readFileSync(new URL(file, import.meta.url), 'utf8')) as { version: string }).version;

/** The machine and the versions, without which no figure means anything. */
export function printMachine(): void {
  const [processor] = cpus();
  console.log(
    `${processor?.model.trim()} x ${cpus().length}, ${process.platform} ${process.arch}, Node ${process.version}`,
  );
  console.log(
    `decimal.js ${versionOf('../node_modules/decimal.js/package.json')}, mathjs ${versionOf('./node_modules/mathjs/package.json')}, js-quantities ${versionOf('./node_modules/js-quantities/package.json')}`,
  );
}

/** The median time of one job in nanoseconds, over 21 rounds after a warm-up. */
export function medianTime(run: Contender['run']): number {
  const batch = batchFor(run);
  for (let round = 0; round < 5; round += 1) timeOf(run, batch);
  return median(Array.from({ length: 21 }, () => timeOf(run, batch)));
}
