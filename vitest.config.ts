import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const src = (file: string): string => fileURLToPath(new URL(`src/${file}`, import.meta.url));

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    testTimeout: 60_000,
    pool: 'threads',
  },
  resolve: {
    // The examples in the documents import the package by its name; here that is the source.
    alias: [
      { find: /^trailer-ratings$/, replacement: src('index.ts') },
      { find: /^trailer-ratings\/errors$/, replacement: src('errors.ts') },
      { find: /^trailer-ratings\/(\w+)$/, replacement: src('$1/index.ts') },
    ],
  },
});
