/** The packed tarball, made once for all tests that install it: building clears `dist`, so two must not do it at a time. */
import { execSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';

const project = join(import.meta.dirname, '../..');
const folder = join(project, 'out/packed');
const lock = join(project, 'out/packing');

/** Through the shell: on Windows npm is a script, which only a shell starts. */
export const npm = (args: string, cwd: string): string =>
  execSync(`npm ${args}`, { cwd, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });

/** When anything that goes into the tarball was last written. */
function newest(path: string): number {
  const at = statSync(path);
  if (!at.isDirectory()) return at.mtimeMs;
  return Math.max(0, ...readdirSync(path).map((name) => newest(join(path, name))));
}

const parts = [
  'src',
  'docs',
  'examples',
  'scripts',
  'package.json',
  'README.md',
  'CHANGELOG.md',
  'LICENSE',
  'NOTICES.md',
];

function packed(): string {
  mkdirSync(folder, { recursive: true });
  const changed = Math.max(...parts.map((part) => newest(join(project, part))));
  const ready = (): string | undefined => readdirSync(folder).find((name) => name.endsWith('.tgz'));
  const found = ready();
  if (found !== undefined && statSync(join(folder, found)).mtimeMs > changed) return join(folder, found);
  rmSync(folder, { recursive: true });
  mkdirSync(folder, { recursive: true });
  npm(`pack --pack-destination "${folder}"`, project); // builds first: `prepack`
  return join(folder, ready() as string);
}

/** A lock left behind by a run that was stopped counts for ten minutes. */
const isHeld = (): boolean => existsSync(lock) && Date.now() - statSync(lock).mtimeMs < 600_000;

/** The path of the tarball of what stands in the working tree. */
export async function tarball(): Promise<string> {
  mkdirSync(join(project, 'out'), { recursive: true });
  for (;;) {
    if (!isHeld()) rmSync(lock, { force: true });
    try {
      writeFileSync(lock, String(process.pid), { flag: 'wx' });
      break;
    } catch {
      await wait(500);
    }
  }
  try {
    return packed();
  } finally {
    rmSync(lock, { force: true });
  }
}

/** The run-time dependencies as they stand in the project, so that the installation needs no network. */
export function install(file: string, into: string, dependencies: readonly string[]): void {
  const links = dependencies.map((name) => [name, `file:${join(project, 'node_modules', name)}`]);
  const all = { ...Object.fromEntries(links), 'trailer-ratings': `file:${file}` };
  writeFileSync(
    join(into, 'package.json'),
    JSON.stringify({ name: 'consumer', private: true, type: 'module', dependencies: all }),
  );
  npm('install --offline --no-audit --no-fund --no-package-lock --ignore-scripts --install-links=false', into);
}
