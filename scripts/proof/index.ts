/** Writes docs/proof.md. */
import { writeFileSync } from 'node:fs';
import { proofPage } from './page.js';

writeFileSync('docs/proof.md', await proofPage());
