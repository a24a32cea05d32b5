/** Everything about the tongue load in one place, in agreement with every other part of the answer. */
import { describe, expect, it } from 'vitest';
import { type Assessment, assessJson } from '../../../src/assessment/index.js';
import { rightOf } from '../../helpers/either.js';
import { changed, tiltDeck } from '../../helpers/specs.js';

const run = (...changes: readonly (readonly [string, unknown])[]): Assessment =>
  rightOf(assessJson(changes.reduce<unknown>((spec, [path, value]) => changed(spec, path, value), tiltDeck())));

describe('the tongue of an answer', () => {
  it('has the load and the share of the balance', () => {
    const { tongue, weights } = run();
    expect([tongue?.load, tongue?.share]).toEqual([weights.balance?.tongue, weights.balance?.tongueShare]);
  });
  it('has every check of a tongue load, bars on and off level too, and no other', () => {
    const { tongue, checks } = run(
      ['trailer.coupler.tongue', '1,900 lb'],
      ['tow.receiver.tongue', '1,400 lb'],
      ['tow.ballMount.tongue', '1,400 lb'],
      ['tow.tongueRating', '1,400 lb'],
    );
    const byName = checks.filter(({ what }) => what.startsWith('tongue against '));
    expect(tongue?.checks).toEqual(byName);
    expect(tongue?.checks.map(({ id }) => id)).toEqual(
      expect.arrayContaining(['coupler/tongue', 'tow/receiver/tongue', 'tow/ball-mount/tongue', 'tow/tongue-rating']),
    );
  });
  it('says by which side it misses its guideline', () => {
    expect(run(['cargo.0.front', '130 in']).tongue?.guideline.verdict).toBe('light');
    expect(run(['cargo.0.front', '90 in']).tongue?.guideline.verdict).toBe('heavy');
  });
  it('lists its own lifts among those of the whole', () => {
    const { tongue, uplift } = run(['cargo.0.front', '200 in']);
    expect(tongue?.uplift.map(({ what }) => what)).toEqual(['tongue']);
    expect(uplift.lifted).toEqual(expect.arrayContaining([...(tongue?.uplift ?? [])]));
    expect(run().tongue?.uplift).toEqual([]);
  });
  it('is left out where the balance is not known', () => {
    expect(run(['trailer.curb', { weight: '3,650 lb' }]).tongue).toBeUndefined();
  });
});
