/**
 * One design in slices, each in a thread of its own: rows are addressed by number, so the slices together are the whole study.
 * On a cluster it is the same: each machine is given the plan and its own `from` and `to`. All figures are invented.
 */
import { readFileSync } from 'node:fs';
import { isMainThread, parentPort, Worker, workerData } from 'node:worker_threads';
import { orThrow } from '../src/errors.js';
import type { SpecInput } from '../src/spec/index.js';
import { range, study, verdictCode } from '../src/study/index.js';

const made = orThrow(
  study({
    base: JSON.parse(readFileSync(new URL('./tilt-deck.json', import.meta.url), 'utf8')) as SpecInput,
    design: { kind: 'grid' },
    vary: { 'cargo.0.weight': range('8,000 lb', '9,500 lb', 100), 'cargo.0.front': range('110 in', '135 in', 100) },
  }),
);

/** How many rows of a slice are not over. */
function notOver(from: number, to: number): number {
  let held = 0;
  for (const { verdict, rows } of made.chunks(from, to))
    for (let i = 0; i < rows; i += 1) if (verdict[i] !== verdictCode('over')) held += 1;
  return held;
}

const slices = 4;
const slice = (n: number): readonly [number, number] => [
  Math.floor((made.count * n) / slices),
  Math.floor((made.count * (n + 1)) / slices),
];

/** A thread does not inherit the reader of TypeScript; a program of compiled files would name itself: `new Worker(new URL(import.meta.url))`. */
const begin = `import { register } from ${JSON.stringify(import.meta.resolve('tsx/esm/api'))}; register(); await import(${JSON.stringify(import.meta.url)});`;

if (isMainThread) {
  const held = await Promise.all(
    Array.from(
      { length: slices },
      (_, n) =>
        new Promise<number>((done, failed) => {
          new Worker(new URL(`data:text/javascript,${encodeURIComponent(begin)}`), { workerData: n })
            .once('message', done)
            .once('error', failed);
        }),
    ),
  );
  const total = held.reduce((sum, each) => sum + each, 0);
  console.log(`${slices} slices are not over in ${held.join(' + ')} = ${total} of ${made.count} rows`);
  if (total !== notOver(0, made.count)) throw new Error('the slices are not the whole');
} else {
  parentPort?.postMessage(notOver(...slice(workerData as number)));
}
