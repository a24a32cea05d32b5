/** The same answers in every host: whatever the settings of decimal.js, the prototypes, the module format, the locale. */
import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { buildSync } from 'esbuild';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { brokenSpecs } from '../helpers/broken-specs.js';
import { randomSpecs } from '../helpers/random-specs.js';
import { tiltDeck } from '../helpers/specs.js';
import { digestOf } from './library.js';

const project = join(import.meta.dirname, '../..');
const specs = [tiltDeck(), ...randomSpecs(9), ...brokenSpecs(6).map(({ spec }) => spec)];
let folder = '';
let expected = '';

/** The library bundled as one file in both formats; decimal.js stays outside, so that its settings can be reached. */
beforeAll(() => {
  mkdirSync(join(project, 'out'), { recursive: true });
  folder = mkdtempSync(join(project, 'out/hosts-'));
  for (const [format, file] of [
    ['esm', 'library.mjs'],
    ['cjs', 'library.cjs'],
  ] as const)
    buildSync({
      entryPoints: [join(import.meta.dirname, 'library.ts')],
      bundle: true,
      platform: 'node',
      format,
      external: ['decimal.js'],
      outfile: join(folder, file),
      logLevel: 'error',
    });
  writeFileSync(join(folder, 'specs.json'), JSON.stringify(specs));
  expected = digestOf(specs);
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

interface Host {
  readonly flags?: readonly string[];
  readonly env?: Readonly<Record<string, string>>;
  /** What has happened before the library is loaded, and after. */
  readonly before?: string;
  readonly after?: string;
  readonly ask?: string;
}

/** What a program prints that runs in such a host. */
function printedIn({
  flags = [],
  env = {},
  before = '',
  after = '',
  ask = 'console.log(digestOf(specs));',
}: Host): string {
  const program = join(folder, 'program.mjs');
  writeFileSync(
    program,
    `import { readFileSync } from 'node:fs';
     import { createRequire } from 'node:module';
     import Decimal from 'decimal.js';
     const specs = JSON.parse(readFileSync(new URL('specs.json', import.meta.url), 'utf8'));
     ${before}
     const { digestOf } = await import('./library.mjs');
     ${after}
     ${ask}`,
  );
  return execFileSync(process.execPath, [...flags, program], {
    encoding: 'utf8',
    env: { ...process.env, ...env },
  }).trim();
}

const hosts: Readonly<Record<string, Host>> = {
  'a plain one': {},
  'one that has set decimal.js before': {
    before: 'Decimal.set({ precision: 3, rounding: 0, toExpPos: 1, toExpNeg: 0 });',
  },
  'one that sets decimal.js after': { after: 'Decimal.set({ precision: 3, rounding: 0, toExpPos: 1, toExpNeg: 0 });' },
  'one that freezes what is built in': {
    after:
      'for (const each of [Object, Array, Map, Set, Number, String, Function, RegExp, Math]) { Object.freeze(each); if (each.prototype) Object.freeze(each.prototype); }',
  },
  'one whose prototypes hold facts of a spec': {
    after: `Object.prototype.gvwr = '1 lb'; Object.prototype.tongueShare = { text: '99 %' }; Array.prototype.weight = '1 lb';`,
  },
  'one with two copies': {
    before: `const { copyFileSync } = await import('node:fs');
      copyFileSync(new URL('library.mjs', import.meta.url), new URL('copy.mjs', import.meta.url));
      const other = await import('./copy.mjs');`,
    ask: `const first = other.digestOf(specs); console.log(first === digestOf(specs) && other.digestOf(specs) === first ? first : 'they differ');`,
  },
  'one that allows no code from strings': { flags: ['--disallow-code-generation-from-strings'] },
  'one without __proto__': { flags: ['--disable-proto=throw'] },
  'one in Turkish': { env: { LC_ALL: 'tr_TR.UTF-8', LANG: 'tr_TR.UTF-8' } },
  'one in German, far east': { env: { LC_ALL: 'de_DE.UTF-8', LANG: 'de_DE.UTF-8', TZ: 'Asia/Kathmandu' } },
  'one that answers twice': { after: 'digestOf(specs);' },
  CJS: { ask: `console.log(createRequire(import.meta.url)('./library.cjs').digestOf(specs));` },
  'ESM and CJS in one process': {
    after: `const other = createRequire(import.meta.url)('./library.cjs'); const first = other.digestOf(specs);`,
    ask: `console.log(first === digestOf(specs) && other.digestOf(specs) === first ? first : 'they differ');`,
  },
  'a worker': {
    ask: `
      const { Worker } = await import('node:worker_threads');
      const code = 'const { parentPort, workerData } = require("node:worker_threads");'
        + 'import(workerData.library).then(({ digestOf }) => parentPort.postMessage(digestOf(workerData.specs)));';
      const worker = new Worker(code, { eval: true, workerData: { specs, library: new URL('library.mjs', import.meta.url).href } });
      worker.on('message', (digest) => console.log(digest));`,
  },
};

describe('the same answers in', () => {
  it.each(Object.entries(hosts))('%s', (_, host) => {
    expect(printedIn(host)).toBe(expected);
  });
});
