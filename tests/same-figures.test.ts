/**
 * The answers to random specs are those that were stored: a change of the code that should not change figures has not.
 * One that should is told by `npx tsx scripts/same-figures.ts --show SEED` before and after, and stored with `--write`.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type BlockDigest, blockCount, digestOfBlock } from './helpers/outline-digests.js';

const stored = JSON.parse(
  readFileSync(new URL('./same-figures.json', import.meta.url), 'utf8'),
) as readonly BlockDigest[];

/** A sample of the blocks here; `npx tsx scripts/same-figures.ts` compares all. */
const sample = [0, 17, 34, 51];

describe('answers to random specs', () => {
  it('are stored for every block', () => {
    expect(stored.length).toBe(blockCount);
  });
  it.each(sample)('block %i is as stored', (block) => {
    expect(digestOfBlock(block)).toEqual(stored[block]);
  });
});
