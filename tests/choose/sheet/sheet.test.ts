/** Every figure of a sheet is read: what is printed, and the ends of what rounds to it. */
import { expect, it } from 'vitest';
import { readSheet, tongueShareOf } from '../../../src/choose/sheet/sheet.js';
import { leftOf, rightOf } from '../../helpers/either.js';

it('reads weights, axles, the tire and lengths, in this order', () => {
  const read = rightOf(
    readSheet({
      gvwr: '14,000 lb',
      axles: ['7,000 lb', { text: '7,000 lb', rounding: '100 lb' }],
      tires: { each: '3,520 lb', count: 2 },
      deckLength: '20 ft',
    }),
  );
  expect(read.map(({ path, name, at, low, high }) => [path, name, at, low, high])).toEqual([
    ['gvwr', 'GVWR', 14000, 13999.5, 14000.5],
    ['axles.0', 'axle 1', 7000, 6999.5, 7000.5],
    ['axles.1', 'axle 2', 7000, 6950, 7050],
    ['tires.each', 'each tire', 3520, 3519.5, 3520.5],
    ['deckLength', 'deck length', 240, 239.5, 240.5],
  ]);
});

it('refuses a figure that is none, at its place', () => {
  expect(leftOf(readSheet({ tires: { each: 'heavy', count: 2 } }))).toMatchObject({
    path: 'tires.each',
    found: 'heavy',
  });
  expect(leftOf(readSheet({ axles: ['7,000 lb', '0 lb'] }))).toMatchObject({ path: 'axles.1', found: '0 lb' });
  expect(leftOf(readSheet({ gvwr: { text: '14,000 lb', rounding: 'some' } }))).toMatchObject({ found: 'some' });
});

it('a figure that was not rounded at all is itself, and names are cut to forty letters', () => {
  const exact = rightOf(readSheet({ gvwr: { text: '14,000 lb', rounding: '0 lb' } }));
  expect(exact.map(({ low, high }) => [low, high])).toEqual([[14000, 14000]]);
  const long = 'x'.repeat(60);
  expect(leftOf(readSheet({ gvwr: long }))).toMatchObject({ found: 'x'.repeat(40) });
  expect(leftOf(readSheet({ gvwr: { text: '14,000 lb', rounding: long } }))).toMatchObject({ found: 'x'.repeat(40) });
  expect(leftOf(readSheet({ gvwr: '-5 lb' }))).toMatchObject({
    found: '-5 lb',
    needed: 'a weight, such as "14,000 lb", above zero',
  });
  expect(leftOf(readSheet({ deckLength: '0 ft' }))).toMatchObject({ needed: 'a length, such as "20 ft", above zero' });
});

it('the share on the tongue is above zero and below all', () => {
  expect(rightOf(tongueShareOf({}))).toBe(0.15);
  expect(rightOf(tongueShareOf({ tongueShareMost: '10 %' }))).toBe(0.1);
  for (const none of ['0 %', '100 %', 'some', '5 lb', '-1 %'])
    expect(leftOf(tongueShareOf({ tongueShareMost: none }))).toMatchObject({ path: 'tongueShareMost', found: none });
  expect(leftOf(tongueShareOf({ tongueShareMost: 'x'.repeat(60) }))).toMatchObject({ found: 'x'.repeat(40) });
});
