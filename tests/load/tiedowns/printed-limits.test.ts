/** The printed working load limits. */
import { describe, expect, it } from 'vitest';
import { chainLimit, unmarkedWireRope, webbingLimit, wireRopeLimit } from '../../../src/load/index.js';
import { compare, lb, show } from '../../../src/units/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';
import { expectReplays } from '../../helpers/working.js';

describe('printed limits', () => {
  it('gives lb and kg as printed', () => {
    const found = rightOf(chainLimit('3/8', '70'));
    expect([show(found.lb.value), show(found.kg.value)]).toEqual(['6,600 lb', '2,990 kg']);
    expect(show(rightOf(webbingLimit('2 in')).lb.value)).toBe('2,000 lb');
    expect(show(rightOf(wireRopeLimit('3/8"')).lb.value)).toBe('3,000 lb');
    expectReplays(found.lb, found.kg);
  });
  it('keeps 5/16 grade 80 below grade 70, as printed', () => {
    expect(compare(rightOf(chainLimit('5/16', '80')).lb.value, rightOf(chainLimit('5/16', '70')).lb.value)).toBe(-1);
  });
  it('reads unmarked chain as grade 30', () => {
    expect(show(rightOf(chainLimit('3/8', 'unmarked')).lb.value)).toBe('2,650 lb');
  });
  it('names the nearest rows when a size is not printed', () => {
    expect(leftOf(chainLimit('9/32', '70'))).toMatchObject({
      tag: 'NotTabulated',
      asked: '9/32 grade 70',
      nearest: ['1/4 grade 70', '5/16 grade 70', expect.any(String)],
    });
    expect(leftOf(chainLimit('7/16', '80')).nearest[0]).toBe('7/16 grade 30');
    expect(leftOf(webbingLimit('27')).nearest[0]).toBe('4');
    expect(leftOf(wireRopeLimit('thick')).nearest).toHaveLength(3);
  });
  it('takes a quarter of the strength of unmarked wire rope', () => {
    expect(show(unmarkedWireRope(lb(12000)).value)).toBe('3,000 lb');
    expectReplays(unmarkedWireRope(lb(12000)));
  });
});
