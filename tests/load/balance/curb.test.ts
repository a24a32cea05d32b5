/** What the empty trailer weighs, and where that weight acts. */
import { describe, expect, it } from 'vitest';
import { curbWeight } from '../../../src/load/index.js';
import { given, weakestInputs } from '../../../src/trace/index.js';
import { inch, lb, show, toWire } from '../../../src/units/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';
import { workingsIn } from '../../helpers/specs.js';
import { expectReplays } from '../../helpers/working.js';

describe('curb weight', () => {
  const parts = [
    { name: 'frame', weight: lb(1000), at: inch(150) },
    { name: 'axles', weight: lb(500), at: inch(180) },
  ];
  it('is the sum of its parts and acts where their moments put it', () => {
    const curb = rightOf(curbWeight(parts));
    expectReplays(...workingsIn(curb));
    expect([show(curb.weight.value), show(curb.at.value), curb.lines.map(({ name }) => name)]).toEqual([
      '1,500 lb',
      '160 in',
      ['frame', 'axles'],
    ]);
  });
  it('is as weak as its weakest part', () => {
    const curb = rightOf(
      curbWeight([
        { name: 'frame', weight: given('frame weight', lb(1000), 'scale'), at: inch(150) },
        { name: 'deck', weight: given('deck weight', lb(600), 'estimated'), at: inch(170) },
      ]),
    );
    expect(weakestInputs(curb.weight)).toMatchObject({ basis: 'estimated', inputs: [{ symbol: 'deck weight' }] });
  });
  it('of nothing is refused', () => {
    expect(leftOf(curbWeight([]))).toMatchObject({ tag: 'NothingWeighed' });
    expect(leftOf(curbWeight([{ name: 'air', weight: lb(0), at: inch(1) }]))).toMatchObject({
      tag: 'NothingWeighed',
      gross: toWire(lb(0)),
    });
  });
});
