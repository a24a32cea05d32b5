/** `import.meta` of a file that is bundled into another: it says where the file stood before. */
import { readFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Plugin } from 'esbuild';

export const placed = (text: string, path: string): string =>
  text
    .replaceAll('import.meta.url', JSON.stringify(pathToFileURL(path).href))
    .replaceAll('import.meta.dirname', JSON.stringify(dirname(path)));

/** Places the TypeScript files of a bundle. */
export const placing: Plugin = {
  name: 'placing',
  setup: ({ onLoad }) =>
    onLoad({ filter: /\.ts$/ }, ({ path }) => ({ contents: placed(readFileSync(path, 'utf8'), path), loader: 'ts' })),
};
