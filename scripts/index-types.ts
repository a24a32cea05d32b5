/**
 * The declarations of the package's index. The bundler of declarations takes the types in `export * as` for values; the
 * index has no logic, so its own text, pointed at the built chapters, is its declaration.
 */
import { readFileSync, writeFileSync } from 'node:fs';

const index = readFileSync('src/index.ts', 'utf8');
for (const [types, code] of [
  ['d.ts', 'js'],
  ['d.cts', 'cjs'],
]) {
  writeFileSync(`dist/index.${types}`, index.replaceAll(/'\.\/(\w+)(?:\/index)?\.js'/g, `'./$1.${code}'`));
}
