/** Axles together: how they share is said, not assumed; the group is limited by the axle that is full first. */
import { describe, expect, it } from 'vitest';
import { axleGroup, axleLoads, axleSystem, type StandingAxle } from '../../../src/axles/index.js';
import { given } from '../../../src/trace/index.js';
import { inch, lb, quantity, show } from '../../../src/units/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';
import { workingsIn } from '../../helpers/specs.js';
import { expectReplays } from '../../helpers/working.js';

function axle(number: number, at: number, gawr: number, rate?: number): StandingAxle {
  const of = `axle ${number}`;
  return {
    system: rightOf(axleSystem({ gawr: lb(gawr) }, of)),
    at: given(`${of} position`, inch(at)),
    ...(rate !== undefined && { rate: quantity(rate, 'lb/in') }),
  };
}
const load = given('load of the group', lb(12000));
const shown = (axles: readonly StandingAxle[], sharing: 'equalised' | 'independent') => {
  const group = rightOf(axleGroup(axles, sharing));
  const loads = axleLoads(group, load);
  expectReplays(...workingsIn(group), ...loads);
  return {
    at: show(group.at.value),
    capacity: show(group.capacity.value),
    sum: show(group.sumOfRatings.value),
    loads: loads.map(({ value }) => show(value)),
    notes: group.notes.map(({ tag }) => tag),
  };
};

describe('an axle group', () => {
  it('of one axle is that axle', () => {
    expect(shown([axle(1, 200, 7000)], 'equalised')).toEqual({
      at: '200 in',
      capacity: '7,000 lb',
      sum: '7,000 lb',
      loads: ['12,000 lb'],
      notes: [],
    });
  });
  it('of equalised axles shares alike, in the middle', () => {
    expect(shown([axle(1, 187, 7000), axle(2, 221, 7000)], 'equalised')).toEqual({
      at: '204 in',
      capacity: '14,000 lb',
      sum: '14,000 lb',
      loads: ['6,000 lb', '6,000 lb'],
      notes: [],
    });
    expect(shown([axle(1, 180, 7000), axle(2, 210, 7000), axle(3, 240, 7000)], 'equalised').loads).toEqual([
      '4,000 lb',
      '4,000 lb',
      '4,000 lb',
    ]);
  });
  it('carries less than its ratings add up to when they differ: the weaker axle is full first', () => {
    expect(shown([axle(1, 187, 5200), axle(2, 221, 7000)], 'equalised')).toMatchObject({
      capacity: '10,400 lb',
      sum: '12,200 lb',
    });
  });
  it('is limited part by part, each by its weakest', () => {
    const [one, two] = [
      { beam: lb(7000), tires: { each: lb(3520), count: 2 } },
      { beam: lb(6000), tires: { each: lb(3640), count: 2 } },
    ].map((parts, i) => ({
      system: rightOf(axleSystem(parts, `axle ${i + 1}`)),
      at: given(`place ${i + 1}`, inch(180 + 30 * i)),
    })) as [StandingAxle, StandingAxle];
    const group = rightOf(axleGroup([one, two], 'equalised'));
    expect(group.limits.map(({ name, limit }) => [name, show(limit.value)])).toEqual([
      ['beam', '12,000 lb'],
      ['tires', '14,080 lb'],
    ]);
    expectReplays(...workingsIn(group));
  });
  it('of two independent axles without rates shares alike, and says that this needs a level trailer', () => {
    expect(shown([axle(1, 187, 7000), axle(2, 221, 7000)], 'independent')).toMatchObject({
      capacity: '14,000 lb',
      loads: ['6,000 lb', '6,000 lb'],
      notes: ['LevelAssumed'],
    });
  });
  it('of independent axles shares by spring rates', () => {
    expect(shown([axle(1, 180, 7000, 1000), axle(2, 210, 7000, 2000)], 'independent')).toEqual({
      at: '200 in',
      capacity: '10,500 lb',
      sum: '14,000 lb',
      loads: ['4,000 lb', '8,000 lb'],
      notes: ['SharedByRate'],
    });
  });
  it('loads each axle to no more than its rating at its capacity, one of them exactly', () => {
    for (const group of [
      rightOf(axleGroup([axle(1, 180, 5200), axle(2, 210, 7000)], 'equalised')),
      rightOf(axleGroup([axle(1, 180, 5200, 700), axle(2, 210, 6000, 1100), axle(3, 240, 7000, 900)], 'independent')),
    ]) {
      const left = axleLoads(group, group.capacity).map(
        ({ value }, i) =>
          group.axles[i]?.system.rating.value.value.minus(value.value).toDecimalPlaces(20).toNumber() as number,
      );
      expect(Math.min(...left)).toBe(0);
    }
  });
  it('refuses what it cannot share', () => {
    expect(leftOf(axleGroup([], 'equalised'))).toMatchObject({ tag: 'NoAxles' });
    expect(leftOf(axleGroup([axle(1, 1, 5), axle(2, 2, 5), axle(3, 3, 5)], 'independent'))).toMatchObject({
      tag: 'SharingUnknown',
      axles: 3,
    });
    expect(leftOf(axleGroup([axle(1, 1, 5, 10), axle(2, 2, 5, 10), axle(3, 3, 5)], 'independent'))).toMatchObject({
      tag: 'SharingUnknown',
      axles: 3,
    });
    const flat = leftOf(axleGroup([axle(1, 1, 5, 10), axle(2, 2, 5, 0)], 'independent'));
    expect(flat).toMatchObject({ tag: 'OutsideItsRange', what: 'axle 2 spring rate' });
  });
  it('has no default for the sharing', () => {
    // @ts-expect-error how the axles share is an argument
    expect(() => axleGroup([axle(1, 1, 5), axle(2, 2, 5)])).not.toThrow();
  });
});
