/** A megabyte of input is read or refused in reasonable time, and told in a few words. */
import { describe, expect, it } from 'vitest';
import { assess } from '../../src/assessment/index.js';
import { describeError } from '../../src/errors.js';
import { decodeSpec } from '../../src/spec/index.js';
import { show } from '../../src/units/index.js';
import { leftOf, rightOf } from '../helpers/either.js';
import { changed, tiltDeck } from '../helpers/specs.js';

describe('a lot of it', () => {
  it('a hundred thousand faults are all named, and told in a few words', () => {
    const error = leftOf(decodeSpec(changed(tiltDeck(), 'trailer.axles', new Array(100_000).fill(null))));
    expect(error.problems.length).toBe(100_000);
    expect(describeError(error).length).toBeLessThan(2_000);
  });
  it('a key, a name or a figure of a megabyte is cut in the error', () => {
    const long = 'k'.repeat(900_000);
    for (const error of [
      leftOf(assess(changed(tiltDeck(), long, 1))),
      leftOf(assess(changed(tiltDeck(), 'name', long))),
      leftOf(assess(changed(tiltDeck(), 'trailer.gvwr', `${'9'.repeat(900_000)} lb`))),
    ]) {
      expect([error.tag, describeError(error).length < 2_000]).toEqual(['UndecodableSpec', true]);
    }
  });
  it('two thousand pieces of cargo are weighed', () => {
    const piece = { name: 'pallet', weight: '1 lb', at: '182 in' };
    const answer = rightOf(assess(changed(tiltDeck(), 'cargo', new Array(2_000).fill(piece))));
    expect(show(answer.weights.gross?.value as never)).toBe('5,650 lb');
  });
  it('a list with holes is a list with faults', () => {
    const holes: unknown[] = [];
    holes[2] = { name: 'pallet', weight: '1 lb', at: '182 in' };
    expect(leftOf(assess({ ...tiltDeck(), cargo: holes }))).toMatchObject({ path: 'cargo.0' });
  });
});
