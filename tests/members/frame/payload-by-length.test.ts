/** Payload over deck lengths. All trailers are invented. */
import { describe, expect, it } from 'vitest';
import { payloadByLength } from '../../../src/members/index.js';
import { compare, foot, lb, lbPerFt } from '../../../src/units/index.js';
import { leftOf, plain, rightOf } from '../../helpers/either.js';
import { expectReplays } from '../../helpers/working.js';

describe('payload by length', () => {
  const design = {
    gvwr: lb(14000),
    baseWeight: lb(2950),
    baseLength: foot(18),
    perFoot: lbPerFt(71),
    lengths: [18, 20, 22, 24].map(foot),
  };
  it('14,000 lb, 2,950 lb at 18 ft, 71 lb/ft: 11,050 / 10,908 / 10,766 / 10,624 (derived)', () => {
    const { rows } = rightOf(payloadByLength(design));
    expect(rows.map(({ payload }) => plain(payload))).toEqual([11050, 10908, 10766, 10624]);
    expect(rows.map(({ verdict }) => verdict)).toEqual(['within', 'within', 'within', 'within']);
    expectReplays(...rows.map(({ payload }) => payload));
  });
  it('16 ft gains what 20 ft loses; an empty trailer above its GVWR is over, an answer', () => {
    const { rows } = rightOf(payloadByLength({ ...design, lengths: [foot(16)] }));
    expect(plain(rows[0]!.payload)).toBe(11192);
    const over = rightOf(payloadByLength({ ...design, gvwr: lb(2950), lengths: [foot(18), foot(19)] }));
    expect(over.rows.map(({ verdict }) => verdict)).toEqual(['within', 'over']);
    expect(compare(over.rows[1]!.payload.value, lb(-71))).toBe(0);
  });
  it('refuses lengths of nothing and a trailer that would weigh nothing', () => {
    expect(leftOf(payloadByLength({ ...design, lengths: [] }))).toMatchObject({ tag: 'NothingListed' });
    expect(leftOf(payloadByLength({ ...design, lengths: [foot(0)] }))).toMatchObject({
      tag: 'OutsideItsRange',
      what: 'length',
    });
    const refused = (change: object) => leftOf(payloadByLength({ ...design, ...change }));
    expect(refused({ gvwr: lb(0) })).toMatchObject({ what: 'GVWR' });
    expect(refused({ baseWeight: lb(0) })).toMatchObject({ what: 'empty weight' });
    expect(refused({ baseLength: foot(0) })).toMatchObject({ what: 'base length' });
    expect(refused({ perFoot: lbPerFt(0) })).toMatchObject({ what: 'growth per foot' });
    expect(leftOf(payloadByLength({ ...design, perFoot: lbPerFt(500), lengths: [foot(1)] }))).toMatchObject({
      tag: 'OutsideItsRange',
      what: 'empty weight at this length',
    });
  });
});
