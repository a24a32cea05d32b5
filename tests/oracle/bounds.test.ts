/** Every double of an answer is within its bound of the exact decimal, in 34 digits and in 60. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { assessJson } from '../../src/assessment/index.js';
import { randomSpec } from '../helpers/random-specs.js';
import { tiltDeck } from '../helpers/specs.js';
import { checkBounds, type FoundBounds } from './bounds-of.js';

const count = process.env['ORACLE'] === 'long' ? 4000 : 25;

describe('bounds', () => {
  it('hold for every figure of random answers', { timeout: 7_200_000 }, () => {
    const found: FoundBounds = { nodes: 0, exact: 0, wrong: [] };
    for (let seed = 0; seed < count; seed += 1) {
      const answer = assessJson(seed === 0 ? tiltDeck() : randomSpec(seed));
      if (!isLeft(answer)) checkBounds(answer.right, found);
    }
    expect(found.wrong).toEqual([]);
    expect(found.nodes).toBeGreaterThan(100 * count);
    // Whole pounds and inches, their sums, halves and moments: what round-number trailers are made of.
    expect(found.exact).toBeGreaterThan(found.nodes / 4);
  });
});
