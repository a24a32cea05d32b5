/** The page of sources is up to date with the tables. */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { sourcesPage } from '../../scripts/sources-page.js';

it('docs/sources.md is up to date (npm run sources writes it)', async () => {
  const page = await sourcesPage();
  expect(page).toContain('governs: ');
  expect(readFileSync('docs/sources.md', 'utf8')).toBe(page);
});
