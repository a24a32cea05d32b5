/** Several weak parts at once, and at most one figure moved with them (arithmetic as of two levers together). */
import { expect, it } from 'vitest';
import { proposals } from '../../helpers/pulled.js';

const weak = { 'tow.ball.gross': '12,000 lb', 'trailer.coupler.gross': '12,000 lb' };
const [ball, coupler] = ['ball', 'coupler'].map((part) => `fit another ${part} rated for at least 14,000 lb gross`);

it('fits every part that is too weak, for what it carries or for the label', () => {
  // The tongue is 520 + 9,000 x 22 / 204 = 1,490.6 lb.
  expect(proposals({ ...weak, 'tow.ballMount.tongue': '1,000 lb' }, 'ball', 'coupler', 'ball mount')).toEqual([
    [ball, 'fit another ball mount rated for at least 1,500 lb tongue', coupler],
  ]);
});

it.each([
  ['100 in', '19.75 in rearward', '119.75'],
  ['130 in', '3 in forward', '127'],
])('moves a machine, from %s, as little as leaves the parts alone too weak', (front, by, to) => {
  expect(proposals({ ...weak, 'cargo.0.front': front }, 'move', 'ball', 'coupler')).toEqual([
    [`move excavator ${by}: its front face ${to} in behind the coupler`, ball, coupler],
  ]);
});

it('moves a machine by the one step that is left to it', () => {
  // The tongue is 1,600 lb at 119.52 in; at 119.75 in the machine ends where the deck does.
  const edge = { ...weak, 'cargo.0.front': '119.5 in', 'trailer.deck.rear': '287.75 in' };
  expect(proposals(edge, 'move', 'ball', 'coupler')).toEqual([
    ['move excavator 0.25 in rearward: its front face 119.75 in behind the coupler', ball, coupler],
  ]);
  expect(proposals({ ...edge, 'trailer.deck.rear': '287.6 in' }, 'move', 'ball', 'coupler')).toEqual([]);
});

it('proposes nothing where a part would be left too weak', () => {
  const three = { ...weak, 'trailer.jack.rating': '2,000 lb' };
  expect(proposals({ ...three, 'cargo.0.front': '100 in' }, 'move', 'ball', 'coupler')).toEqual([]);
});
