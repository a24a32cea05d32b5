import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const src = (file: string): string => fileURLToPath(new URL(`src/${file}`, import.meta.url));

/** What `npm run test:quick` leaves out: packing and installing takes a minute, the other three a third of what is left. */
const slow = [
  'tests/package/tarball.test.ts',
  'tests/package/form.test.ts',
  'tests/package/compilers.test.ts',
  'tests/package/bundlers.test.ts',
  'tests/study/run/rows-on-tape.test.ts',
  'tests/study/run/other-ways.test.ts',
  'tests/study/run/exact-rows.test.ts',
  'tests/fuzz/assess.test.ts',
  'tests/hosts/prototype.test.ts',
  'tests/browser/**',
];

export default defineConfig(({ mode }) => ({
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: mode === 'quick' ? slow : [],
    isolate: mode !== 'quick', // one reading of src for all files halves the time
    setupFiles: ['tests/helpers/figures-in-tests.ts'],
    testTimeout: 60_000,
    hookTimeout: 120_000,
    pool: 'threads',
    maxWorkers: '100%', // by itself one processor is left idle, of two every second one
    coverage: {
      include: ['src/**/*.ts'],
      reportOnFailure: true,
      reporter: ['text-summary', 'html'],
      reportsDirectory: 'out/coverage',
      thresholds: { lines: 98, branches: 94 },
    },
  },
  resolve: {
    // The examples in the documents import the package by its name; here that is the source.
    alias: [
      { find: /^trailer-ratings$/, replacement: src('index.ts') },
      { find: /^trailer-ratings\/errors$/, replacement: src('errors.ts') },
      { find: /^trailer-ratings\/(\w+)$/, replacement: src('$1/index.ts') },
    ],
  },
}));
