/** `npm run docs`: builds the site into out/site; a broken comment or a dead link is an error. */
import { rmSync } from 'node:fs';
import { resolve } from 'node:path';
import { deadLinks } from './dead-links.js';
import { buildSite } from './site.js';

const folder = 'out/site';
rmSync(folder, { recursive: true, force: true });
if (!(await buildSite(folder))) process.exit(1);
const dead = deadLinks(folder);
for (const { page, link } of dead) console.error(`dead link in ${page}: ${link}`);
if (dead.length > 0) process.exit(1);
console.log(resolve(folder, 'index.html'));
