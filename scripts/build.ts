/** Writes dist/: the code, its types, and the command. */
import { writeFileSync } from 'node:fs';
import { buildCommand } from './build-command.js';
import { buildCode, chapterEntries, indexFor } from './code.js';

await buildCode('dist', { entry: chapterEntries });

// The bundler of declarations takes the types in `export * as` for values; the index has no logic, so its own text, pointed
// at the built chapters, is its declaration.
writeFileSync('dist/index.d.ts', indexFor('js'));
writeFileSync('dist/index.d.cts', indexFor('cjs'));

await buildCommand();
