/** The packed tarball in a scratch folder: what users get, not what stands in the working tree. */
import { execFileSync, execSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, realpathSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export const project = join(import.meta.dirname, '../..');
export const scratch = realpathSync(mkdtempSync(join(tmpdir(), 'trailer-ratings-')));
export const installed = join(scratch, 'node_modules/trailer-ratings');

export const node = (...args: readonly string[]): string =>
  execFileSync(process.execPath, args, { cwd: scratch, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });

/** Through the shell: on Windows npm is a script, which only a shell starts. */
export const npm = (args: string, cwd: string): string =>
  execSync(`npm ${args}`, { cwd, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });

export interface Manifest {
  readonly exports: Readonly<Record<string, unknown>>;
  readonly dependencies: Readonly<Record<string, string>>;
  readonly scripts: Readonly<Record<string, string>>;
  readonly sideEffects: boolean;
}

export const manifestIn = (folder: string): Manifest =>
  JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as Manifest;

export function filesUnder(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => statSync(join(folder, file)).isFile())
    .map((file) => file.replaceAll('\\', '/'));
}

/** Packs the project and installs it; the run-time dependencies come from the project, so that this needs no network. */
export function packAndInstall(): void {
  npm(`pack --pack-destination "${scratch}"`, project); // builds first: `prepack`
  const tarball = readdirSync(scratch).find((file) => file.endsWith('.tgz')) as string;
  const links = Object.keys(manifestIn(project).dependencies).map((name) => [
    name,
    `file:${join(project, 'node_modules', name)}`,
  ]);
  const dependencies = { ...Object.fromEntries(links), 'trailer-ratings': `file:${join(scratch, tarball)}` };
  writeFileSync(join(scratch, 'package.json'), JSON.stringify({ name: 'consumer', private: true, dependencies }));
  npm('install --offline --no-audit --no-fund --no-package-lock --ignore-scripts --install-links=false', scratch);
}

/** What a command printed, when it failed too. */
export function printedBy(run: () => string): string {
  try {
    return run();
  } catch (problem) {
    const { stdout = '', stderr = '' } = problem as { stdout?: string; stderr?: string };
    return `${stdout}${stderr}` || String(problem);
  }
}
