/** What a figure must hold before it is used, at the edge of each range, and what is said of it outside. */
import { describe, expect, it } from 'vitest';
import { describeError } from '../../src/errors.js';
import {
  above,
  aboveZero,
  allHold,
  aShare,
  atLeast,
  atMost,
  below,
  between,
  constant,
  converted,
  decide,
  type Guard,
  given,
  guard,
  inOrder,
  notNegative,
  pathOf,
  sum,
  whole,
  wholeCount,
} from '../../src/trace/index.js';
import { inch, kg, lb, ratio } from '../../src/units/index.js';
import { leftOf, rightOf } from '../helpers/either.js';

const [two, five] = [constant(inch(2)), constant(inch(5))];
const at = (inches: number | string) => given('place', inch(inches), 'stated', 'spec.place');
const wire = (value: string) => ({ value, unit: 'in' });
const holdsAt = (
  make: (inches: number | string) => readonly Guard<unknown>[],
  ...places: readonly (number | string)[]
) => places.map((place) => allHold(make(place))._tag === 'Right');

describe('a range', () => {
  it.each([
    ['above zero', (x) => [aboveZero('it', at(x))], ['0.01'], [0, '-0.01'], { above: wire('0') }],
    ['zero or more', (x) => [notNegative('it', at(x))], [0, 1], ['-0.01'], { from: wire('0') }],
    ['at most', (x) => [atMost('it', at(x), five)], [5, 4], ['5.01'], { to: wire('5') }],
    ['at least', (x) => [atLeast('it', at(x), two)], [2, 3], ['1.99'], { from: wire('2') }],
    ['below', (x) => [below('it', at(x), five)], ['4.99'], [5, 6], { below: wire('5') }],
    ['above', (x) => [above('it', at(x), two)], ['2.01'], [2, 1], { above: wire('2') }],
    [
      'between, ends included',
      (x) => between('it', at(x), two, five, 'included'),
      [2, 3, 5],
      ['1.99', '5.01'],
      { from: wire('2'), to: wire('5') },
    ],
    [
      'between, ends excluded',
      (x) => between('it', at(x), two, five, 'excluded'),
      ['2.01', '4.99'],
      [2, 5, 1, 6],
      { above: wire('2'), below: wire('5') },
    ],
  ] as const satisfies readonly (readonly [
    string,
    (x: number | string) => readonly Guard[],
    ...(readonly unknown[]),
  ])[])('%s', (_, make, inside, outside, ends) => {
    expect(holdsAt(make, ...inside)).toEqual(inside.map(() => true));
    expect(holdsAt(make, ...outside)).toEqual(outside.map(() => false));
    for (const place of outside)
      expect(leftOf(allHold<unknown>(make(place)))).toEqual({
        chapter: 'trace',
        tag: 'OutsideItsRange',
        what: 'it',
        found: wire(String(place)),
        path: 'spec.place',
        ...ends,
      });
  });
  it('of a share is above zero and at most one', () => {
    const share = (figure: string) => allHold(aShare('share', given('share', ratio(figure))));
    expect(['0.001', '1'].map((figure) => share(figure)._tag)).toEqual(['Right', 'Right']);
    for (const figure of ['0', '-0.1', '1.001'])
      expect(leftOf(share(figure))).toEqual({
        chapter: 'trace',
        tag: 'OutsideItsRange',
        what: 'share',
        found: { value: figure, unit: 'ratio' },
        above: { value: '0', unit: 'ratio' },
        to: { value: '1', unit: 'ratio' },
      });
  });
  it('has its low end first', () => {
    const deck = (front: number) => allHold([inOrder('deck', at(front), five)]);
    expect([4, 5].map((front) => deck(front)._tag)).toEqual(['Right', 'Right']);
    expect(leftOf(deck(6))).toMatchObject({ what: 'the low end of deck', found: wire('6'), to: wire('5') });
  });
});

describe('guards together', () => {
  it('hand on every decision, or the error of the first that fails', () => {
    const guards = [aboveZero('one', at(1)), atMost('two', at(6), five), aboveZero('three', at(-1))];
    expect(rightOf(allHold(guards.slice(0, 1)))).toEqual([guards[0]?.decision]);
    expect(leftOf(allHold(guards)).what).toBe('two');
    expect(leftOf(allHold([...guards].reverse())).what).toBe('three');
    expect(leftOf(allHold([guard(decide(at(1), '>', five), () => 'an error of its own')]))).toBe('an error of its own');
  });
});

describe('where a figure stands in a spec', () => {
  const weight = given('weight', kg(1000), 'stated', 'cargo.0.weight');
  it('is told of a figure as given, and of its conversion', () => {
    expect(pathOf(weight.why)).toEqual({ path: 'cargo.0.weight' });
    expect(pathOf(converted('weight in lb', weight, 'lb').why)).toEqual({ path: 'cargo.0.weight' });
  });
  it('is not told of what was reckoned from it, of what has no path, and of a constant', () => {
    expect(pathOf(sum('twice', [weight, weight]).why)).toEqual({});
    expect(pathOf(given('weight', lb(1)).why)).toEqual({});
    expect(pathOf(constant(lb(1)).why)).toEqual({});
  });
});

describe('a count', () => {
  it('is whole', () => {
    const count = (figure: string) => allHold([whole('rails', given('rails', ratio(figure), 'stated', 'rails'))]);
    expect(['0', '3', '-2'].map((figure) => count(figure)._tag)).toEqual(['Right', 'Right', 'Right']);
    for (const figure of ['1.5', '2.999', '0.5'])
      expect(leftOf(count(figure))).toEqual({
        chapter: 'trace',
        tag: 'NotAWholeCount',
        what: 'rails',
        found: figure,
        path: 'rails',
      });
  });
  it('of a program is from one to the most', () => {
    expect([1, 2, 1000].map((found) => rightOf(wholeCount('axles', found)).value.value.toNumber())).toEqual([
      1, 2, 1000,
    ]);
    expect(rightOf(wholeCount('axles', 3, 3)).why.symbol).toBe('axles');
    for (const found of [0, -1, 1.5, 1001, Number.NaN, Infinity])
      expect(leftOf(wholeCount('axles', found))).toMatchObject({ found: String(found), most: 1000 });
    expect(leftOf(wholeCount('axles', 4, 3))).toMatchObject({ tag: 'NotAWholeCount', most: 3 });
    expect(describeError(leftOf(wholeCount('axles', 4, 3)))).toContain('axles');
  });
});
