/** Every relation between the figures of a sheet, in its words and with its factors. */
import { expect, it } from 'vitest';
import { relationsOf } from '../../../src/choose/sheet/relations.js';

const written = (sheet: Parameters<typeof relationsOf>[0], share: number): readonly string[] =>
  relationsOf(sheet, share).map(
    ({ says, kind, unit, factors }) =>
      `${says} (${kind}, ${unit}): ${[...factors].map(([path, factor]) => `${factor} ${path}`).join(', ')}`,
  );
const always = [
  'the coupler is rated for the GVWR (not above, lb): 1 gvwr, -1 coupler',
  'tongue and deck make the overall length (equal, in): 1 tongueLength, 1 deckLength, -1 overallLength',
  'flat part and dovetail make the deck (equal, in): 1 flatLength, 1 dovetailLength, -1 deckLength',
  'the deck is no wider than the trailer (not above, in): 1 deckWidth, -1 overallWidth',
];
const weights = 'empty weight and payload make the GVWR (equal, lb): 1 emptyWeight, 1 payload, -1 gvwr';

it('of a tandem with its tires', () => {
  const sheet = { axles: ['7,000 lb', '7,000 lb'], tires: { each: '3,520 lb', count: 2 } };
  expect(written(sheet as never, 0.125)).toEqual([
    weights,
    'axles bear the GVWR less at most 12.5 % of it on the tongue (not above, lb): 0.875 gvwr, -1 axles.0, -1 axles.1',
    'the axles together make the capacity of all axles (equal, lb): 1 axleCapacity, -1 axles.0, -1 axles.1',
    'the 2 tires of axle 1 bear its rating (not above, lb): 1 axles.0, -2 tires.each',
    'the 2 tires of axle 2 bear its rating (not above, lb): 1 axles.1, -2 tires.each',
    '4 tires make the capacity of all tires (equal, lb): 1 tireCapacity, -4 tires.each',
    ...always,
  ]);
});

it('of a sheet without axles or tires, and with tires alone', () => {
  expect(written({} as never, 0.15)).toEqual([weights, ...always]);
  expect(written({ tires: { each: '3,520 lb', count: 2 } } as never, 0.15)).toEqual([weights, ...always]);
});
