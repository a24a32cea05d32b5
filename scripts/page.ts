/** Builds the page: one file with its script and its style inside, under a policy that allows exactly these two. */
import { createHash } from 'node:crypto';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { build } from 'esbuild';
import { figureStyles } from '../src/figures/index.js';
import { cautions } from '../src/print/index.js';

const hashOf = (text: string): string => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;

/** Bundles the library with the page's own script. */
async function script(): Promise<string> {
  const made = await build({
    entryPoints: ['examples/page/main.ts'],
    bundle: true,
    minify: true,
    write: false,
    format: 'iife',
    target: 'es2022',
    charset: 'utf8',
    legalComments: 'none',
    mainFields: ['module', 'main'],
    alias: { 'fp-ts/lib': 'fp-ts/es6', 'io-ts': 'io-ts/es6/index.js' },
  });
  // A text that would end the script of the page is written so that it does not.
  return (made.outputFiles[0]?.text ?? '').replaceAll('</script', '<\\/script');
}

/** The whole page as one text. */
export async function pageText(): Promise<string> {
  const [code, style] = [await script(), `${figureStyles}${readFileSync('examples/page/page.css', 'utf8')}`];
  const policy = `default-src 'none'; script-src ${hashOf(code)}; style-src ${hashOf(style)}; img-src data:; base-uri 'none'; form-action 'none'`;
  const parts: Readonly<Record<string, string>> = {
    policy,
    style,
    script: code,
    cautions: cautions.map((caution) => `<li>${caution}</li>`).join(''),
  };
  return readFileSync('examples/page/index.html', 'utf8').replace(
    /\{\{(\w+)\}\}/g,
    (_, name: string) => parts[name] ?? '',
  );
}

/** Writes it into a folder and gives back where. */
export async function writePage(folder: string): Promise<string> {
  mkdirSync(folder, { recursive: true });
  const file = resolve(folder, 'index.html');
  writeFileSync(file, await pageText());
  return file;
}
