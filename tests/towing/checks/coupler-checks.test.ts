/** The trailer's own side of the hitch: coupler and chains, whatever tows it. */
import { describe, expect, it } from 'vitest';
import { couplerChecks, safetyChains, type TowedTrailer, towChecks } from '../../../src/towing/index.js';
import { kg, lb, show } from '../../../src/units/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';
import { expectReplays } from '../../helpers/working.js';

const trailer: TowedTrailer = {
  gross: lb(12400),
  tongue: lb(1400),
  coupler: { gross: lb(14000), tongue: lb(1400) },
  chains: { each: lb(18000), count: 2 },
};

describe('coupler and chains', () => {
  it('are asked without a tow vehicle, and as part of the whole chain with one', () => {
    const { checks, notChecked, notes } = rightOf(couplerChecks(trailer));
    expect(checks.map(({ what, verdict, reserve }) => `${what}: ${verdict} ${show(reserve.value)}`)).toEqual([
      'gross against coupler gross: within 1,600 lb',
      'tongue against coupler tongue: within 0 lb',
      'gross against safety chains, together: within 23,600 lb',
      'gross against safety chains, each: within 5,600 lb',
    ]);
    expect([notChecked, notes]).toEqual([[], []]);
    expectReplays(...checks.flatMap(({ reserve, used }) => [reserve, used]));
    const whole = rightOf(towChecks({ hitch: 'ball behind' }, trailer));
    expect(whole.checks.map(({ what }) => what)).toEqual(checks.map(({ what }) => what));
  });
  it('answer where the whole trailer rests on the coupler', () => {
    const { checks } = rightOf(couplerChecks({ gross: lb(1400), tongue: lb(1400), coupler: { tongue: lb(1400) } }));
    expect(checks.map(({ verdict }) => verdict)).toEqual(['within']);
  });
  it('pass nothing for want of a fact', () => {
    const { checks, notChecked } = rightOf(couplerChecks({ gross: lb(12400) }));
    expect(checks).toEqual([]);
    expect(notChecked.map(({ missing }) => missing)).toEqual([
      ['coupler gross'],
      ['coupler tongue', 'tongue load'],
      ['safety chains'],
    ]);
  });
  it('answer for a tongue that carries more than the whole trailer: it tips over its ball', () => {
    const heavy = rightOf(couplerChecks({ ...trailer, tongue: lb(12401), coupler: { tongue: lb(1400) } }));
    expect(heavy.notes.map(({ tag }) => tag)).toEqual(['TongueAboveGross']);
    expect(heavy.checks.map(({ id, verdict }) => `${id} ${verdict}`)).toContain('coupler/tongue over');
    expect(rightOf(couplerChecks({ ...trailer, tongue: lb(12400) })).notes).toEqual([]);
  });
  it('answer for a tongue that pulls up, and refuse what cannot be', () => {
    expect(rightOf(couplerChecks({ ...trailer, tongue: lb(-50) })).notes.map(({ tag }) => tag)).toEqual([
      'NegativeTongue',
    ]);
    const tag = (towed: Partial<TowedTrailer>): string => leftOf(couplerChecks({ ...trailer, ...towed })).tag;
    expect([
      tag({ gross: lb(0) }),
      tag({ coupler: { gross: lb(0) } }),
      tag({ chains: { each: lb(0), count: 2 } }),
    ]).toEqual(['NotAboveZero', 'NotAboveZero', 'NotAboveZero']);
  });
});

describe('safety chains', () => {
  it.each([
    [12400, 2, ['together within', 'each within'], 0],
    [7000, 2, ['together within', 'each over'], 1],
    [6200, 2, ['together within', 'each over'], 1],
    [6199, 2, ['together over', 'each over'], 0],
    [12400, 1, ['each within'], 0],
    [12399, 1, ['each over'], 0],
  ] as const)('of %s lb, %s of them, against 12,400 lb', (each, count, verdicts, notes) => {
    const found = rightOf(safetyChains({ each: lb(each), count }, lb(12400)));
    expect(found.checks.map(({ what, verdict }) => `${what.split(', ')[1]} ${verdict}`)).toEqual(verdicts);
    expect(found.notes.map(({ tag }) => tag)).toEqual(Array.from({ length: notes }, () => 'ChainReadingsDiffer'));
    expectReplays(...found.checks.map(({ reserve }) => reserve));
  });
  it('take any unit of weight, and refuse a weight of nothing', () => {
    expect(rightOf(safetyChains({ each: kg(5000), count: 1 }, kg(5000))).checks.map(({ verdict }) => verdict)).toEqual([
      'within',
    ]);
    expect(leftOf(safetyChains({ each: lb(7000), count: 1 }, lb(0)))).toMatchObject({
      tag: 'NotAboveZero',
      what: 'trailer gross',
    });
  });
});
