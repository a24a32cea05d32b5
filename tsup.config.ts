/** The package: one entry a chapter, ESM and CJS with their types; code that chapters share stands in chunks, once. */
import { defineConfig } from 'tsup';
import { chapters } from './scripts/chapters.js';

const chapterEntries = Object.fromEntries(chapters.map(({ name, file }) => [name, file]));

export default defineConfig({
  entry: { ...chapterEntries, index: 'src/index.ts' },
  format: ['esm', 'cjs'],
  target: 'es2022',
  platform: 'neutral',
  dts: { entry: chapterEntries }, // the index: scripts/index-types.ts
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
