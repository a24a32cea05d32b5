/**
 * Every exported name, values and types, against the kept list: a name that comes, goes or moves is a decision.
 *
 * `UPDATE=1 npx vitest run tests/package/exported-names` writes the list anew; read the difference before committing it.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import ts from 'typescript';
import { expect, it } from 'vitest';
import { chapters } from '../../scripts/chapters.js';

const project = join(import.meta.dirname, '../..');
const kept = join(import.meta.dirname, 'exported-names.txt');
const entries = [{ name: 'index', file: 'src/index.ts' }, ...chapters].map(({ name, file }) => ({
  name,
  file: join(project, file),
}));

const { config } = ts.readConfigFile(join(project, 'tsconfig.json'), (file) => readFileSync(file, 'utf8')) as {
  config: unknown;
};
const { options } = ts.parseJsonConfigFileContent(config, ts.sys, project);
const program = ts.createProgram(
  entries.map(({ file }) => file),
  options,
);
const checker = program.getTypeChecker();

/** The names of a subpath as the compiler sees them, each with whether it can stand for a type. */
function namesOf(file: string): ReadonlyMap<string, boolean> {
  const source = program.getSourceFile(file);
  const module = source && checker.getSymbolAtLocation(source);
  if (module === undefined) throw new Error(`${file} is no module`);
  return new Map(
    checker.getExportsOfModule(module).map((symbol) => {
      const { flags } = (symbol.flags & ts.SymbolFlags.Alias) === 0 ? symbol : checker.getAliasedSymbol(symbol);
      return [symbol.name, (flags & ts.SymbolFlags.Type) !== 0];
    }),
  );
}

/** `units Quantity type`: the subpath, the name, what it is. A value is what a program finds when it runs. */
async function linesOf({ name: subpath, file }: (typeof entries)[number]): Promise<readonly string[]> {
  const names = namesOf(file);
  const values = Object.keys((await import(pathToFileURL(file).href)) as object);
  expect(
    values.filter((name) => !names.has(name)),
    `what only a program finds in ${subpath}`,
  ).toEqual([]);
  return [...names]
    .map(([name, isType]) =>
      [subpath, name, ...(values.includes(name) ? ['value'] : []), ...(isType ? ['type'] : [])].join(' '),
    )
    .sort();
}

it('the exported names are those of the kept list', async () => {
  const lines = (await Promise.all(entries.map(linesOf))).flat();
  if (process.env.UPDATE === '1') writeFileSync(kept, `${lines.join('\n')}\n`);
  expect(lines).toEqual(readFileSync(kept, 'utf8').trimEnd().split('\n'));
});
