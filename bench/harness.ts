/**
 * One process, CPU time, contenders by turns. Each contender does the same job; before anything is timed their answers are
 * compared, because a fast wrong answer is no result. The ratio to the first contender is taken in every round, so that what
 * else the machine does falls on both sides; printed are the median of the ratios and their quartiles.
 */

import { readFileSync } from 'node:fs';
import { cpus } from 'node:os';

export interface Contender {
  readonly name: string;
  /** Does the job once and returns the figures it came to, in an order that all contenders share. */
  readonly run: () => readonly number[];
  /** How many jobs one run does; one if not said. */
  readonly jobs?: number;
  /** What this contender should come to: its ratio to the first one, at most. */
  readonly aim?: { readonly what: string; readonly most: number };
}

/** An aim and what was measured for it; printed together at the end. */
interface Judged {
  readonly what: string;
  readonly most: number;
  readonly found: number;
  readonly unit: string;
}

const judged: Judged[] = [];

/** Keeps what was measured for an aim. */
export function judge(what: string, found: number, most: number, unit = 'x'): void {
  judged.push({ what, most, found, unit });
}

/** CPU time of this process in microseconds: the time that others take from it does not count. */
export const cpuTime = (): number => {
  const { user, system } = process.cpuUsage();
  return user + system;
};

/** The figure below which a share of the sorted figures lies. */
function quantile(figures: readonly number[], share: number): number {
  const sorted = [...figures].sort((a, b) => a - b);
  const place = share * (sorted.length - 1);
  const [low, high] = [sorted[Math.floor(place)]!, sorted[Math.ceil(place)]!];
  return low + (high - low) * (place - Math.floor(place));
}

export const median = (figures: readonly number[]): number => quantile(figures, 0.5);

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

/** CPU time of one run in microseconds. */
function timeOf(run: Contender['run'], batch: number): number {
  const begun = cpuTime();
  for (let i = 0; i < batch; i += 1) sink += run()[0]!;
  return (cpuTime() - begun) / batch;
}

/** Until the compiler has done with it: a fifth of a second at a time, until five in a row have not been faster by a fiftieth. A long working needs many thousands of runs for that. */
function warmUp(run: Contender['run']): void {
  let best = Infinity;
  for (let idle = 0, spell = 0; idle < 5 && spell < 60; spell += 1) {
    const begun = cpuTime();
    let jobs = 0;
    for (; cpuTime() - begun < 200_000; jobs += 1) sink += run()[0]!;
    const each = (cpuTime() - begun) / jobs;
    idle = each < 0.98 * best ? 0 : idle + 1;
    best = Math.min(best, each);
  }
}

/** How many runs fill about twenty milliseconds: CPU time is counted in steps that must not show. */
function batchFor(run: Contender['run']): number {
  warmUp(run);
  let batch = 1;
  while (timeOf(run, batch) * batch < 20_000) batch *= 2;
  return batch;
}

/** Runs the contenders by turns, another one first each round; prints the CPU time of a job and the ratios to the first. */
export function compare(title: string, contenders: readonly Contender[], rounds = 31): void {
  mustAgree(contenders);
  const lanes = contenders.map((contender) => ({
    ...contender,
    batch: batchFor(contender.run),
    times: [] as number[],
  }));
  for (let round = 0; round < rounds; round += 1) {
    for (let k = 0; k < lanes.length; k += 1) {
      const lane = lanes[(round + k) % lanes.length]!;
      lane.times.push(timeOf(lane.run, lane.batch) / (lane.jobs ?? 1));
    }
  }
  const [first] = lanes;
  console.log(`\n${title}`);
  const wide = Math.max(...lanes.map(({ name }) => name.length));
  for (const { name, times, aim } of lanes) {
    const ratios = times.map((time, round) => time / first!.times[round]!);
    const ratio = median(ratios);
    const spread = `(${quantile(ratios, 0.25).toPrecision(3)} to ${quantile(ratios, 0.75).toPrecision(3)})`;
    const verdict =
      aim === undefined ? '' : `  aim ${aim.most.toPrecision(3)}: ${ratio <= aim.most ? 'met' : 'not met'}`;
    console.log(
      `  ${name.padEnd(wide)}  ${median(times).toPrecision(3).padStart(10)} us  ${ratio.toPrecision(3).padStart(8)} x ${spread}${verdict}`,
    );
    if (aim !== undefined) judge(aim.what, ratio, aim.most);
  }
}

/** Prints every aim, what was measured for it, and whether it is met. */
export function printAims(): void {
  console.log('\nAims');
  const wide = Math.max(...judged.map(({ what }) => what.length));
  for (const { what, most, found, unit } of judged)
    console.log(
      `  ${what.padEnd(wide)}  at most ${String(most).padStart(5)} ${unit.padEnd(11)}  found ${found.toPrecision(3).padStart(7)}  ${found <= most ? 'met' : 'NOT MET'}`,
    );
  const met = judged.filter(({ most, found }) => found <= most).length;
  console.log(`  ${met} of ${judged.length} aims are met`);
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
    `${processor?.model.trim()} x ${cpus().length}, ${process.platform} ${process.arch}, Node ${process.version}; CPU time`,
  );
  console.log(
    `decimal.js ${versionOf('../node_modules/decimal.js/package.json')}, mathjs ${versionOf('./node_modules/mathjs/package.json')}, js-quantities ${versionOf('./node_modules/js-quantities/package.json')}`,
  );
}
