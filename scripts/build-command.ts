/** Writes dist/command.js, the program behind `npx trailer-ratings`. It imports the built chapters, so that no code is shipped twice. */
import { chmodSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'tsup';

/** The path of a built chapter, relative to dist. */
const builtChapter = (path: string): string => `./${path.replace(/^\.\.\//, '').replace(/(\/index)?\.js$/, '')}.js`;

export async function buildCommand(outDir = 'dist', silent = false): Promise<void> {
  await build({
    config: false,
    outDir,
    silent,
    entry: { command: 'src/command/command.ts' },
    format: ['esm'],
    target: 'es2022',
    platform: 'node',
    splitting: false,
    clean: false,
    noExternal: ['fp-ts'],
    banner: { js: '#!/usr/bin/env node' },
    esbuildOptions(options) {
      options.alias = { 'fp-ts/lib': 'fp-ts/es6' };
    },
    esbuildPlugins: [
      {
        name: 'built chapters',
        setup({ onResolve }) {
          onResolve({ filter: /^\.\.\/\w+(\/index)?\.js$/ }, ({ path }) => ({
            path: builtChapter(path),
            external: true,
          }));
        },
      },
    ],
  });
  chmodSync(join(outDir, 'command.js'), 0o755);
}
