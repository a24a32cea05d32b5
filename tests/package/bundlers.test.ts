/** The package through four bundlers, and the result in Node and in a browser under a strict content policy. */
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { build as esbuild } from 'esbuild';
import { rollup } from 'rollup';
import { build as vite } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import webpack from 'webpack';
import { browserIsThere, launch } from '../helpers/browser.js';
import { installPackage, nodeIn, scratchFolder } from '../helpers/consumer.js';

const scratch = scratchFolder('bundlers');
const folder = join(scratch, 'bundles');
const entry = join(scratch, 'app.mjs');
const spec = readFileSync(join(import.meta.dirname, '../../examples/tilt-deck.json'), 'utf8');

/** An application: the first page of the example, on the console, or in the document when there is one. */
const app = `
import { assess } from 'trailer-ratings/assessment';
import { orThrow } from 'trailer-ratings/errors';
import { brief } from 'trailer-ratings/print';
const text = brief(orThrow(assess(${spec})));
if (typeof document === 'undefined') console.log(text);
else document.body.textContent = text;
`;

let expected = '';
let installed = '';
beforeAll(async () => {
  installed = await installPackage(scratch);
  mkdirSync(folder);
  writeFileSync(join(folder, 'package.json'), '{"type":"commonjs"}');
  writeFileSync(entry, app);
  expected = nodeIn(scratch, entry).trim();
}, 900_000);
afterAll(() => rmSync(scratch, { recursive: true, force: true }));

/** Rollup itself finds no packages: the export map is followed here, and decimal.js by its module file. */
const packages = {
  name: 'packages',
  resolveId: (id: string): string | null => {
    if (id === 'decimal.js') return join(scratch, 'node_modules/decimal.js/decimal.mjs');
    return id.startsWith('trailer-ratings/') ? join(installed, 'dist', `${id.split('/')[1]}.js`) : null;
  },
};

const byWebpack = (): Promise<void> =>
  new Promise((resolve, reject) => {
    const settings: webpack.Configuration = {
      mode: 'production',
      target: ['web', 'es2022'],
      entry,
      context: scratch,
      output: { path: folder, filename: 'webpack.js' },
      performance: false,
    };
    webpack(settings, (problem, stats) => {
      if (problem !== null || stats?.hasErrors() === true) reject(problem ?? new Error(stats?.toString()));
      else resolve();
    });
  });

const bundlers: Readonly<Record<string, () => Promise<unknown>>> = {
  esbuild: () =>
    esbuild({
      entryPoints: [entry],
      bundle: true,
      minify: true,
      format: 'iife',
      outfile: join(folder, 'esbuild.js'),
    }),
  rollup: async () => {
    const bundle = await rollup({
      input: entry,
      plugins: [packages],
      onwarn: (warning) => {
        throw new Error(warning.message);
      },
    });
    await bundle.write({ file: join(folder, 'rollup.js'), format: 'iife' });
  },
  vite: () =>
    vite({
      root: scratch,
      configFile: false,
      logLevel: 'error',
      build: {
        lib: { entry, formats: ['iife'], name: 'app', fileName: () => 'vite.js' },
        outDir: folder,
        emptyOutDir: false,
      },
    }),
  webpack: byWebpack,
};

/** What the page shows when the script is let in by a policy that allows nothing else: no inline code, no code from text. */
async function shownInBrowser(file: string): Promise<string> {
  const policy = "default-src 'none'; script-src 'self'; require-trusted-types-for 'script'";
  const server = createServer(({ url }, response) => {
    const isScript = url === `/${file}`;
    response.setHeader('content-security-policy', policy);
    response.setHeader('content-type', isScript ? 'text/javascript' : 'text/html');
    response.end(isScript ? readFileSync(join(folder, file)) : `<!doctype html><body><script src="/${file}"></script>`);
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const browser = await launch();
  try {
    const page = await browser.newPage();
    const problems: string[] = [];
    page.on('pageerror', (problem) => problems.push(problem.message));
    page.on('console', (message) => {
      if (message.type() === 'error') problems.push(message.text());
    });
    await page.goto(`http://127.0.0.1:${(server.address() as AddressInfo).port}/page`);
    const text = (await page.textContent('body')) ?? '';
    return [...problems.filter((problem) => !problem.includes('favicon')), text].join('\n');
  } finally {
    await browser.close();
    server.close();
  }
}

describe('bundled', () => {
  it.each(Object.entries(bundlers))(
    'by %s it says what it says in Node',
    async (name, bundle) => {
      await bundle();
      expect(nodeIn(scratch, join(folder, `${name}.js`)).trim()).toBe(expected);
      expect(expected.length).toBeGreaterThan(100);
    },
    300_000,
  );
  it.skipIf(!browserIsThere).each(['esbuild', 'webpack'])(
    'by %s it runs in a browser that allows no code from text',
    async (name) => expect((await shownInBrowser(`${name}.js`)).trim()).toBe(expected),
    300_000,
  );
});
