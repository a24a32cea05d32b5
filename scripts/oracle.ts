/** The long form of the tests in tests/oracle: more than 20,000 random answers on both paths, which takes the better part of an hour. */
import { spawnSync } from 'node:child_process';

const run = spawnSync('npx', ['vitest', 'run', 'tests/oracle'], {
  stdio: 'inherit',
  shell: process.platform === 'win32',
  env: { ...process.env, ORACLE: 'long' },
});
process.exitCode = run.status ?? 1;
