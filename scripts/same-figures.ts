/**
 * Do 5,200 random specs still get the answers they got? Compares digests with the stored ones.
 *
 *   npx tsx scripts/same-figures.ts              compare all blocks
 *   npx tsx scripts/same-figures.ts --write      store the digests of today
 *   npx tsx scripts/same-figures.ts --show 317   write out the answers to one seed, to be compared line by line
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { outlineOf } from '../tests/helpers/outline.js';
import {
  type BlockDigest,
  blockCount,
  blockSize,
  digestOfBlock,
  specsOfSeed,
} from '../tests/helpers/outline-digests.js';

const file = new URL('../tests/same-figures.json', import.meta.url);
const [mode, seed] = process.argv.slice(2);

if (mode === '--show') {
  for (const spec of specsOfSeed(Number(seed))) console.log(JSON.stringify(outlineOf(spec), null, 1));
} else {
  const digests = Array.from({ length: blockCount }, (_, block) => digestOfBlock(block));
  if (mode === '--write') {
    writeFileSync(file, `[\n${digests.map((digest) => JSON.stringify(digest)).join(',\n')}\n]\n`);
    console.log(`${blockCount} blocks of ${blockSize} written`);
  } else {
    const stored = JSON.parse(readFileSync(file, 'utf8')) as readonly BlockDigest[];
    const changed = digests.flatMap((digest, block) => {
      const aspects = (Object.keys(digest) as (keyof BlockDigest)[]).filter(
        (each) => digest[each] !== stored[block]?.[each],
      );
      return aspects.length === 0
        ? []
        : [`seeds ${block * blockSize} to ${(block + 1) * blockSize - 1}: ${aspects.join(', ')}`];
    });
    console.log(changed.length === 0 ? 'all answers as stored' : `changed:\n${changed.join('\n')}`);
    process.exitCode = changed.length === 0 ? 0 : 1;
  }
}
