/** A consumer in TypeScript 5.9, 6 and 7: the declarations compile, library checks on, and a wrong unit is refused. */
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { chapters } from '../../scripts/chapters.js';
import { installPackage, nodeIn, printedBy, scratchFolder } from '../helpers/consumer.js';
import { npm } from '../helpers/packed.js';

const project = join(import.meta.dirname, '../..');
const scratch = scratchFolder('compilers');
beforeAll(() => installPackage(scratch), 900_000); // a machine that builds other things beside takes minutes
afterAll(() => rmSync(scratch, { recursive: true, force: true }));

/** Figures and a check through the types; the marked line sees that a wrong unit is refused in the consumer's own compiler. */
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

const kinds = [
  { title: 'Node ESM', file: 'consumer.mts', module: 'nodenext', moduleResolution: 'nodenext' },
  { title: 'Node CJS', file: 'consumer.cts', module: 'nodenext', moduleResolution: 'nodenext' },
  { title: 'a bundler', file: 'consumer.ts', module: 'esnext', moduleResolution: 'bundler' },
] as const;

/** One project with all kinds of files would mix module formats: one folder a kind. */
function folderOf({ file, module, moduleResolution }: (typeof kinds)[number], version: string): string {
  const folder = join(scratch, `types-${version}-${file.replaceAll('.', '-')}`);
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
  return folder;
}

/** 5.9 is the compiler of the project; the others are fetched, so that nobody who works on the project installs three. */
function compilerOf(version: string): string {
  if (version.startsWith('5.')) return join(project, 'node_modules/typescript/bin/tsc');
  const folder = join(scratch, `typescript-${version}`);
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'package.json'), JSON.stringify({ name: 'compiler', private: true }));
  npm(`install typescript@${version} --prefer-offline --ignore-scripts --no-audit --no-fund`, folder);
  return join(folder, 'node_modules/typescript/bin/tsc');
}

describe.each(['5.9.3', '6.0.3', '7.0.2'])('the declarations compile with TypeScript %s', (version) => {
  let compiler = '';
  beforeAll(() => {
    compiler = compilerOf(version);
  }, 300_000);
  it('of that version', () => expect(nodeIn(scratch, compiler, '--version')).toContain(version));
  it.each(kinds)(
    'for $title',
    (kind) => expect(printedBy(() => nodeIn(scratch, compiler, '-p', folderOf(kind, version)))).toBe(''),
    300_000,
  );
});
