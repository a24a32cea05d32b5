/** Links lead somewhere: in the documents of the repository, and in the site, where `npm run docs` fails for a dead one. */
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { deadLinks } from '../../scripts/dead-links.js';

const project = join(import.meta.dirname, '../..');
const documents = [
  'README.md',
  'CONTRIBUTING.md',
  'DEVELOPERS.md',
  ...readdirSync(join(project, 'docs'), { recursive: true, encoding: 'utf8' })
    .map((file) => `docs/${file.replaceAll('\\', '/')}`)
    .filter((file) => file.endsWith('.md') && !file.startsWith('docs/api/')),
];

describe('links of the documents', () => {
  it.each(documents)('%s', (document) => {
    const text = readFileSync(join(project, document), 'utf8').replace(/^```[\s\S]*?^```/gm, '');
    const links = [
      ...[...text.matchAll(/\]\(([^)\s]+)\)/g)].map(([, link]) => link ?? ''),
      ...[...text.matchAll(/\s(?:src|srcset)="([^"]+)"/g)].map(([, link]) => link ?? ''),
    ].filter((link) => !/^(?:https?:|mailto:|#)/.test(link));
    const dead = links.filter((link) => !existsSync(join(project, dirname(document), link.split('#')[0] ?? '')));
    expect(dead).toEqual([]);
  });
});

describe('dead links of a site', () => {
  const folder = mkdtempSync(join(tmpdir(), 'site-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  const write = (file: string, text: string): void => {
    mkdirSync(dirname(join(folder, file)), { recursive: true });
    writeFileSync(join(folder, file), text);
  };
  write('a/x.svg', '<svg/>');
  write('b.html', '<h1 id="top">b</h1><p id="two words">c</p>');
  write(
    'a/index.html',
    `<a href="../b.html">b</a><a href="../b.html#top">top</a><a href="../b.html#two%20words">w</a><a href="#here">here</a><p id="here"></p>
     <img src="x.svg"><source srcset="x.svg 1x, y.svg 2x"><a href="https://example.org/">out</a><script src="gone.js">const a = '<a href="no.html">';</script>
     <a href="../b.html#gone">g</a><a href="../../outside.html">o</a><a href="c.html">c</a><a href="#nowhere">n</a>`,
  );
  it('are those to a missing file, a missing heading, or out of the folder; images and scripts too', () => {
    expect(
      deadLinks(folder)
        .map(({ page, link }) => `${page}: ${link}`)
        .sort(),
    ).toEqual(
      ['#nowhere', '../../outside.html', '../b.html#gone', 'c.html', 'gone.js', 'y.svg'].map(
        (link) => `a/index.html: ${link}`,
      ),
    );
  });
});
