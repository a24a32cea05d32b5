/** The code of the package: one entry a chapter, ESM and CJS; code shared by chapters goes into chunks, once; the index points at the chapters. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'tsup';
import ts from 'typescript';
import { chapters } from './chapters.js';
import { pureMarks } from './pure.js';

export const chapterEntries = Object.fromEntries(chapters.map(({ name, file }) => [name, file]));

/** The text of the index, pointed at the built chapters. */
export const indexFor = (extension: 'js' | 'cjs'): string =>
  readFileSync('src/index.ts', 'utf8').replaceAll(/'\.\/(\w+)(?:\/index)?\.js'/g, `'./$1.${extension}'`);

/** The index is not an entry of its own: with `export *` of every chapter its chunks could not be tree-shaken. */
function writeIndex(outDir: string): void {
  for (const [extension, module] of [
    ['js', ts.ModuleKind.ESNext],
    ['cjs', ts.ModuleKind.CommonJS],
  ] as const) {
    const compilerOptions = { module, target: ts.ScriptTarget.ES2022, esModuleInterop: true };
    const { outputText } = ts.transpileModule(indexFor(extension), { compilerOptions });
    writeFileSync(join(outDir, `index.${extension}`), outputText);
  }
}

/** Builds the code into a folder. */
export async function buildCode(outDir: string, silent = false): Promise<void> {
  await build({
    config: false,
    entry: chapterEntries,
    outDir,
    silent,
    format: ['esm', 'cjs'],
    target: 'es2022',
    platform: 'neutral',
    dts: false,
    splitting: true,
    clean: true,
    // Node refuses `fp-ts/Either` in ESM and loads io-ts as one CJS lump: both are inlined, from their ES modules, so that
    // only what is used is shipped. They stay in `dependencies` because the declarations name their types.
    external: ['decimal.js'],
    noExternal: ['fp-ts', 'io-ts'],
    esbuildPlugins: [pureMarks],
    esbuildOptions(options) {
      options.alias = { 'fp-ts/lib': 'fp-ts/es6', 'io-ts': 'io-ts/es6/index.js' };
      options.mainFields = ['module', 'main'];
    },
  });
  writeIndex(outDir);
}
