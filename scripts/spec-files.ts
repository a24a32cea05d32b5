/**
 * What is made of the table of keys: the types of the spec, the tables of the guide, the JSON Schema.
 *
 * `npm run keys` writes them; a test compares them with the files.
 */
import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { guideWith } from './spec-guide.js';
import { typeFiles } from './spec-types.js';

/** Every file that is made of the table, by its path, with its text. */
export async function specFiles(): Promise<ReadonlyMap<string, string>> {
  const files = new Map(typeFiles());
  // The types must be there before the schema, which imports them, can be.
  const { specJsonSchema } = await import('../src/spec/schema.js');
  files.set('docs/guide/spec.md', guideWith(readFileSync('docs/guide/spec.md', 'utf8')));
  files.set('docs/spec.schema.json', `${JSON.stringify(specJsonSchema(), null, 2)}\n`);
  return files;
}

async function write(): Promise<void> {
  const files = await specFiles();
  for (const [file, text] of files) writeFileSync(file, text);
  const types = [...files.keys()].filter((file) => file.endsWith('.ts'));
  execFileSync('npx', ['biome', 'format', '--write', ...types], { stdio: 'ignore' });
}

// No `await` at the top: the runner of mutants reads this file with the tests, and they are no module then.
if (process.argv[1]?.endsWith('spec-files.ts') === true) void write();
