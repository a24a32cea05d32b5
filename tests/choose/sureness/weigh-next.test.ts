/** Of the figures that keep checks open, the one whose knowledge settles most comes first (arithmetic of slopes). */
import { expect, it } from 'vitest';
import { weighNext } from '../../../src/choose/sureness/weigh-next.js';
import { given } from '../../../src/trace/index.js';
import { lb } from '../../../src/units/index.js';

type Args = Parameters<typeof weighNext>;
const input = (path: string, at: number, low: number, high: number) => ({
  path,
  symbol: path,
  amount: 'some',
  leaf: given(path, lb(at)).why,
  between: { low, high },
});
const open = (
  what: string,
  reserve: number,
  ends: readonly [number, number],
  slopes: readonly (readonly [number, number])[],
) => ({
  question: { what, figure: given(what, lb(reserve)) },
  range: { slopes: new Map(slopes.map(([i, slope]) => [i, { low: slope, high: slope }])) },
  low: ends[0],
  high: ends[1],
});
const asked = (questions: readonly unknown[], inputs: readonly unknown[]) =>
  weighNext(questions as Args[0], inputs as Args[1]).map(({ path, decides, weight }) => [path, decides, weight]);

const inputs = [input('curb', 3000, 2900, 3300), input('cargo', 5000, 4600, 5100), input('idle', 100, 90, 110)];

it('a check that is well now is opened by what lessens its reserve', () => {
  // 100 lb in reserve, 50 lb short at worst. More curb takes up to 300 lb of it, more cargo up to 100 lb, less none.
  expect(
    asked(
      [
        open(
          'gross',
          100,
          [-50, 400],
          [
            [0, -1],
            [1, -0.25],
            [2, 0],
          ],
        ),
      ],
      inputs,
    ),
  ).toEqual([
    ['curb', ['gross'], 1],
    ['cargo', [], 0.5],
  ]);
  // A reserve that grows with the figure is lessened by less of it: curb may be 100 lb less, cargo 400 lb.
  expect(
    asked(
      [
        open(
          'tongue',
          100,
          [-200, 400],
          [
            [0, 1],
            [1, 1],
          ],
        ),
      ],
      inputs,
    ),
  ).toEqual([
    ['cargo', ['tongue'], 1],
    ['curb', [], 0.5],
  ]);
});

it('a check that is short now is opened by what adds to its reserve', () => {
  // 100 lb short, 80 lb in reserve at best. Less curb adds up to 100 lb, less cargo up to 400 lb.
  expect(
    asked(
      [
        open(
          'gross',
          -100,
          [-500, 80],
          [
            [0, -1],
            [1, -0.1],
          ],
        ),
      ],
      inputs,
    ),
  ).toEqual([
    ['curb', ['gross'], 1],
    ['cargo', [], 0.5],
  ]);
  expect(
    asked(
      [
        open(
          'tongue',
          -100,
          [-500, 400],
          [
            [0, 1],
            [1, 1],
          ],
        ),
      ],
      inputs,
    ),
  ).toEqual([
    ['curb', [], 0.75],
    ['cargo', [], 0.25],
  ]);
});

it('what settles more checks comes first, then what weighs more', () => {
  const both = [
    open('gross', 0, [-100, 400], [[0, -1]]),
    open(
      'axles',
      10,
      [-100, 400],
      [
        [1, -1],
        [0, -0.1],
      ],
    ),
  ];
  expect(asked(both, inputs)).toEqual([
    ['curb', ['gross'], 1.3],
    ['cargo', ['axles'], 1],
  ]);
  const more = [...both, open('tongue', 10, [-100, 400], [[1, -1]])];
  expect(asked(more, inputs).map(([path]) => path)).toEqual(['cargo', 'curb']);
});

it('a check that is open by a hair is settled by whatever moves it a hair', () => {
  // Half a pound short at worst; the idle time takes three quarters of a pound of it.
  expect(asked([open('gross', 100, [-0.5, 400], [[2, -0.075]])], inputs)).toEqual([['idle', ['gross'], 1]]);
});
