/** A spec is refused by the reader alone, at keys; whatever can be read is answered, however wild its figures are. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { assessJson } from '../../../src/assessment/index.js';
import { hostileSpec } from '../../helpers/hostile-specs.js';
import { fewOf, lawSeeds } from '../../helpers/law-seeds.js';
import { wildSpec } from '../../helpers/wild-specs.js';

describe('a spec with one wild figure, or with whatever nobody should send', () => {
  const others: string[] = [];
  const asked = { answered: 0, refused: 0 };
  for (const seed of lawSeeds(250))
    for (const spec of [wildSpec(seed), hostileSpec(seed)]) {
      const found = assessJson(spec);
      if (!isLeft(found)) asked.answered += 1;
      else if (found.left.tag === 'UndecodableSpec') asked.refused += 1;
      else others.push(`seed ${seed}: ${found.left.tag} at ${found.left.path ?? 'no key'}`);
    }
  it('is refused for what cannot be read, or for figures that contradict each other, at their keys', () =>
    expect(fewOf(others)).toEqual([]));
  it('was asked both ways', () => {
    expect(asked.answered).toBeGreaterThan(0);
    expect(asked.refused).toBeGreaterThan(0);
  });
});
