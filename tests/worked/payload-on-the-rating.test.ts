/** Rating less unloaded weight, as letters and guides print it. */
import { describe, expect, it } from 'vitest';
import { balance, payload } from '../../src/load/index.js';
import { checkLoad, rating, weight } from '../../src/ratings/index.js';
import { constant, converted, given, inPounds, sum } from '../../src/trace/index.js';
import { inch, kg, lb, ratio, show } from '../../src/units/index.js';
import { rightOf } from '../helpers/either.js';
import { expectReplays } from '../helpers/working.js';

const tenth = { low: constant(ratio('0.1')), high: constant(ratio('0.1')) };

describe('payload on the rating', () => {
  it('payload-us: 15,000 less 8,600 is 6,400 lb (figures in NHTSA letter aiam1673)', () => {
    const { anywhere } = rightOf(
      payload(given('unloaded', lb(8600)), tenth, [
        { name: 'GVWR', on: 'gross', limit: given('GVWR', lb(15000), 'label') },
      ]),
    );
    expectReplays(anywhere!.weight);
    expect(show(anywhere!.weight.value)).toBe('6,400 lb');
  });
  it('payload-au: 2,000 kg less a tare of 700 is 1,300 kg (VSB 1 revision 6 as quoted in a magazine, grade B)', () => {
    const { anywhere } = rightOf(
      payload(inPounds('tare', kg(700)), tenth, [{ name: 'ATM', on: 'gross', limit: inPounds('ATM', kg(2000)) }]),
    );
    const metric = converted('payload', anywhere!.weight, 'kg');
    expectReplays(metric);
    expect(metric.value.value.toDecimalPlaces(25).toNumber()).toBe(1300);
  });
  it('gvwr-min-us: 2,000 lb and 5,000 lb of cargo need a GVWR of 7,000 lb; equality is allowed (49 CFR 567.4(g)(3) as read in nht76-3.20, aiam0613)', () => {
    const laden = sum('unloaded and rated cargo', [given('unloaded', lb(2000)), given('rated cargo', lb(5000))]);
    expectReplays(laden);
    expect(
      [6999, 7000, 7001].map((gvwr) => checkLoad(rating('GVWR', lb(gvwr)), weight('gross', laden)).verdict),
    ).toEqual(['over', 'within', 'within']);
  });
});

describe('F11: ATM less GTM is the tongue load (web example, grade C)', () => {
  it('2,890 kg less 2,650 kg is 240 kg', () => {
    const axlesAt = inch(200);
    const { tongue, axleLoad } = rightOf(
      balance([{ name: 'laden trailer', weight: kg(2890), tongue: kg(240) }], { axlesAt }),
    );
    expectReplays(tongue, axleLoad);
    expect(
      [tongue, axleLoad].map((figure) => converted('figure', figure, 'kg').value.value.toDecimalPlaces(25).toNumber()),
    ).toEqual([240, 2650]);
  });
});
