/** What a registry shows and a user unpacks: every link of README and guides leads to a file of the tarball, licences are there. */
import { execSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join, normalize } from 'node:path';
import { describe, expect, it } from 'vitest';

const project = join(import.meta.dirname, '../..');
const read = (file: string): string => readFileSync(join(project, file), 'utf8');
const manifest = JSON.parse(read('package.json')) as Readonly<Record<string, unknown>>;

/** What npm would pack, without building: `dist` stands there only after a build. */
const [packed] = JSON.parse(
  execSync('npm pack --dry-run --json --ignore-scripts', {
    cwd: project,
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'ignore'],
  }),
) as [{ files: { path: string }[] }];
const files = new Set(packed.files.map(({ path }) => path).filter((path) => !path.startsWith('dist/')));
const pages = [...files].filter((file) => file.endsWith('.md'));

const linksOf = (page: string): readonly string[] =>
  [...read(page).matchAll(/\]\(([^)\s]+)\)|src(?:set)?="([^"\s]+)"/g)]
    .map(([, link, image]) => (link ?? image) as string)
    .filter((link) => !/^(https?:|#|mailto:)/.test(link))
    .map((link) => link.replace(/#.*$/, ''));

describe('the tarball', () => {
  it('holds README, licences, guides, sources, schema, verifiers and example specs', () => {
    for (const file of [
      'README.md',
      'LICENSE',
      'NOTICES.md',
      'CHANGELOG.md',
      'docs/sources.md',
      'docs/spec.schema.json',
      'docs/verify.html',
      'docs/verify_answer.py',
      'docs/guide/install-and-first-assessment.md',
      'docs/guide/behind-a-form.md',
      'docs/guide/keep-and-send-answers.md',
      'docs/guide/bundle-it.md',
      'examples/tilt-deck.json',
      'examples/tilt-deck-16.json',
    ])
      expect(files.has(file), file).toBe(true);
  });
  it('holds no tests, scripts, sources, benchmarks or leavings of tools', () => {
    expect([...files].filter((file) => /^(tests|scripts|src|bench|out)\/|__pycache__|\.pyc$/.test(file))).toEqual([]);
  });
  it.each(pages)('%s links to nothing that is not there', (page) => {
    const missing = linksOf(page)
      .map((link) => normalize(join(page, '..', link)).replaceAll('\\', '/'))
      .filter((file) => !files.has(file));
    expect(missing).toEqual([]);
  });
  it('names in README only files that it holds', () => {
    const named = [...read('README.md').matchAll(/`((?:docs|examples)\/[\w./-]+\.\w+)`/g)].map(
      ([, file]) => file as string,
    );
    expect(named.filter((file) => !files.has(file))).toEqual([]);
  });
});

describe('package.json', () => {
  it('has keywords and a command, runs nothing at installation, and invents no address', () => {
    expect((manifest['keywords'] as string[]).length).toBeGreaterThan(5);
    expect(manifest['bin']).toEqual({ 'trailer-ratings': './dist/command.js' });
    for (const script of ['preinstall', 'install', 'postinstall', 'prepare'])
      expect(manifest['scripts']).not.toHaveProperty(script);
    for (const field of ['repository', 'homepage', 'bugs', 'author', 'funding'])
      expect(manifest).not.toHaveProperty(field);
  });
});

describe('NOTICES.md', () => {
  it.each(['fp-ts', 'io-ts'])('holds the licence of %s, as its package prints it', (name) => {
    const licence = join(project, 'node_modules', name, 'LICENSE');
    expect(existsSync(licence)).toBe(true);
    expect(read('NOTICES.md')).toContain(readFileSync(licence, 'utf8').trim());
  });
});
