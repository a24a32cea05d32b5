/**
 * One design in slices, each run by a process of its own, and the proof that the slices put together are the whole: byte for byte.
 * A cluster does the same: every machine gets the plan and its own `from` and `to`. All figures are invented.
 */

import { execFile } from 'node:child_process';
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { orThrow } from '../src/errors.js';
import type { SpecInput } from '../src/spec/index.js';
import { linked, range, study, toCsv } from '../src/study/index.js';

const made = orThrow(
  study({
    base: JSON.parse(readFileSync(new URL('./tilt-deck.json', import.meta.url), 'utf8')) as SpecInput,
    design: { kind: 'grid' },
    vary: {
      axles: linked({
        'trailer.axles.0.at': range('183 in', '191 in', 5),
        'trailer.axles.1.at': range('217 in', '225 in', 5),
      }),
      'cargo.0.weight': range('8,000 lb', '9,500 lb', 16),
      'cargo.0.front': range('110 in', '135 in', 51),
    },
  }),
);

const [, program, from, to] = process.argv;
const sum = (text: string): string => createHash('sha256').update(text).digest('hex').slice(0, 16);

if (from !== undefined && to !== undefined) {
  // A slice: its lines without the header, which every slice would have.
  const [, ...lines] = toCsv(made, { from: Number(from), to: Number(to) });
  process.stdout.write(lines.join(''));
} else {
  const run = promisify(execFile);
  const slices = 4;
  const ends = Array.from({ length: slices + 1 }, (_, n) => Math.floor((made.count * n) / slices));
  const parts = await Promise.all(
    ends.slice(1).map(async (end, n) => {
      const slice = [String(ends[n]), String(end)];
      const { stdout } = await run(
        process.execPath,
        [...process.execArgv, fileURLToPath(`file://${program}`), ...slice],
        {
          maxBuffer: 1e9,
        },
      );
      return stdout;
    }),
  );
  const [header = '', ...lines] = toCsv(made);
  const whole = header + lines.join('');
  const together = header + parts.join('');
  console.log(`${slices} processes, ${made.count} rows: ${parts.map((part) => part.length).join(' + ')} characters`);
  console.log(`together ${sum(together)}, in one process ${sum(whole)}`);
  if (together !== whole) throw new Error('the slices are not the whole');
}
