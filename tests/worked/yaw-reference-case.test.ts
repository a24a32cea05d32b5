/** Two constructed layouts of the same trailer and load, equal tongue load (derived; plain mechanics). */
import { describe, expect, it } from 'vitest';
import { compareLayouts, type SpreadItem, yawInertia } from '../../src/load/index.js';
import { inch, lb, showBrief } from '../../src/units/index.js';
import { leftOf, rightOf } from '../helpers/either.js';
import { expectReplays } from '../helpers/working.js';

const item = (name: string, weight: number, at: string, length: number): SpreadItem => ({
  name,
  weight: lb(weight),
  at: inch(at),
  length: length === 0 ? 'point' : inch(length),
});
const compact = [item('trailer', 3200, '161.5', 300), item('machine', 9200, '171', 120)];
const spread = [
  item('trailer', 3200, '161.5', 300),
  item('machine', 7200, '169.06', 120),
  item('front ballast', 1000, '70', 0),
  item('rear ballast', 1000, '286', 0),
];

describe('yaw inertia', () => {
  it('35.25e6 lb in2 and 53.3 in against 56.31e6 and 67.4 in, both with 1,400 lb on the tongue', () => {
    const layouts = rightOf(
      compareLayouts(inch(190), [
        { name: 'compact', items: compact },
        { name: 'spread', items: spread },
      ]),
    );
    expect(layouts.map(({ index }) => index.value.value.div(1e6).toFixed(2))).toEqual(['35.25', '56.31']);
    expect(layouts.map(({ radius }) => showBrief(radius.value, 1))).toEqual(['53.3 in', '67.4 in']);
    expect(layouts.map(({ tongue }) => showBrief(tongue.value, 0))).toEqual(['1,400 lb', '1,400 lb']);
    for (const layout of layouts) expectReplays(layout.index, layout.radius, layout.tongue, layout.toFirst);
  });
  it('gives no speed, and says so', () => {
    expect(rightOf(yawInertia(compact)).notes.map(({ tag }) => tag)).toEqual(['NoSafeSpeed']);
    expect(
      Object.values(rightOf(yawInertia(compact))).flatMap((part) => ('value' in part ? [part.value.unit] : [])),
    ).toEqual(['lb', 'in', 'lb*in2', 'in']);
  });
  it('refuses nothing at all, a weight of nothing and a negative length', () => {
    expect(leftOf(yawInertia([])).tag).toBe('NothingGiven');
    expect(leftOf(yawInertia([item('air', 0, '10', 0)])).tag).toBe('OutsideItsRange');
    expect(leftOf(yawInertia([item('machine', 10, '10', -1)])).tag).toBe('OutsideItsRange');
    expect(leftOf(compareLayouts(inch(190), [])).tag).toBe('NothingGiven');
    expect(leftOf(compareLayouts(inch(0), [{ name: 'compact', items: compact }])).tag).toBe('OutsideItsRange');
  });
});
