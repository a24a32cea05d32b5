/** Every relation between the figures of a sheet, in its words and with its factors. */
import { expect, it } from 'vitest';
import { arithmeticOf, boundsOf, relationsOf, rowsOf } from '../../../src/choose/sheet/relations.js';

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

it('says the share of the tongue as it is written, to a tenth of a percent', () => {
  const shares = [0.15, 0.125, 0.6, 0.9, 1 / 3].map((share) => written({ axles: ['7,000 lb'] } as never, share)[1]);
  expect(shares.map((says) => /at most (.*) of it/.exec(says ?? '')?.[1])).toEqual([
    '15 %',
    '12.5 %',
    '60 %',
    '90 %',
    '33.3 %',
  ]);
});

it('of a sheet without axles or tires, and with tires alone', () => {
  expect(written({} as never, 0.15)).toEqual([weights, ...always]);
  expect(written({ tires: { each: '3,520 lb', count: 2 } } as never, 0.15)).toEqual([weights, ...always]);
});

const figure = (path: string, name: string, at: number) => ({
  path,
  name,
  printed: `${at} lb`,
  at,
  low: at - 0.5,
  high: at + 0.5,
});

it('as arithmetic: sums and products with what they come to, a bare figure as printed, what is not printed by its key', () => {
  const sheet = { axles: ['7,000 lb', '7,000 lb'], tires: { each: '3,520 lb', count: 2 } };
  const relation = (says: string) => relationsOf(sheet as never, 0.15).find((one) => one.says.startsWith(says))!;
  const figures = [
    figure('gvwr', 'GVWR', 14000),
    figure('emptyWeight', 'empty weight', 3650),
    figure('payload', 'payload', 10500),
    figure('axles.0', 'axle 1', 5000),
    figure('tires.each', 'each tire', 3520),
  ];
  expect(
    ['empty weight', 'axles bear', 'the 2 tires of axle 1', 'the coupler'].map((says) =>
      arithmeticOf(relation(says), figures),
    ),
  ).toEqual([
    'empty weight and payload make the GVWR: empty weight 3650 lb + payload 10500 lb = 14,150 lb must be GVWR 14000 lb',
    'axles bear the GVWR less at most 15 % of it on the tongue: 0.85 x GVWR 14000 lb = 11,900 lb must not be above axle 1 5000 lb + axles.1 (not printed)',
    'the 2 tires of axle 1 bear its rating: axle 1 5000 lb must not be above 2 x each tire 3520 lb = 7,040 lb',
    'the coupler is rated for the GVWR: GVWR 14000 lb must not be above coupler (not printed)',
  ]);
});

it('as rows: an equality both ways, and a printed figure between the ends that print so', () => {
  const written = (rows: ReturnType<typeof rowsOf>) => rows.map(({ factors, atMost }) => [[...factors], atMost]);
  const [equal] = relationsOf({}, 0.15);
  expect(written(rowsOf(equal!))).toEqual([
    [
      [
        ['emptyWeight', 1],
        ['payload', 1],
        ['gvwr', -1],
      ],
      0,
    ],
    [
      [
        ['emptyWeight', -1],
        ['payload', -1],
        ['gvwr', 1],
      ],
      0,
    ],
  ]);
  expect(rowsOf(relationsOf({}, 0.15)[1]!)).toHaveLength(1);
  expect(written(boundsOf(figure('gvwr', 'GVWR', 14000)))).toEqual([
    [[['gvwr', 1]], 14000.5],
    [[['gvwr', -1]], -13999.5],
  ]);
});
