/** The package through four bundlers, and the result in Node and in a browser under a strict content policy. */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { build as esbuild } from 'esbuild';
import { chromium } from 'playwright-core';
import { rollup } from 'rollup';
import { build as vite } from 'vite';
import { beforeAll, describe, expect, it } from 'vitest';
import webpack from 'webpack';
import { installed, node, scratch } from './installed.js';

const browser = '/usr/bin/chromium';
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

/** Rollup itself finds no packages: the export map is followed here, and decimal.js by its module file. */
const packages = {
  name: 'packages',
  resolveId: (id: string): string | null => {
    if (id === 'decimal.js') return join(scratch, 'node_modules/decimal.js/decimal.mjs');
    return id.startsWith('trailer-ratings/') ? join(installed, 'dist', `${id.split('/')[1]}.js`) : null;
  },
};

async function byWebpack(): Promise<string> {
  const settings: webpack.Configuration = {
    mode: 'production',
    target: ['web', 'es2022'],
    entry,
    context: scratch,
    output: { path: folder, filename: 'webpack.js' },
    performance: false,
  };
  await new Promise<void>((resolve, reject) => {
    webpack(settings, (problem, stats) => {
      if (problem !== null || stats?.hasErrors() === true) reject(problem ?? new Error(stats?.toString()));
      else resolve();
    });
  });
  return 'webpack.js';
}

const bundlers: Readonly<Record<string, () => Promise<string>>> = {
  esbuild: async () => {
    await esbuild({
      entryPoints: [entry],
      bundle: true,
      minify: true,
      format: 'iife',
      outfile: join(folder, 'esbuild.js'),
    });
    return 'esbuild.js';
  },
  rollup: async () => {
    const bundle = await rollup({
      input: entry,
      plugins: [packages],
      onwarn: (warning) => {
        throw new Error(warning.message);
      },
    });
    await bundle.write({ file: join(folder, 'rollup.js'), format: 'iife' });
    return 'rollup.js';
  },
  vite: async () => {
    const lib = { entry, formats: ['iife' as const], name: 'app', fileName: () => 'vite.js' };
    await vite({
      root: scratch,
      configFile: false,
      logLevel: 'error',
      build: { lib, outDir: folder, emptyOutDir: false },
    });
    return 'vite.js';
  },
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
  const run = await chromium.launch({ executablePath: browser, args: ['--no-sandbox'] });
  try {
    const page = await run.newPage();
    const problems: string[] = [];
    page.on('pageerror', (problem) => problems.push(problem.message));
    page.on('console', (message) => message.type() === 'error' && problems.push(message.text()));
    await page.goto(`http://127.0.0.1:${(server.address() as AddressInfo).port}/page`);
    const text = (await page.textContent('body')) ?? '';
    return [...problems.filter((problem) => !problem.includes('favicon')), text].join('\n');
  } finally {
    await run.close();
    server.close();
  }
}

/** The tests; called where the package is installed. */
export function describeBundlers(): void {
  describe('bundled', () => {
    let expected = '';
    beforeAll(() => {
      mkdirSync(folder);
      writeFileSync(entry, app);
      expected = node(entry).trim();
    });
    it.each(Object.entries(bundlers))(
      'by %s it says what it says in Node',
      async (_, bundle) => {
        const file = await bundle();
        writeFileSync(join(folder, 'package.json'), '{"type":"commonjs"}');
        expect(node(join(folder, file)).trim()).toBe(expected);
        expect(expected.length).toBeGreaterThan(100);
      },
      120_000,
    );
    it.skipIf(!existsSync(browser))(
      'it runs in a browser that allows no code from text',
      async () => {
        expect((await shownInBrowser('esbuild.js')).trim()).toBe(expected);
      },
      120_000,
    );
  });
}
