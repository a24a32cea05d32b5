/** The key of a spec that an error names: of the figure itself, also once converted, and of no step that mixes several. */
import { expect, it } from 'vitest';
import { allAboveZero, aShare, noneBelowZero, pathOf } from '../../src/towing/figures.js';
import { constant, difference, given, inPounds } from '../../src/trace/index.js';
import { kg, lb, ratio } from '../../src/units/index.js';
import { leftOf, rightOf } from '../helpers/either.js';

const rear = given('rear axle', kg(1400), 'scale', 'tow.rear');
const front = given('front axle', lb(5000), 'scale', 'tow.front');

it('is told of a figure and of its conversion, and of nothing else', () => {
  expect(pathOf(rear.why)).toEqual({ path: 'tow.rear' });
  expect(pathOf(inPounds('rear axle', rear).why)).toEqual({ path: 'tow.rear' });
  expect(pathOf(difference('apart', front, inPounds('rear axle', rear)).why)).toEqual({});
  expect(pathOf(constant(lb(3)).why)).toEqual({});
  expect(pathOf(given('overhang', lb(3)).why)).toEqual({});
});

it('goes with the refusal of a figure out of its range, at the edge and no sooner', () => {
  const at = (pounds: number) => given('load', lb(pounds), 'scale', 'tow.front');
  expect(leftOf(allAboveZero([['load', at(0)]]))).toMatchObject({
    tag: 'NotAboveZero',
    what: 'load',
    path: 'tow.front',
  });
  expect(rightOf(allAboveZero([['load', at(1)]])).map(({ comparison }) => comparison)).toEqual(['>']);
  expect(leftOf(noneBelowZero([['load', at(-1)]]))).toMatchObject({ tag: 'BelowZero', path: 'tow.front' });
  expect(rightOf(noneBelowZero([['load', at(0)]])).map(({ comparison }) => comparison)).toEqual(['>=']);
  const share = (of: string) => aShare('share', given('share', ratio(of), 'stated', 'tongueShare'));
  expect(rightOf(share('1')).map(({ comparison }) => comparison)).toEqual(['>', '<=']);
  for (const none of ['0', '1.001'])
    expect(leftOf(share(none))).toMatchObject({ tag: 'NotAShare', path: 'tongueShare' });
});
