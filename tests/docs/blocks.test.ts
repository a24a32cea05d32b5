/** Every program in the documents runs and prints exactly the text under it; a list of examples gives the results it shows. */
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it, vi } from 'vitest';
import { exampleOf, run as runExample } from './run-example.js';
import { saysSo, told } from './told.js';

const project = join(import.meta.dirname, '../..');
const docs = readdirSync(join(project, 'docs'), { recursive: true, encoding: 'utf8' })
  .map((file) => `docs/${file.replaceAll('\\', '/')}`)
  .filter((file) => file.endsWith('.md') && !file.startsWith('docs/api/'));
const documents = [...['README.md', 'DEVELOPERS.md'].filter((file) => existsSync(join(project, file))), ...docs];

interface Block {
  readonly document: string;
  readonly line: number;
  readonly program: string;
  readonly printed: string | undefined;
}

/** The `ts` blocks of a document, each with the `text` block that follows it, if one does before anything but blank lines. */
function blocksOf(document: string): readonly Block[] {
  const text = readFileSync(join(project, document), 'utf8');
  return [...text.matchAll(/^```ts\n([\s\S]*?)^```\n(?:\s*```text\n([\s\S]*?)^```)?/gm)].map((match) => ({
    document,
    line: text.slice(0, match.index).split('\n').length,
    program: match[1] as string,
    printed: match[2],
  }));
}

const all = documents.flatMap(blocksOf);
const blocks = all.filter(({ program }) => program.includes('import '));
/** Blocks without imports: lines in the form of an `@example`. */
const lists = all
  .filter(({ program }) => !program.includes('import '))
  .flatMap(({ document, program }) =>
    program
      .split('\n')
      .filter((line) => line.trim() !== '')
      .map((line) => ({ document, ...exampleOf(line) })),
  );

async function run({ document, line, program }: Block): Promise<string> {
  const folder = join(project, 'out/blocks');
  mkdirSync(folder, { recursive: true });
  const file = join(folder, `${document.replaceAll(/\W/g, '-')}-${line}.ts`);
  writeFileSync(file, program);
  const printed: string[] = [];
  const log = vi.spyOn(console, 'log').mockImplementation((...parts: unknown[]) => {
    printed.push(parts.map(String).join(' '));
  });
  try {
    await import(/* @vite-ignore */ `${pathToFileURL(file).href}?run=${Date.now()}`);
  } finally {
    log.mockRestore();
  }
  return printed.map((text) => `${text}\n`).join('');
}

/** `UPDATE=1` writes what a program prints under it; read the difference before committing it. */
function rewrite({ document, program, printed }: Block, now: string): void {
  const file = join(project, document);
  const text = readFileSync(file, 'utf8');
  const at = text.indexOf('```text\n', text.indexOf(program) + program.length) + '```text\n'.length;
  writeFileSync(file, text.slice(0, at) + now + text.slice(at + (printed ?? '').length));
}

describe('programs in the documents', () => {
  it('are there', () => expect(blocks.filter(({ printed }) => printed !== undefined).length).toBeGreaterThan(0));
  it.each(blocks)('$document, line $line', async (block) => {
    const printed = await run(block);
    if (block.printed === undefined) return;
    if (process.env.UPDATE === '1') rewrite(block, printed);
    else expect(printed).toBe(block.printed);
  });
});

describe('examples in the documents', () => {
  it.each(lists)('$document: $program', ({ program, result }) => {
    const value = runExample(program, 'rules');
    if (result === undefined) expect(value).toBeDefined();
    else expect(saysSo(result, value), `it gives ${told(value)}, the page says ${result}`).toBe(true);
  });
});
