/** A megabyte of input is read or refused in reasonable time, with a short error. */
import { describe, expect, it } from 'vitest';
import { assessJson } from '../../src/assessment/index.js';
import { describeError } from '../../src/errors.js';
import { decodeSpec } from '../../src/spec/index.js';
import { show } from '../../src/units/index.js';
import { leftOf, rightOf } from '../helpers/either.js';
import { changed, tiltDeck } from '../helpers/specs.js';

describe('a lot of it', () => {
  it('a thousand faults are all named, and told in a few words', () => {
    const pieces = changed(tiltDeck(), 'cargo', new Array(1_000).fill(null));
    const error = leftOf(decodeSpec(pieces));
    expect(error.problems.length).toBe(1_000);
    expect(describeError(error).length).toBeLessThan(2_000);
  });
  it('a key, a name or a figure of a megabyte is cut in the error', () => {
    const long = 'k'.repeat(900_000);
    for (const error of [
      leftOf(assessJson(changed(tiltDeck(), long, 1))),
      leftOf(assessJson(changed(tiltDeck(), 'name', long))),
      leftOf(assessJson(changed(tiltDeck(), 'trailer.gvwr', `${'9'.repeat(900_000)} lb`))),
    ]) {
      expect([error.tag, describeError(error).length < 2_000]).toEqual(['UndecodableSpec', true]);
    }
  });
  it('a thousand pieces of cargo are weighed', () => {
    const piece = { name: 'pallet', weight: '1 lb', at: '182 in' };
    const answer = rightOf(assessJson(changed(tiltDeck(), 'cargo', new Array(1_000).fill(piece))));
    expect(show(answer.weights.gross?.value as never)).toBe('4,650 lb');
  });
  it('a list with holes is a list with faults', () => {
    const holes: unknown[] = [];
    holes[2] = { name: 'pallet', weight: '1 lb', at: '182 in' };
    expect(leftOf(assessJson({ ...tiltDeck(), cargo: holes }))).toMatchObject({ path: 'cargo.0' });
  });
  it.each([
    ['trailer.axles', 13, 'at most 12 axles'],
    ['trailer.axles', 480, 'at most 12 axles'],
    ['cargo', 1_001, 'at most 1000 pieces of cargo'],
    ['trailer.curb.items', 1_001, 'at most 1000 items'],
    ['trailer.curb.added', 1_001, 'at most 1000 added parts'],
    ['trailer.curb.frame', 1_001, 'at most 1000 lines of a cut list'],
    ['trailer.curb.deck', 1_001, 'at most 1000 areas of deck'],
    ['cargo.0.tiedowns', 101, 'at most 100 tiedowns'],
  ])('%s with %i places is one fault that names the most', (path, places, needed) => {
    const { problems } = leftOf(decodeSpec(changed(tiltDeck(), path, new Array(places).fill(null))));
    expect(problems[0]).toMatchObject({ path, fault: 'too many', got: `a list of ${places}`, needed });
  });
});
