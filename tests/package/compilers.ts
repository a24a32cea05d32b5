/** A consumer of the package in TypeScript: the declarations compile, library checks on, and a wrong unit is refused. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { chapters } from '../../scripts/chapters.js';
import { node, npm, printedBy, project, scratch } from './installed.js';

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
  { title: 'Node ESM of old', file: 'old.mts', module: 'node16', moduleResolution: 'node16' },
  { title: 'a bundler', file: 'consumer.ts', module: 'esnext', moduleResolution: 'bundler' },
] as const;

/** One project with all kinds of files would mix module formats: one folder a kind. */
function folderOf({ file, module, moduleResolution }: (typeof kinds)[number], compiler: string): string {
  const folder = join(scratch, `types-${compiler}-${file.replaceAll('.', '-')}`);
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

/** TypeScript 7 is fetched into the scratch folder; 5.9 is the one of the project. */
function compilerOf(version: string): string {
  if (version.startsWith('5.')) return join(project, 'node_modules/typescript/bin/tsc');
  const folder = join(scratch, `typescript-${version}`);
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'package.json'), JSON.stringify({ name: 'compiler', private: true }));
  npm(`install typescript@${version} --prefer-offline --ignore-scripts --no-audit --no-fund`, folder);
  return join(folder, 'node_modules/typescript/bin/tsc');
}

/** The tests; called where the package is installed. */
export function describeDeclarations(): void {
  describe.each(['5.9.3', '7.0.2'])('the declarations compile with TypeScript %s', (version) => {
    let compiler = '';
    it('which is there', () => {
      compiler = compilerOf(version);
      expect(node(compiler, '--version')).toContain(version);
    }, 300_000);
    it.each(kinds)(
      'for $title',
      (kind) => {
        expect(printedBy(() => node(compiler, '-p', folderOf(kind, version)))).toBe('');
      },
      300_000,
    );
  });
}
