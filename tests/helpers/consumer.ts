/** A folder outside the project with the packed tarball installed in it, for the tests of what users get. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, realpathSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { install, tarball } from './packed.js';

export const scratchFolder = (name: string): string =>
  realpathSync(mkdtempSync(join(tmpdir(), `trailer-ratings-${name}-`)));

/** Installs the tarball with its run-time dependencies, and says where the package stands. */
export async function installPackage(scratch: string): Promise<string> {
  install(await tarball(), scratch, ['decimal.js', 'fp-ts', 'io-ts']);
  return join(scratch, 'node_modules/trailer-ratings');
}

export const nodeIn = (scratch: string, ...args: readonly string[]): string =>
  execFileSync(process.execPath, args, { cwd: scratch, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });

/** What a command printed, when it failed too. */
export function printedBy(run: () => string): string {
  try {
    return run();
  } catch (problem) {
    const { stdout = '', stderr = '' } = problem as { stdout?: string; stderr?: string };
    return `${stdout}${stderr}` || String(problem);
  }
}
