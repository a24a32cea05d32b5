/**
 * Two levers that do it together and not alone, each pulled as little as does it (arithmetic). The machine of W lb stands with its
 * front face at f: the gross weight is 3,650 + W, the tongue 520 + W (204 - 60 - f) / 204; GVWR 14,000 lb, ball mount 1,600 lb.
 */
import { expect, it } from 'vitest';
import { pressed, proposals } from '../../helpers/pulled.js';

const move = (by: string, to: string): string => `move excavator ${by}: its front face ${to} in behind the coupler`;
const unload = 'take 650 lb off excavator, or carry a lighter one: 10,350 lb at most';
const jack = 'fit another jack rated for at least 2,950 lb'; // 15 % of 14,000 lb x 204 / 184 x 1.25 = 2,910 lb
const ball = 'fit another ball rated for at least 14,000 lb gross';
const small = { 'tow.ball.gross': '12,000 lb' };

it.each([
  // W = 10,350 lb makes 14,000 lb; the tongue is 1,600 lb at f = 144 - 1,080 x 204 / 10,350 = 122.71 in.
  ['100 in', move('22.75 in rearward', '122.75')],
  // It is 10 % of 14,000 lb at f = 144 - 880 x 204 / 10,350 = 126.66 in.
  ['134 in', move('7.5 in forward', '126.5')],
])('two figures, from %s: the second moves as little as lets the first find a place', (front, moved) => {
  const heavy = { 'cargo.0.weight': '11,000 lb', 'cargo.0.front': front };
  expect(proposals(heavy, 'move', 'unload')).toEqual([[moved, unload]]);
});

it.each([
  // The tongue is 1,600 lb at f = 144 - 1,080 x 204 / 9,000 = 119.52 in.
  ['100 in', move('19.75 in rearward', '119.75')],
  // It is 10 % of 12,650 lb at f = 144 - 745 x 204 / 9,000 = 127.11 in.
  ['130 in', move('3 in forward', '127')],
])('a figure, from %s, and a part', (front, moved) => {
  const weak = { 'cargo.0.front': front, 'trailer.jack.rating': '2,000 lb' };
  expect(proposals(weak, 'move', 'jack')).toEqual([[moved, jack]]);
});

it('a figure that can only be less, and a part', () => {
  const heavy = { 'cargo.0.weight': '11,000 lb', 'cargo.0.front': '124 in', ...small };
  expect(proposals(heavy, 'unload', 'ball')).toEqual([[unload, ball]]);
});

it('two parts, each rated for the label', () => {
  expect(proposals({ ...small, 'trailer.coupler.gross': '12,000 lb' }, 'ball', 'coupler')).toEqual([
    [ball, 'fit another coupler rated for at least 14,000 lb gross'],
  ]);
});

it('a ready-made change first, then what is left', () => {
  const inflate = 'bring the tires, cold, to the pressure molded on them';
  const soft = pressed('50 psi');
  expect(proposals({ ...soft, ...small }, 'pressure', 'ball')).toEqual([[inflate, ball]]);
  expect(proposals({ ...soft, 'cargo.0.front': '100 in' }, 'pressure', 'move')).toEqual([
    [inflate, move('19.75 in rearward', '119.75')],
  ]);
  expect(proposals({ ...soft, ...small }, 'tires', 'ball')).toEqual([
    ['fit tires ST235/80R16 LRF on wheels and valves rated for their pressure', ball],
  ]);
});

it('nothing where only one of the two can be pulled', () => {
  expect(proposals({ 'cargo.0.front': '100 in', ...small }, 'ball', 'coupler')).toEqual([]);
  expect(proposals({ 'cargo.0.front': '100 in', ...small }, 'move', 'coupler')).toEqual([]);
});

it('of tires the next two load ranges, beside another lever', () => {
  // 12,950 lb on axles without labels: each tire bears 2,800 lb and more, which only load range F does in this size.
  const worn = (range: string) => {
    const tires = { designation: `ST225/75R15 LR${range}`, count: 2, fitment: 'single' };
    const of = (key: string, value: unknown) => ({
      [`trailer.axles.0.${key}`]: value,
      [`trailer.axles.1.${key}`]: value,
    });
    return {
      ...of('tires', tires),
      ...of('gawr', undefined),
      ...of('wheels', undefined),
      'trailer.gvwr': undefined,
      'trailer.jack': undefined,
      'cargo.0.weight': '9,300 lb',
    };
  };
  const fit = 'fit tires ST225/75R15 LRF on wheels and valves rated for their pressure';
  expect(proposals(worn('C'), 'tires')).toEqual([[fit]]);
  expect(proposals({ ...worn('D'), ...small }, 'tires', 'ball')).toEqual([
    [fit, 'fit another ball rated for at least 12,950 lb gross'],
  ]);
  expect(proposals({ ...worn('C'), ...small }, 'tires', 'ball')).toEqual([]);
});

it('two parts beside a figure that does it alone', () => {
  // The tongue is 1,490.6 lb; it is 1,400 lb at f = 144 - 880 x 204 / 9,000 = 124.05 in.
  const weak = { 'tow.ballMount.tongue': '1,400 lb', 'trailer.coupler.tongue': '1,400 lb' };
  expect(proposals(weak, 'move', 'ball mount', 'coupler')).toEqual([
    [move('2.25 in rearward', '124.25')],
    [
      'fit another ball mount rated for at least 1,500 lb tongue',
      'fit another coupler rated for at least 1,500 lb tongue',
    ],
  ]);
});

it('a figure that has one step left, and a part', () => {
  const edge = { 'cargo.0.front': '119.5 in', 'trailer.deck.rear': '287.75 in', 'trailer.jack.rating': '2,000 lb' };
  expect(proposals(edge, 'move', 'jack')).toEqual([[move('0.25 in rearward', '119.75'), jack]]);
});
