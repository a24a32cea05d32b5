/** Writes dist/: one entry a chapter, ESM and CJS with their types; code that chapters share stands in chunks, once. */
import { readFileSync, writeFileSync } from 'node:fs';
import { build } from 'tsup';
import { chapters } from './chapters.js';

const chapterEntries = Object.fromEntries(chapters.map(({ name, file }) => [name, file]));

await build({
  config: false,
  entry: { ...chapterEntries, index: 'src/index.ts' },
  format: ['esm', 'cjs'],
  target: 'es2022',
  platform: 'neutral',
  dts: { entry: chapterEntries },
  splitting: true,
  clean: true,
  // Node refuses `fp-ts/Either` in ESM and loads io-ts as one CJS lump: both are inlined, from their ES modules, so that
  // only what is used is shipped. They stay in `dependencies` because the declarations name their types.
  external: ['decimal.js'],
  noExternal: ['fp-ts', 'io-ts'],
  esbuildOptions(options) {
    options.alias = { 'fp-ts/lib': 'fp-ts/es6', 'io-ts': 'io-ts/es6/index.js' };
    options.mainFields = ['module', 'main'];
  },
});

// The bundler of declarations takes the types in `export * as` for values; the index has no logic, so its own text, pointed
// at the built chapters, is its declaration.
const index = readFileSync('src/index.ts', 'utf8');
for (const [types, code] of [
  ['d.ts', 'js'],
  ['d.cts', 'cjs'],
]) {
  writeFileSync(`dist/index.${types}`, index.replaceAll(/'\.\/(\w+)(?:\/index)?\.js'/g, `'./$1.${code}'`));
}
