/** The names under which axles tell their steps, the rows they say they miss, and every comparison that a result hangs on. */
import { describe, expect, it } from 'vitest';
import { axleSystem, brakeCapacity, tandemSplit, usualBrake, wheelNutTorque } from '../../src/axles/index.js';
import { given, nodesOf } from '../../src/trace/index.js';
import { inch, lb, quantity } from '../../src/units/index.js';
import { leftOf, rightOf } from '../helpers/either.js';

const rate = (digits: number) => quantity(digits, 'lb/in');
const two = (rise: number, places: readonly [number, number] = [172, 208], second = 1000) =>
  ({
    suspension: 'independent',
    axles: [
      { at: inch(places[0]), rate: rate(1000) },
      { at: inch(places[1]), rate: rate(second) },
    ],
    ballAboveLevel: inch(rise),
  }) as const;

describe('names', () => {
  it('of the axles count from one', () => {
    const split = rightOf(tandemSplit(lb(11000), two(2)));
    expect(split.loads.map(({ why }) => why.symbol)).toEqual(['load of axle 1', 'load of axle 2']);
    const inputs = nodesOf(split.loads.map(({ why }) => why)).flatMap((node) =>
      node.kind === 'given' ? [node.symbol] : [],
    );
    for (const of of ['axle 1', 'axle 2'])
      expect(inputs).toEqual(expect.arrayContaining([`place of ${of}`, `spring rate of ${of}`]));
    expect(leftOf(tandemSplit(lb(11000), two(2, [172, 0])))).toMatchObject({ what: 'place of axle 2' });
    expect(leftOf(tandemSplit(lb(11000), two(2, [172, 208], 0)))).toMatchObject({ what: 'spring rate of axle 2' });
  });
  it('of a wheel that no chart has come with its stud', () => {
    expect(leftOf(wheelNutTorque('13 in', '9/16'))).toMatchObject({ asked: '13 in, 9/16 stud' });
    expect(leftOf(wheelNutTorque('11 in'))).toMatchObject({ asked: '11 in' });
  });
  it('of the ranges of axles: one figure where both ends are one', () => {
    const { nearest } = leftOf(usualBrake(lb(99000))) as { readonly nearest: readonly string[] };
    expect(nearest).toEqual(['2000 to 3500 lb axle', '5200 to 7000 lb axle', '8000 to 10000 lb axle']);
  });
});

describe('what hangs on a comparison', () => {
  it('an axle exactly without load is on the ground, a hair less is off it', () => {
    // k 1,000 each, rise r: unloading of axle 2 is 1,000 r x share; find the load that leaves axle 2 nothing.
    const free = rightOf(tandemSplit(lb(10000), two(2)));
    const unloaded = free.unloading?.[0]?.value.value;
    const edge = unloaded?.times(2);
    const at = (load: NonNullable<typeof edge>) => rightOf(tandemSplit(lb(load), two(2)));
    expect(at(edge!).notes).toEqual([]);
    expect(at(edge!.minus('0.001')).notes.map(({ tag }) => tag)).toEqual(['AxleOffTheGround']);
    expect(at(edge!.plus('0.5')).notes).toEqual([]);
    expect(free.decisions.length).toBe(6);
  });
  it('an axle system hands on every rating above zero, the label, and each part against it', () => {
    const parts = { beam: lb(5300), tires: { each: lb(2700), count: 2 } };
    const system = rightOf(axleSystem({ gawr: lb(5200), ...parts }, 'axle 1'));
    expect(
      system.decisions.map(({ left, comparison, right }) => `${left.symbol} ${comparison} ${right.symbol}`),
    ).toEqual([
      'axle 1 beam > undefined',
      'axle 1 tires > undefined',
      'axle 1 GAWR > undefined',
      'axle 1 GAWR <= axle 1 beam',
      'axle 1 GAWR <= axle 1 tires',
    ]);
    expect(system.checks.map(({ clause }) => clause?.id)).toEqual([system.gawr?.clause?.id, system.gawr?.clause?.id]);
    expect(leftOf(axleSystem({ beam: lb(0) }, 'axle 1')).tag).toBe('RatingNotPositive');
    expect(rightOf(axleSystem({ beam: lb('0.5') }, 'axle 1')).notGiven).toEqual(['springs', 'hubs', 'wheels', 'tires']);
  });
  it('the sum of tires names the rule that asks for it, other sums none', () => {
    const { governed } = rightOf(
      axleSystem({ wheels: { each: lb(2600), count: 2 }, tires: { each: lb(2600), count: 2 } }, 'axle 1'),
    );
    const sources = governed.limits.map(({ limit: { why } }) => (why.kind === 'computed' ? why.source?.id : why.kind));
    expect(sources[0]).toBeUndefined();
    expect(sources[1]).toBe('RG-2');
  });
  it('brakes hand on whether the two of an axle are alike', () => {
    const pair = (right: number) => ({
      of: 'axle 1',
      gawr: given('GAWR', lb(7000)),
      brakes: [lb(3500), lb(right)] as const,
    });
    expect(rightOf(brakeCapacity([pair(3500)])).decisions.at(-1)?.holds).toBe(true);
    expect(rightOf(brakeCapacity([pair(3400)])).decisions.at(-1)?.holds).toBe(false);
  });
  it('a chart gives the stages that it prints', () => {
    const charts = rightOf(wheelNutTorque('12-13 in', '1/2')).charts;
    expect(charts.map((chart) => Object.keys(chart).join(' '))).toEqual([
      'chart stage1 stage2 final',
      'chart final',
      'chart stage1 stage2 final',
    ]);
  });
});
