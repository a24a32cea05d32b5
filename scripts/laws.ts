/**
 * The laws over random specs, at length: `npm run laws`, or `npm run laws -- SPECS LAW FROM`, where a law is the name of a file of
 * tests/laws/specs. Without a law, every one; without a count, 5,000 specs each. A run that begins where the recorded one of the
 * same law ended is added to it, so that a long run may be asked in parts.
 */
import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync, rmSync } from 'node:fs';
import { readResults, record } from './proof/record.js';

const folder = 'tests/laws/specs';
const [count = '5000', named, begin = '0'] = process.argv.slice(2);
const [specs, from] = [Number(count), Number(begin)];
const every = readdirSync(folder).map((file) => file.replace('.test.ts', ''));

interface Outcome {
  readonly specs: number;
  readonly hold: number;
  readonly fail: number;
}

/** What the tests of one law say of the specs of this run. */
function asked(law: string): Outcome {
  const report = `out/laws-${law}.json`;
  rmSync(report, { force: true });
  const vitest = ['node_modules/vitest/vitest.mjs', 'run', `${folder}/${law}.test.ts`, '--testTimeout=3600000'];
  spawnSync(
    process.execPath,
    [...vitest, '--maxWorkers=1', '--reporter=default', '--reporter=json', `--outputFile.json=${report}`],
    { stdio: 'inherit', env: { ...process.env, LAW_RUNS: String(specs), LAW_FROM: String(from) } },
  );
  const { numPassedTests, numFailedTests } = JSON.parse(readFileSync(report, 'utf8')) as Record<string, number>;
  return { specs, hold: numPassedTests ?? 0, fail: numFailedTests ?? 0 };
}

/** With what is recorded of the specs before; a test holds when it holds in every part. */
function withRecorded(name: string, run: Outcome): Outcome {
  const before = readResults()[name]?.figures;
  if (from === 0 || before?.['specs a law'] !== from) return { ...run, specs: from === 0 ? run.specs : 0 };
  return {
    specs: from + run.specs,
    hold: Math.min(Number(before['tests that hold']), run.hold),
    fail: Math.max(Number(before['tests that fail']), run.fail),
  };
}

for (const law of named === undefined ? every : [named]) {
  const name = `laws over random specs, ${law}`;
  const run = asked(law);
  const all = withRecorded(name, run);
  if (all.specs > 0)
    record(name, `npm run laws -- ${all.specs} ${law}`, {
      'specs a law': all.specs,
      'tests that hold': all.hold,
      'tests that fail': all.fail,
    });
  if (run.fail > 0 || run.hold === 0) process.exitCode = 1;
}
