/** What importing a chapter costs over decimal.js alone: fresh processes by turns, the CPU time of the import only. */
import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { judge, median, table } from './harness.js';

const path = (file: string): string => fileURLToPath(new URL(file, import.meta.url));

function importTime(file: string): number {
  const program = `const begun = process.cpuUsage(); await import(${JSON.stringify(`file://${file}`)}); const { user, system } = process.cpuUsage(begun); console.log((user + system) / 1e3)`;
  return Number(execFileSync(process.execPath, ['--input-type=module', '-e', program], { encoding: 'utf8' }));
}

export function benchImport(rounds = 21): void {
  const lanes = [
    { name: 'decimal.js', aim: undefined, file: path('../node_modules/decimal.js/decimal.mjs') },
    { name: 'trailer-ratings/units', aim: 2, file: path('../dist/units.js') },
    { name: 'trailer-ratings/tires', aim: 2.5, file: path('../dist/tires.js') },
    { name: 'trailer-ratings, all of it', aim: 8, file: path('../dist/index.js') },
    { name: 'mathjs', aim: undefined, file: path('./node_modules/mathjs/lib/esm/index.js') },
    { name: 'js-quantities', aim: undefined, file: path('./node_modules/js-quantities/build/quantities.mjs') },
  ].map((lane) => ({ ...lane, times: [] as number[] }));
  for (let round = 0; round < rounds; round += 1) for (const lane of lanes) lane.times.push(importTime(lane.file));
  const rows = lanes.map(({ name, times }) => ({ name, figure: median(times) }));
  table('Import', rows, 'ms of CPU time');
  const [alone, ...chapters] = lanes;
  for (const { name, aim, times } of chapters)
    if (aim !== undefined)
      judge(`${name} over decimal.js alone, import`, median(times.map((time, i) => time / alone!.times[i]!)), aim);
}
