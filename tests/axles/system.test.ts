/** One axle: the weakest part governs, and a label that claims more than a part bears is refused. */
import { describe, expect, it } from 'vitest';
import { type AxleParts, axleSystem, wordsForAxles } from '../../src/axles/index.js';
import { given, weakestInputs } from '../../src/trace/index.js';
import { inch, lb, show, toWire } from '../../src/units/index.js';
import { leftOf, rightOf } from '../helpers/either.js';
import { workingsIn } from '../helpers/specs.js';
import { expectReplays } from '../helpers/working.js';

const whole: AxleParts = {
  gawr: lb(5200),
  beam: lb(5300),
  springs: lb(5400),
  hubs: lb(5500),
  wheels: { each: lb(2800), count: 2 },
  tires: { each: lb(2600), count: 2 },
};

describe('an axle system', () => {
  it('is rated by the least of its label and its parts, ties named', () => {
    const system = rightOf(axleSystem(whole, 'axle 1'));
    expectReplays(...workingsIn(system));
    expect(show(system.rating.value)).toBe('5,200 lb');
    expect(system.governed.governing.map(({ name }) => name)).toEqual(['GAWR', 'tires']);
    expect(system.notGiven).toEqual([]);
  });
  it('sets every part against the GAWR', () => {
    const system = rightOf(axleSystem(whole, 'axle 1'));
    expect(system.checks.map(({ what, verdict, reserve }) => [what, verdict, show(reserve.value)])).toEqual([
      ['axle 1 beam against GAWR', 'within', '100 lb'],
      ['axle 1 springs against GAWR', 'within', '200 lb'],
      ['axle 1 hubs against GAWR', 'within', '300 lb'],
      ['axle 1 wheels against GAWR', 'within', '400 lb'],
      ['axle 1 tires against GAWR', 'within', '0 lb'],
    ]);
    expect(system.checks.every(({ limit }) => limit.value.value.gte(5200))).toBe(true);
  });
  it.each(['beam', 'springs', 'hubs'] as const)('takes a %s at the GAWR and refuses one a hair below', (part) => {
    expect(show(rightOf(axleSystem({ ...whole, [part]: lb(5200) }, 'axle 1')).rating.value)).toBe('5,200 lb');
    expect(leftOf(axleSystem({ ...whole, [part]: lb('5199.999') }, 'axle 1'))).toMatchObject({
      tag: 'GawrAboveParts',
      of: 'axle 1',
      part,
      gawr: toWire(lb(5200)),
      bears: toWire(lb('5199.999')),
    });
  });
  it.each(['wheels', 'tires'] as const)('counts %s and refuses a sum below the GAWR', (part) => {
    const at = rightOf(axleSystem({ ...whole, [part]: { each: lb(2600), count: 2 } }, 'axle 1'));
    expect(at.governed.limits.find(({ name }) => name === part)?.limit.value).toEqual(lb(5200));
    expect(leftOf(axleSystem({ ...whole, [part]: { each: lb('2599.5'), count: 2 } }, 'axle 1'))).toMatchObject({
      tag: 'GawrAboveParts',
      part,
      bears: toWire(lb(5199)),
    });
    expect(show(rightOf(axleSystem({ ...whole, [part]: { each: lb(1300), count: 4 } }, 'axle 1')).rating.value)).toBe(
      '5,200 lb',
    );
  });
  it('is rated by its parts alone where no label is known, and then checks nothing', () => {
    const system = rightOf(axleSystem({ beam: lb(5200), tires: { each: lb(2540), count: 2 } }, 'axle 2'));
    expectReplays(...workingsIn(system));
    expect([
      show(system.rating.value),
      system.governed.governing.map(({ name }) => name),
      system.checks,
      system.gawr,
      system.notGiven,
    ]).toEqual(['5,080 lb', ['tires'], [], undefined, ['springs', 'hubs', 'wheels']]);
  });
  it('is rated by its label alone where no part is known, and says what is not given', () => {
    const system = rightOf(axleSystem({ gawr: lb(5200) }, 'axle 1'));
    expectReplays(...workingsIn(system));
    expect([show(system.rating.value), system.checks, system.notGiven.length]).toEqual(['5,200 lb', [], 5]);
    expect(weakestInputs(system.rating).basis).toBe('label');
  });
  it('keeps what a part rests on', () => {
    const system = rightOf(
      axleSystem({ gawr: lb(5200), beam: given('beam by guess', lb(5200), 'estimated') }, 'axle 1'),
    );
    expect(weakestInputs(system.rating)).toMatchObject({ basis: 'estimated', inputs: [{ symbol: 'beam by guess' }] });
  });
  it('hands back what it compared', () => {
    const { decisions } = rightOf(axleSystem(whole, 'axle 1'));
    expect(decisions.filter(({ comparison }) => comparison === '<=')).toHaveLength(5);
    expect(decisions.every(({ holds }) => holds)).toBe(true);
  });
  it('refuses an axle of which nothing is known', () => {
    expect(leftOf(axleSystem({}, 'axle 3'))).toMatchObject({ chapter: 'axles', tag: 'AxleUnknown', of: 'axle 3' });
  });
  it.each([
    ['GAWR', { gawr: lb(0) }],
    ['beam', { beam: lb(-1) }],
    ['tires', { gawr: lb(5200), tires: { each: lb(2600), count: 0 } }],
  ] as const)('refuses a %s of nothing', (part, parts) => {
    expect(leftOf(axleSystem(parts, 'axle 1'))).toMatchObject({ tag: 'RatingNotPositive', of: 'axle 1', part });
  });
});

it('has words for all that can go wrong', () => {
  const told = [
    wordsForAxles(leftOf(axleSystem({ ...whole, beam: lb(5000) }, 'axle 1'))),
    wordsForAxles(leftOf(axleSystem({}, 'axle 1'))),
    wordsForAxles(leftOf(axleSystem({ gawr: lb(0) }, 'axle 1'))),
    wordsForAxles({ chapter: 'axles', tag: 'NoAxles' }),
    wordsForAxles({ chapter: 'axles', tag: 'SharingUnknown', axles: 3 }),
  ];
  expect(told).toEqual([
    'the GAWR of axle 1 is 5,200 lb; it must be at most 5,000 lb, the rating of its beam; read the label and the part again',
    'nothing is known of axle 1; give the GAWR from the label, or the ratings of its parts',
    'the GAWR rating of axle 1 is 0 lb; it must be greater than zero; leave out what is not known',
    'an axle group has no axles; give at least one axle',
    'how 3 independent axles share their load cannot be told; give the spring rate of every axle, or an equalised suspension',
  ]);
});

it('takes ratings in pounds only', () => {
  // @ts-expect-error a length is no rating
  expect(() => axleSystem({ gawr: lb(5200), beam: inch(5200) }, 'axle 1')).toThrow(TypeError);
});
