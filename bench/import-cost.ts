/** What importing a chapter costs over decimal.js alone: fresh processes by turns, the time of the import only. */
import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { median, table } from './harness.js';

const path = (file: string): string => fileURLToPath(new URL(file, import.meta.url));

function importTime(file: string): number {
  const program = `const begun = process.hrtime.bigint(); await import(${JSON.stringify(`file://${file}`)}); console.log(Number(process.hrtime.bigint() - begun) / 1e6)`;
  return Number(execFileSync(process.execPath, ['--input-type=module', '-e', program], { encoding: 'utf8' }));
}

export function benchImport(rounds = 21): void {
  const lanes = [
    { name: 'decimal.js', file: path('../node_modules/decimal.js/decimal.mjs') },
    { name: 'trailer-ratings/units', file: path('../dist/units.js') },
    { name: 'trailer-ratings/tires', file: path('../dist/tires.js') },
    { name: 'trailer-ratings, all of it', file: path('../dist/index.js') },
    { name: 'mathjs', file: path('./node_modules/mathjs/lib/esm/index.js') },
    { name: 'js-quantities', file: path('./node_modules/js-quantities/build/quantities.mjs') },
  ].map((lane) => ({ ...lane, times: [] as number[] }));
  for (let round = 0; round < rounds; round += 1) for (const lane of lanes) lane.times.push(importTime(lane.file));
  const rows = lanes.map(({ name, times }) => ({ name, figure: median(times) }));
  table('Import', rows, 'ms');
  for (const name of ['trailer-ratings/tires', 'trailer-ratings, all of it']) {
    const over = rows.find((row) => row.name === name)!.figure - rows[0]!.figure;
    console.log(`  ${name} over decimal.js alone: ${over.toFixed(2)} ms`);
  }
}
