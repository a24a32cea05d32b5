/** Which figures of a rig may be moved, how far, and what is then said. */
import { expect, it } from 'vitest';
import { bars, moves, unloading } from '../../../src/choose/remedies/slides.js';
import { decodeSpec } from '../../../src/spec/index.js';
import { rightOf } from '../../helpers/either.js';
import { changed, tiltDeck } from '../../helpers/specs.js';

const onDeck = { front: '60 in', rear: '300 in' };
const spec = (cargo: readonly object[], deck: 'on deck' | 'no deck' = 'on deck') =>
  rightOf(
    decodeSpec(changed(changed(tiltDeck(), 'trailer.deck', deck === 'on deck' ? onDeck : undefined), 'cargo', cargo)),
  );
const piece = (name: string, front: number, length: number) => ({
  name,
  weight: '2,000 lb',
  front: `${front} in`,
  length: `${length} in`,
  balancePoint: '20 in',
});
const reachOf = (...of: Parameters<typeof spec>) =>
  moves(spec(...of)).map(({ path, now, least, most }) => [path, now, least, most]);

it('moves a piece on the deck, and not over its neighbours', () => {
  expect(reachOf([piece('roller', 100, 80)])).toEqual([['cargo.0.front', 100, 60, 220]]);
  expect(reachOf([piece('roller', 100, 80), piece('mower', 200, 50)])).toEqual([
    ['cargo.0.front', 100, 60, 120],
    ['cargo.1.front', 200, 180, 250],
  ]);
  // Face to face already: no way to go between them.
  expect(reachOf([piece('roller', 100, 80), piece('mower', 180, 50)])).toEqual([
    ['cargo.0.front', 100, 60, 100],
    ['cargo.1.front', 180, 180, 250],
  ]);
  // Of three the one in the middle has the least room.
  expect(reachOf([piece('c', 230, 40), piece('a', 70, 40), piece('b', 140, 40)])[2]).toEqual([
    'cargo.2.front',
    140,
    110,
    190,
  ]);
});

it('moves what is a place alone by its balance point, over the whole deck; nothing without a deck', () => {
  const bale = { name: 'bale', weight: '900 lb', at: '150 in' };
  expect(reachOf([bale, piece('roller', 100, 80)])[0]).toEqual(['cargo.0.at', 150, 60, 300]);
  expect(reachOf([bale], 'no deck')).toEqual([]);
  const [move] = moves(spec([bale]));
  expect(move?.says(140.25)).toBe('move bale 9.75 in forward: its balance point 140.25 in behind the coupler');
  expect(moves(spec([piece('roller', 100, 80)]))[0]?.says(104)).toBe(
    'move roller 4 in rearward: its front face 104 in behind the coupler',
  );
});

it('takes half of a piece off at most, and none of one whose axle loads are told', () => {
  const [unload] = unloading(spec([piece('roller', 100, 80)]));
  expect(unload).toMatchObject({ path: 'cargo.0.weight', now: 2000, least: 1000, most: 2000, step: 10 });
  expect(unload?.says(1500)).toMatch(/^take 500 lb off roller, .*1,500 lb at most/);
  expect(unloading(spec([{ ...piece('roller', 100, 80), axles: ['1,000 lb', '1,000 lb'] }]))).toEqual([]);
});

it('sets the bars between a quarter and nearly all of what the front axle lost', () => {
  const [set] = bars(rightOf(decodeSpec(changed(tiltDeck(), 'tow.bars', { restore: '50 %' }))));
  expect(set).toMatchObject({ path: 'tow.bars.restore', now: 0.5, least: 0.25, most: 0.95, step: 0.01 });
  expect(set?.says(0.62)).toBe('set the bars to restore 62 % of what the front axle lost');
  expect(bars(rightOf(decodeSpec(tiltDeck())))).toEqual([]);
});
