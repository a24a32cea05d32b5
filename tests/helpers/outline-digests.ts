/** Outlines of many specs as digests, in blocks, so that a change of answers is found and placed by comparing a small file. */
import { createHash } from 'node:crypto';
import { brokenSpec } from './broken-specs.js';
import { type Aspect, aspects, outlineOf } from './outline.js';
import { randomSpec } from './random-specs.js';

/** So many specs to a block; every tenth comes broken as well. */
export const blockSize = 100;
export const blockCount = 52;

export type BlockDigest = Readonly<Record<Aspect, string>>;

/** The specs of a seed: its random spec, and for every tenth the broken one. */
export function specsOfSeed(seed: number): readonly unknown[] {
  const broken = seed % 10 === 0 ? brokenSpec(seed) : undefined;
  return broken === undefined ? [randomSpec(seed)] : [randomSpec(seed), broken.spec];
}

/** One short digest an aspect. */
export function digestOfBlock(block: number): BlockDigest {
  const hashes = aspects.map((aspect) => ({ aspect, hash: createHash('sha256') }));
  for (let seed = block * blockSize; seed < (block + 1) * blockSize; seed += 1)
    for (const spec of specsOfSeed(seed)) {
      const outline = outlineOf(spec);
      for (const { aspect, hash } of hashes) hash.update(`${seed}\n${outline[aspect].join('\n')}\n`);
    }
  return Object.fromEntries(
    hashes.map(({ aspect, hash }) => [aspect, hash.digest('hex').slice(0, 12)]),
  ) as unknown as BlockDigest;
}
