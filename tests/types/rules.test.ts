/** Lines of the rules chapter that must not compile. */
import { describe, expect, it } from 'vitest';
import { axleGroupLimit, type Condition, type Facts, federalRule, licenceGroup } from '../../src/rules/index.js';
import { foot, inch, lb } from '../../src/units/index.js';

describe('what does not compile', () => {
  it('keeps weights, lengths and names apart', () => {
    const attempts = [
      // @ts-expect-error a width is a length
      (): Facts => ({ 'overall width': lb(80) }),
      // @ts-expect-error a rating is a weight
      (): Facts => ({ 'trailer GVWR': inch(80) }),
      // @ts-expect-error a bare number is no weight
      (): Facts => ({ 'trailer GVWR': 10000 }),
      // @ts-expect-error no such fact
      (): Facts => ({ 'trailer colour': lb(1) }),
      // @ts-expect-error a weight is not compared in inches
      (): Condition => ({ test: 'trailer GVWR', operator: '>', line: { value: '1' }, unit: 'in' }),
      // @ts-expect-error no such operator
      (): Condition => ({ test: 'trailer GVWR', operator: '=>', line: { value: '1' }, unit: 'lb' }),
      // @ts-expect-error a length is not a share of a weight
      (): Condition => ({ test: 'overall width', operator: '>', line: { times: '1', of: 'trailer GVWR' }, unit: 'in' }),
    ];
    expect(attempts.length).toBe(7);
  });
  it('leaves no choice to a default', () => {
    const attempts = [
      // @ts-expect-error the tie rule is not chosen
      () => axleGroupLimit({ count: 2, length: foot(9), twoTandems: false }, { lengthRounding: 'none' }),
      // @ts-expect-error whether it is two tandems is not said
      () => axleGroupLimit({ count: 2, length: foot(9) }, { tie: 'down', lengthRounding: 'none' }),
      // @ts-expect-error what the label shows is not said
      () => licenceGroup({ powerUnit: { gvwr: lb(9000), gross: 'not above GVWR' }, towed: [] }),
      // @ts-expect-error what the truck weighs is not said
      () => licenceGroup({ powerUnit: { gvwr: lb(9000) }, towed: [], labelGcwr: 'not shown' }),
      // @ts-expect-error no such federal rule
      () => federalRule('no-such-rule'),
    ];
    expect(attempts.length).toBe(5);
  });
});
