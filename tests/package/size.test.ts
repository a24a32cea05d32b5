/** What a name costs whoever imports it: bundled from the built package, minified, zipped, decimal.js included. */
import { mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { build } from 'tsup';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { buildCode } from '../../scripts/code.js';

const project = join(import.meta.dirname, '../..');
const scratch = mkdtempSync(join(tmpdir(), 'trailer-ratings-size-'));

beforeAll(async () => {
  await buildCode(join(scratch, 'dist'), true);
  const type = { type: 'module', sideEffects: false };
  writeFileSync(join(scratch, 'package.json'), JSON.stringify(type));
  symlinkSync(join(project, 'node_modules'), join(scratch, 'node_modules'), 'junction');
}, 300_000);
afterAll(() => rmSync(scratch, { recursive: true, force: true }));

async function kilobytes(chapter: string, name: string): Promise<number> {
  const entry = join(scratch, 'consumer.js');
  const from = `./dist/${chapter}.js`;
  const what = name === '*' ? '* as all' : `{ ${name} }`;
  writeFileSync(entry, `import ${what} from '${from}';\nconsole.log(${name === '*' ? 'all' : name});\n`);
  await build({
    config: false,
    entry: [entry],
    outDir: join(scratch, 'out'),
    silent: true,
    format: ['esm'],
    target: 'es2022',
    platform: 'neutral',
    minify: true,
    noExternal: [/./],
    esbuildOptions(options) {
      options.mainFields = ['module', 'main'];
    },
  });
  return gzipSync(readFileSync(join(scratch, 'out/consumer.js')), { level: 9 }).length / 1000;
}

/** In thousands of bytes. A chapter that grows may take more: change the line, and say so. */
it.each([
  ['errors', 'orThrow', 25],
  ['units', 'lb', 16],
  ['tires', 'readTireDesignation', 25],
  ['tires', '*', 42],
  ['load', 'rampAngle', 20],
  ['assessment', 'assess', 132],
  ['index', '*', 260],
])('%s, %s: at most %i kB', { timeout: 120_000 }, async (chapter, name, most) => {
  const size = await kilobytes(chapter, name);
  expect(size).toBeLessThanOrEqual(most);
  // Far below its budget something is missing, or the budget is none.
  expect(size).toBeGreaterThan(most / 2);
});
