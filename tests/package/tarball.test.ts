/** The packed tarball, installed in a scratch folder: what users get, not the working tree. */
import { readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { gzipSync } from 'node:zlib';
import { publint } from 'publint';
import { formatMessage } from 'publint/utils';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { chapters } from '../../scripts/chapters.js';
import { installPackage, nodeIn, scratchFolder } from '../helpers/consumer.js';

const project = join(import.meta.dirname, '../..');
const scratch = scratchFolder('tarball');
const installed = join(scratch, 'node_modules/trailer-ratings');
const node = (...args: readonly string[]): string => nodeIn(scratch, ...args);
interface Manifest {
  exports: Record<string, unknown>;
  dependencies: Record<string, string>;
  sideEffects: boolean;
}
const manifest = JSON.parse(readFileSync(join(project, 'package.json'), 'utf8')) as Manifest;
const specifiers = ['trailer-ratings', ...chapters.map(({ name }) => `trailer-ratings/${name}`)];

function filesUnder(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => statSync(join(folder, file)).isFile())
    .map((file) => file.replaceAll('\\', '/'));
}

beforeAll(() => installPackage(scratch), 900_000); // a machine that builds other things beside takes minutes
afterAll(() => rmSync(scratch, { recursive: true, force: true }));

/** The names a subpath exports, as a child process of Node sees them. */
const namesFromEsm = (specifier: string): string[] =>
  JSON.parse(
    node('--input-type=module', '-e', `import * as x from '${specifier}'; console.log(JSON.stringify(Object.keys(x)))`),
  ) as string[];
const namesFromCjs = (specifier: string): string[] =>
  JSON.parse(
    node('--input-type=commonjs', '-e', `console.log(JSON.stringify(Object.keys(require('${specifier}'))))`),
  ) as string[];

describe('the tarball', () => {
  it('has a subpath for every chapter in src', () => {
    expect(chapters.filter(({ name }) => manifest.exports[`./${name}`] === undefined)).toEqual([]);
    const folders = readdirSync(join(project, 'src'), { withFileTypes: true })
      .filter((entry) => entry.isDirectory())
      .map(({ name }) => name);
    expect(folders.filter((folder) => filesUnder(join(project, 'src', folder)).includes('index.ts')).sort()).toEqual(
      chapters
        .map(({ name }) => name)
        .filter((name) => name !== 'errors')
        .sort(),
    );
  });

  it('has every chapter in its index', async () => {
    const index = await import('../../src/index.js');
    expect(chapters.map(({ name }) => name).filter((name) => name !== 'errors' && !(name in index))).toEqual([]);
  });

  it('holds the build, the licences, the guides and the examples, and no sources or tests', () => {
    const files = filesUnder(installed);
    expect(files).toEqual(expect.arrayContaining(['package.json', 'LICENSE', 'CHANGELOG.md']));
    expect(
      files.filter(
        (file) =>
          !/^dist\/[\w-]+\.(js|cjs|d\.ts|d\.cts)$/.test(file) &&
          !/^dist\/types(-cjs)?\/[\w./-]+\.d\.ts$/.test(file) &&
          file !== 'dist/types-cjs/package.json' &&
          !/^(package\.json|LICENSE|CHANGELOG\.md|README\.md|NOTICES\.md)$/.test(file) &&
          !/^(docs\/[\w./-]+\.(md|json|html|py|svg)|examples\/[\w./-]+\.(json|ts|txt))$/.test(file),
      ),
    ).toEqual([]);
  });

  it.each(specifiers)('%s gives Node the same names as ESM and as CJS: those of its source', async (specifier) => {
    const chapter = chapters.find(({ name }) => specifier === `trailer-ratings/${name}`);
    const source = (await import(pathToFileURL(join(project, chapter?.file ?? 'src/index.ts')).href)) as object;
    const names = namesFromEsm(specifier).sort();
    expect(names).toEqual(Object.keys(source).sort());
    expect(names.length).toBeGreaterThan(0);
    expect(
      namesFromCjs(specifier)
        .filter((name) => name !== '__esModule')
        .sort(),
    ).toEqual(names);
  });

  it('imports nothing from a package but decimal.js', () => {
    const imported = filesUnder(installed)
      .filter((file) => /\.c?js$/.test(file) && file !== 'dist/command.js') // a program of Node, and the only one
      .flatMap((file) =>
        [
          ...readFileSync(join(installed, file), 'utf8').matchAll(
            /^(?:import|export)[^'"]*?['"]([^'"]+)['"]|(?:require|import)\(\s*['"]([^'"]+)['"]/gm,
          ),
        ].map(([, named, called]) => named ?? (called as string)),
      );
    expect([...new Set(imported.filter((specifier) => !specifier.startsWith('.')))]).toEqual(['decimal.js']);
  });

  it('keeps shared code once: a figure made by one chapter is read by another', () => {
    const program = `
      import { lb, show, quantity } from 'trailer-ratings/units';
      import { given, sum, explain } from 'trailer-ratings/trace';
      import { units } from 'trailer-ratings';
      console.log(show(sum('gross', [given('trailer', lb(3200)), given('machine', units.lb(9200))]).value), quantity === units.quantity);`;
    expect(node('--input-type=module', '-e', program)).toBe('12,400 lb true\n');
  });

  it('gives a package linter nothing to say', async () => {
    const { messages, pkg } = await publint({ pkgDir: installed, strict: true });
    expect(messages.map((message) => formatMessage(message, pkg))).toEqual([]);
  });

  it('calls itself free of side effects', () => expect(manifest.sideEffects).toBe(false));

  it('prints its size', () => {
    const gzip = (suffix: string): number =>
      filesUnder(installed)
        .filter((file) => file.endsWith(suffix))
        .reduce((total, file) => total + gzipSync(readFileSync(join(installed, file)), { level: 9 }).length, 0);
    const [js, cjs, types] = [gzip('.js'), gzip('.cjs'), gzip('.d.ts')];
    console.log(`package size, gzip: ESM ${js} bytes, CJS ${cjs} bytes, types ${types} bytes`);
    expect(js).toBeGreaterThan(1000);
    expect(js).toBeLessThan(400_000);
  });
});
