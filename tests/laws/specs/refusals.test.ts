/** A spec is refused by the reader alone, at keys; whatever can be read is answered, however wild its figures are. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { assessJson } from '../../../src/assessment/index.js';
import { hostileSpec } from '../../helpers/hostile-specs.js';
import { fewOf, lawSeeds } from '../../helpers/law-seeds.js';
import { chanceOf } from '../../helpers/random/chance.js';
import { digitsAndUnit, figuresIn } from '../../helpers/random/leaves.js';
import { type JsonSpec, randomSpec } from '../../helpers/random-specs.js';
import { changed } from '../../helpers/specs.js';

/** One figure of a random spec, a thousandth of what it was, or none, or twenty times as much. */
function wild(seed: number): JsonSpec {
  const spec = randomSpec(seed);
  const chance = chanceOf(seed + 0xf16);
  const [first, ...more] = figuresIn(spec);
  if (first === undefined) return spec;
  const { path, value } = chance.pick([first, ...more]);
  const { digits, unit } = digitsAndUnit(value);
  return changed(spec, path, `${Number(digits) * chance.pick([0, -1, 0.001, 0.2, 4, 20])} ${unit}`);
}

describe('a spec with one wild figure, or with whatever nobody should send', () => {
  const others: string[] = [];
  const asked = { answered: 0, refused: 0 };
  for (const seed of lawSeeds(250))
    for (const spec of [wild(seed), hostileSpec(seed)]) {
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
