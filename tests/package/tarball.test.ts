/** The packed tarball, installed in a scratch folder: what users get, not what stands in the working tree. */
import { execFileSync } from 'node:child_process';
import {
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  realpathSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { gzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { chapters } from '../../scripts/chapters.js';
import { install, tarball } from '../helpers/packed.js';

const project = join(import.meta.dirname, '../..');
const scratch = realpathSync(mkdtempSync(join(tmpdir(), 'trailer-ratings-')));
const installed = join(scratch, 'node_modules/trailer-ratings');
const node = (...args: readonly string[]): string =>
  execFileSync(process.execPath, args, { cwd: scratch, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
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

beforeAll(async () => {
  install(await tarball(), scratch, Object.keys(manifest.dependencies));
}, 900_000); // a machine that builds other things beside takes minutes
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

/** Figures and a check through the types; `x` sees that a wrong unit is refused in the consumer's own compiler. */
const consumer = `
import { add, foot, lb, type Quantity } from 'trailer-ratings/units';
import { given, explain, type Derived } from 'trailer-ratings/trace';
import { checkLoad, rating, weight, type Check } from 'trailer-ratings/ratings';
import { orThrow, type TrailerError } from 'trailer-ratings/errors';
import { units } from 'trailer-ratings';
${chapters.map(({ name }) => `import * as ${name}Chapter from 'trailer-ratings/${name}';`).join('\n')}
export const gross: Quantity<'lb'> = add(lb(3200), units.lb(9200));
export const working: Derived<'lb'> = given('gross', gross);
export const answer: Check = checkLoad(rating('GVWR', lb(14000)), weight('gross', working));
export const text: string = explain(answer.reserve);
export const read: Quantity<'lb'> = orThrow(units.parseQuantity('9,200 lb', 'lb'));
export type Problem = TrailerError;
// @ts-expect-error feet are not pounds
export const wrong = add(lb(1), foot(1));
export const all = [${chapters.map(({ name }) => `${name}Chapter`).join(', ')}];
`;

describe('the declarations', () => {
  const kinds = [
    { title: 'Node ESM', file: 'consumer.mts', module: 'node16', moduleResolution: 'node16' },
    { title: 'Node CJS', file: 'consumer.cts', module: 'node16', moduleResolution: 'node16' },
    { title: 'a bundler', file: 'consumer.ts', module: 'esnext', moduleResolution: 'bundler' },
  ];
  it.each(kinds)(
    'compile for a consumer: $title',
    ({ file, module, moduleResolution }) => {
      const folder = join(scratch, `types-${file.replaceAll('.', '-')}`);
      mkdirSync(folder);
      writeFileSync(join(folder, file), consumer);
      const compilerOptions = {
        module,
        moduleResolution,
        target: 'es2022',
        lib: ['es2022', 'dom'],
        types: [],
        strict: true,
        noEmit: true,
        skipLibCheck: false,
        exactOptionalPropertyTypes: true,
      };
      writeFileSync(join(folder, 'tsconfig.json'), JSON.stringify({ compilerOptions, files: [file] }));
      const outcome = (() => {
        try {
          return node(join(project, 'node_modules/typescript/bin/tsc'), '-p', folder);
        } catch (problem) {
          return (problem as { stdout: string }).stdout;
        }
      })();
      expect(outcome).toBe('');
    },
    120_000,
  );
});
