/** Writes docs/sources.md. */
import { writeFileSync } from 'node:fs';
import { sourcesPage } from './sources-page.js';

writeFileSync('docs/sources.md', await sourcesPage());
