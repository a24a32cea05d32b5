/**
 * The guides: each has a worked case, its figure, two exercises with their key, cautions and sources; its figures are those the library
 * draws.
 *
 * `UPDATE=1 npx vitest run tests/docs/guides` writes the figures anew; look at them before committing.
 */
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { guideFigures, guideFiles } from '../../scripts/guide-figures.js';

const folder = join(import.meta.dirname, '../../docs/guide');
const pages = readdirSync(folder).filter((file) => /^\d\d-.*\.md$/.test(file));
const textOf = (file: string): string => readFileSync(join(folder, file), 'utf8');

describe('the guides', () => {
  it('are eleven, in an order, and the list of guides has each by its title', () => {
    expect(pages.map((file) => Number(file.slice(0, 2)))).toEqual(Array.from({ length: 11 }, (_, i) => i + 1));
    const list = textOf('README.md');
    for (const file of pages) expect(list).toContain(`[${textOf(file).split('\n')[0]?.slice(2)}](${file})`);
  });

  it.each(pages)('%s has all its parts', (file) => {
    const text = textOf(file);
    const headings = [...text.matchAll(/^## (.*)$/gm)].map(([, heading]) => heading);
    expect(headings).toEqual(['A worked case', 'Exercises', 'Cautions', 'Sources']);
    expect(text).toMatch(/<img src="figures\/[\w-]+\.svg" alt="[^"]{20,}">/);
    const [asked = '', key = ''] = (text.split('## Exercises')[1] ?? '').split('<details><summary>Key</summary>');
    expect(asked.match(/^\d\. /gm)).toEqual(['1. ', '2. ']);
    expect(key.match(/^\d\. /gm)).toEqual(['1. ', '2. ']);
    expect(key, 'the key is run').toContain('```ts');
    expect(text, 'ends in the way on').toContain('[all guides](README.md)');
  });

  it('show every figure there is, and no other', () => {
    const shown = pages.flatMap((file) =>
      [...textOf(file).matchAll(/figures\/([\w-]+)\.svg"/g)].map(([, name]) => name),
    );
    const files = Object.entries(guideFigures).flatMap(([name, draw]) => guideFiles(name, draw).map(([file]) => file));
    expect([...new Set(shown)].map((name) => `${name}.svg`).sort()).toEqual(files.sort());
    expect(readdirSync(join(folder, 'figures')).sort()).toEqual(files.sort());
  });
});

describe.each(Object.entries(guideFigures))('figure %s', (name, draw) => {
  it.each(guideFiles(name, draw))('%s is what the library draws', (file, svg) => {
    const path = join(folder, 'figures', file);
    const lines = `${svg.replaceAll('><', '>\n<')}\n`;
    if (process.env.UPDATE === '1') {
      mkdirSync(join(folder, 'figures'), { recursive: true });
      writeFileSync(path, lines);
    }
    expect(lines).toBe(readFileSync(path, 'utf8'));
  });
});
