/** Tags as bits of a whole number: 31 of their own, the last one for all others. */
import { expect, it } from 'vitest';
import { namesOf } from '../../../src/study/run/name-index.js';
import { bitsOf, tagsOf, verdictCode, verdictNames } from '../../../src/study/run/verdict-codes.js';

it('verdicts are numbered from the gravest', () => {
  expect(verdictNames.map(verdictCode)).toEqual([0, 1, 2, 3]);
  expect(verdictNames).toEqual(['over', 'attention', 'within', 'unchecked']);
});

it('tags have a bit each, up to the 31st; those beyond share the last', () => {
  const names = namesOf();
  const tags = Array.from({ length: 35 }, (_, i) => `tag ${i}`);
  for (const [i, tag] of tags.entries()) {
    const bits = bitsOf([tag], names);
    expect(bits).toBe(2 ** Math.min(i, 31));
    expect(tagsOf(bits, names.names)).toEqual([i < 31 ? tag : 'others']);
  }
  expect(names.names.length).toBe(32);
  expect(bitsOf(['tag 0', 'tag 2', 'tag 34'], names)).toBe(1 + 4 + 2 ** 31);
  expect(tagsOf(1 + 4 + 2 ** 31, names.names)).toEqual(['tag 0', 'tag 2', 'others']);
  expect(tagsOf(0, names.names)).toEqual([]);
  expect(bitsOf([], names)).toBe(0);
});
