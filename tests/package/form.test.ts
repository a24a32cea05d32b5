/** A scratch app from the packed tarball: type checked strictly, bundled, and used in Chromium as a person would. */
import { cpSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import type { Browser, Page } from 'playwright-core';
import ts from 'typescript';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { browserIsThere, launch } from '../helpers/browser.js';
import { installPackage, scratchFolder } from '../helpers/consumer.js';

const scratch = scratchFolder('form');
const form = join(import.meta.dirname, 'form');
beforeAll(async () => {
  await installPackage(scratch);
  cpSync(form, scratch, { recursive: true });
}, 900_000);
afterAll(() => rmSync(scratch, { recursive: true, force: true }));

it('compiles strictly, library checks on', () => {
  const options: ts.CompilerOptions = {
    module: ts.ModuleKind.ESNext,
    moduleResolution: ts.ModuleResolutionKind.Bundler,
    target: ts.ScriptTarget.ES2022,
    lib: ['lib.es2022.d.ts', 'lib.dom.d.ts', 'lib.dom.iterable.d.ts'],
    types: [],
    strict: true,
    noUncheckedIndexedAccess: true,
    exactOptionalPropertyTypes: true,
    skipLibCheck: false,
    noEmit: true,
  };
  const program = ts.createProgram([join(scratch, 'form.ts')], options);
  const problems = ts.getPreEmitDiagnostics(program);
  expect(problems.map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, '\n'))).toEqual([]);
}, 300_000);

describe.skipIf(!browserIsThere)('a form in Chromium', () => {
  let browser: Browser;
  let page: Page;
  const faults: string[] = [];
  beforeAll(async () => {
    await build({
      entryPoints: [join(scratch, 'form.ts')],
      bundle: true,
      format: 'iife',
      target: 'es2022',
      outfile: join(scratch, 'form.js'),
    });
    const html = readFileSync(join(scratch, 'index.html'), 'utf8');
    const script = readFileSync(join(scratch, 'form.js'), 'utf8').replaceAll('</script', '<\\/script');
    const page_ = html.replace('</html>', () => `<script>${script}</script>\n</html>`);
    writeFileSync(join(scratch, 'page.html'), page_);
    browser = await launch();
    page = await browser.newPage();
    page.on('pageerror', (error) => faults.push(error.message));
    page.on('console', (message) => (message.type() === 'error' ? faults.push(message.text()) : undefined));
    await page.goto(pathToFileURL(join(scratch, 'page.html')).href);
  }, 300_000);
  afterAll(() => browser.close());

  const type = (name: string, text: string): Promise<void> => page.fill(`[name="${name}"]`, text);
  const beside = (name: string): Promise<string | null> =>
    page.locator(`label:has([name="${name}"]) + output`).textContent();
  const textOf = (id: string): Promise<string | null> => page.locator(id).textContent();
  const good = {
    'trailer.gvwr': '9,990 lb',
    'trailer.curb.weight': '2,450 lb',
    'trailer.curb.tongue': '320 lb',
    'trailer.axles.0.at': '166 in',
    'trailer.axles.0.gawr': '9,000 lb',
    'trailer.axles.0.brakes.left': '4,500 lb',
    'trailer.axles.0.brakes.right': '4,500 lb',
    'cargo.0.name': 'loader',
    'cargo.0.weight': '3,000 kg',
    'cargo.0.at': '12\' 4"',
  };

  it('tells every fault at its field, all at once', async () => {
    for (const [name, text] of Object.entries(good)) await type(name, text);
    await type('trailer.gvwr', '9990');
    await type('trailer.axles.0.gawr', '8 stone');
    await type('cargo.0.weight', 'heavy');
    expect(await textOf('#verdict')).toBe('not yet');
    expect(await beside('trailer.gvwr')).toBe('"9990" has no unit; write the unit, e.g. "9,990 lb"');
    for (const name of ['trailer.axles.0.gawr', 'cargo.0.weight']) expect(await beside(name), name).not.toBe('');
    for (const name of ['trailer.curb.weight', 'cargo.0.at']) expect(await beside(name), name).toBe('');
  });
  it('shows the first page when the faults are gone', async () => {
    for (const [name, text] of Object.entries(good)) await type(name, text);
    for (const name of Object.keys(good)) expect(await beside(name), name).toBe('');
    expect(await textOf('#verdict')).toBe('within');
    const brief = (await textOf('#brief')) ?? '';
    expect(brief).toMatch(/Verdict\s+WITHIN/);
    expect(brief).toMatch(/Carries .*7,540 lb/);
    expect(brief.trimEnd().split('\n').length).toBeLessThanOrEqual(20);
  });
  it('follows each key that is typed', async () => {
    await type('cargo.0.weight', '9,000 lb');
    expect(await textOf('#verdict')).toBe('over');
    await type('cargo.0.weight', '3,000 kg');
    expect(await textOf('#verdict')).toBe('within');
  });
  it('sends an answer through a clone and JSON, and verifies what arrives', async () => {
    await page.click('#send');
    expect(await textOf('#verified')).toBe('follows');
  });
  it('ran without an error, under a strict content policy', () => expect(faults).toEqual([]));
});
