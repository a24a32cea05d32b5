/**
 * The laws over random specs, at length: `npm run laws -- 5000`. Without a count, 5,000 specs a law.
 */
import { spawnSync } from 'node:child_process';
import { readFileSync, rmSync } from 'node:fs';
import { record } from './proof/record.js';

const runs = process.argv[2] ?? '5000';
const report = 'out/laws.json';

rmSync(report, { force: true });
const vitest = ['node_modules/vitest/vitest.mjs', 'run', 'tests/laws/specs', '--testTimeout=3600000'];
const { status } = spawnSync(
  process.execPath,
  [...vitest, '--reporter=default', '--reporter=json', `--outputFile.json=${report}`],
  {
    stdio: 'inherit',
    env: { ...process.env, LAW_RUNS: runs },
  },
);
const { numPassedTests, numFailedTests } = JSON.parse(readFileSync(report, 'utf8')) as Record<string, number>;
record('laws over random specs', `npm run laws -- ${runs}`, {
  'specs a law': Number(runs),
  'laws that hold': numPassedTests ?? 0,
  'laws that fail': numFailedTests ?? 0,
});
process.exitCode = status ?? 1;
