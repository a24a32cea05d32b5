/** Questions about a piece of cargo are decided once, and every heading that depends on them reads that one answer. */
import { describe, expect, it } from 'vitest';
import { type Assessment, assessJson } from '../../../src/assessment/index.js';
import { leftOf, plain, rightOf } from '../../helpers/either.js';
import { changed, tiltDeck } from '../../helpers/specs.js';

const run = (...changes: readonly (readonly [string, unknown])[]): Assessment =>
  rightOf(assessJson(changes.reduce<unknown>((spec, [path, value]) => changed(spec, path, value), tiltDeck())));
const piece = (name: string, weight: string, more: object = {}): object => ({ name, weight, at: '180 in', ...more });

/** How often an answer decides something about two figures of these names. */
const asked = ({ decisions }: Assessment, left: string, comparison: string, right: string): number =>
  decisions.filter((each) => each.left.symbol === left && each.comparison === comparison && each.right.symbol === right)
    .length;

describe('a piece', () => {
  it('is asked once whether it weighs nothing, though place, ramps, tail and tiedowns depend on it', () => {
    const { decisions } = run();
    const ofWeight = decisions.filter(
      ({ left, comparison, right }) =>
        left.symbol === 'excavator weight' && comparison === '<=' && right.value.value.isZero(),
    );
    expect(ofWeight).toHaveLength(1);
  });
  it('is held against the others by weight once for the rating of the ramps', () => {
    const two = run(['cargo', [piece('loader', '5,000 lb'), piece('plate', '900 lb')]], ['trailer.deck', undefined]);
    // Once for the ramps, once for their limit on the load, once for the tail of a trailer without a deck.
    expect(asked(two, 'plate weight', '>', 'loader weight')).toBe(3);
  });
});

describe('cargo of no weight on rated ramps', () => {
  const none = [piece('crate', '0 lb'), piece('rack', '0 lb')];
  const byRamps = ({ payload }: Assessment): readonly number[] =>
    (payload?.limits ?? []).filter(({ name }) => name === 'ramps').map(({ limit }) => plain(limit));
  it('has no proportions: the ramps bear one piece as heavy as their rating', () => {
    const answer = run(['cargo', none]);
    expect(byRamps(answer)).toEqual([14000]);
    expect(answer.notChecked.map(({ id }) => id)).toContain('ramps/rating');
  });
  it('has none by axle either, and then the ramps limit no load', () => {
    const wheeled = [piece('crate', '0 lb', { axles: ['10 lb', '10 lb'] }), piece('rack', '0 lb')];
    expect(byRamps(run(['cargo', wheeled], ['trailer.ramps.basis', 'axle']))).toEqual([]);
  });
  it('has no axle of nothing: such an axle load is refused at its key', () => {
    const spec = changed(tiltDeck(), 'cargo.0.axles', ['5,000 lb', '0 lb']);
    expect(leftOf(assessJson(spec))).toMatchObject({
      tag: 'UndecodableSpec',
      problems: [{ path: 'cargo.0.axles.1', fault: 'out of range' }],
    });
  });
});
