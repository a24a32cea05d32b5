/** How far words are from each other: the distance of Levenshtein (1965), with the examples every description of it gives. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { editDistance } from '../../src/units/internal.js';
import { nearestKeys } from '../../src/units/text.js';

describe('the distance of two words', () => {
  it.each([
    ['kitten', 'sitting', 3],
    ['saturday', 'sunday', 3],
    ['flaw', 'lawn', 2],
    ['gvwr', 'gvwr', 0],
    ['gvwr', 'GVWR', 0],
    ['', 'axle', 4],
    ['axle', 'axles', 1],
    ['axles', 'axle', 1],
  ])('%s to %s is %s', (one, other, far) => {
    expect(editDistance(one, other)).toBe(far);
    expect(editDistance(other, one)).toBe(far);
  });
  it('is no more than the longer word, no less than the difference of the lengths, and cut at forty letters', () => {
    const word = fc.stringMatching(/^[a-c]{0,12}$/);
    fc.assert(
      fc.property(word, word, (one, other) => {
        const far = editDistance(one, other);
        expect(far).toBeLessThanOrEqual(Math.max(one.length, other.length));
        expect(far).toBeGreaterThanOrEqual(Math.abs(one.length - other.length));
      }),
      { numRuns: 200, seed: 5 },
    );
    const long = 'a'.repeat(40);
    expect([editDistance(`${long}b`, `${long}c`), editDistance(`${'a'.repeat(39)}b`, `${'a'.repeat(39)}c`)]).toEqual([
      0, 1,
    ]);
  });
  it('gives the three nearest keys, the nearest first, each once', () => {
    const keys = ['weight', 'height', 'wait', 'eight', 'weight'];
    expect(nearestKeys(keys, (key) => editDistance('weigh', key))).toEqual(['weight', 'height', 'eight']);
  });
});
