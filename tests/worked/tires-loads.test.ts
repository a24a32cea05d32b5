/** Worked examples of tire loads and pressures, each with its source. */
import { describe, expect, it } from 'vitest';
import {
  dateCode,
  loadAtPressure,
  loadIndex,
  loadRange,
  pressureForLoad,
  rangePressure,
  type Service,
  speedInformation,
  tireLoadRating,
} from '../../src/tires/index.js';
import { explain, weakestInputs } from '../../src/trace/index.js';
import { lb, mph, psi, show } from '../../src/units/index.js';
import { rightOf } from '../helpers/either.js';
import { expectReplays } from '../helpers/working.js';

const single: Service = { fitment: 'single', on: 'trailer' };
const dual: Service = { fitment: 'dual', on: 'trailer' };
const tags = (answer: { notes: readonly { tag: string }[] }): string[] => answer.notes.map(({ tag }) => tag);

describe('sidewall article ST-5: ST225/75R15 load range E 117/112N', () => {
  const designation = 'ST225/75R15 117/112N LRE';
  it('index pounds are 2,833 and 2,469, molded 2,830 and 2,470: the molded figures govern and the gap is told', () => {
    const molded = { single: lb(2830), dual: lb(2470) };
    for (const [service, load, other] of [
      [single, 2830, 2833],
      [dual, 2470, 2469],
    ] as const) {
      const found = rightOf(tireLoadRating({ designation, molded }, service));
      expectReplays(found.rating);
      expect(found).toMatchObject({ from: 'molded' });
      expect(found.rating.value.value.toNumber()).toBe(load);
      expect(rightOf(tireLoadRating({ designation }, service)).rating.value.value.toDecimalPlaces(0).toNumber()).toBe(
        other,
      );
      expect(tags(found)).toContain('MoldedDiffersFromIndex');
    }
  });
  it('rests on the label when molded', () => {
    expect(
      weakestInputs(rightOf(tireLoadRating({ designation, molded: { single: lb(2830) } }, single)).rating).basis,
    ).toBe('label');
  });
});

describe('maker table ST-2, 2006: ST225/75R15', () => {
  it('2,400 lb a tire needs 65 psi (2,540); 60 psi gives only 2,380', () => {
    const needed = rightOf(pressureForLoad('ST225/75R15 LRD', lb(2400), 'single'));
    expectReplays(needed.pressure, needed.carries);
    expect([show(needed.pressure.value), show(needed.carries.value)]).toEqual(['65 psi', '2,540 lb']);
    expect(show(rightOf(loadAtPressure('ST225/75R15 LRD', psi(60), 'single')).load.value)).toBe('2,380 lb');
  });
  it('hands back what the choice of the row rests on', () => {
    const { decisions } = rightOf(pressureForLoad('ST225/75R15 LRD', lb(2400), 'single'));
    expect(decisions.at(-1)).toMatchObject({ holds: true, comparison: '<=' });
    expect(decisions.at(-2)?.holds).toBe(false);
    expect(
      rightOf(loadAtPressure('ST225/75R15 LRD', psi(62), 'single')).decisions.map(({ comparison, holds }) => [
        comparison,
        holds,
      ]),
    ).toEqual([
      ['<=', true],
      ['<', true],
    ]);
  });
});

describe('pressure table LT-2: 8.00-16.5', () => {
  it('D 105/101 carries 2,040 lb single and 1,825 lb dual at 60 psi', () => {
    const size = '8.00-16.5/D 105/101';
    expect(show(rightOf(loadAtPressure(size, psi(60), 'single')).load.value)).toBe('2,040 lb');
    expect(show(rightOf(loadAtPressure(size, psi(60), 'dual')).load.value)).toBe('1,825 lb');
    expect(show(rightOf(rangePressure('LT-numeric', 'D', size)).pressure.value)).toBe('60 psi');
  });
});

describe('trade magazine TR-2: 295/75R22.5 G', () => {
  it('dual 5,000 lb a tire needs 85 psi; at 100 psi 5,675 dual, 5,780 single', () => {
    expect(show(rightOf(pressureForLoad('295/75R22.5 LRG', lb(5000), 'dual')).pressure.value)).toBe('85 psi');
    expect(show(rightOf(loadAtPressure('295/75R22.5 LRG', psi(100), 'dual')).load.value)).toBe('5,675 lb');
    expect(show(rightOf(loadAtPressure('295/75R22.5 LRG', psi(100), 'single')).load.value)).toBe('5,780 lb');
  });
});

describe('owner manual LT-1 and maker sheet LT-3: LT235/85R16 E', () => {
  it('a dual pair of 5,556 lb is 2,778 lb a tire, single 3,042, at 80 psi; the index says 3,086 and 2,756', () => {
    for (const [fitment, load, index] of [
      ['single', '3042', '3086'],
      ['dual', '2778', '2756'],
    ] as const) {
      expect(rightOf(loadAtPressure('LT235/85R16 LRE', psi(80), fitment)).load.value.value.toFixed()).toBe(load);
      expect(
        rightOf(
          tireLoadRating({ designation: 'LT235/85R16 LRE' }, { fitment, on: 'trailer' }),
        ).rating.value.value.toFixed(),
      ).toBe(load);
      expect(
        rightOf(
          tireLoadRating({ designation: 'LT235/85R16 120/116R E' }, { fitment, on: 'trailer' }),
        ).rating.value.value.toFixed(0),
      ).toBe(index);
    }
  });
});

describe('agency letters', () => {
  it('letter aiam0583 (1972): four dual tires molded 3,550 lb sum to 14,200, below a GAWR of 17,500', () => {
    const tire = { designation: '8.25-20 10PR', molded: { single: lb(4050), dual: lb(3550) } };
    const each = rightOf(tireLoadRating(tire, dual)).rating.value.value.toNumber();
    expect([each, each * 4, each * 4 < 17500]).toEqual([3550, 14200, true]);
  });
  it('letter 77-3.26 (1977): 10.00-20(F) duals on a GAWR of 19,040 lb imply 4,760 lb a tire, which are molded here', () => {
    const each = rightOf(
      tireLoadRating({ designation: '10.00-20(F)', molded: { dual: lb(4760) } }, dual),
    ).rating.value.value.toNumber();
    expect(each * 4).toBe(19040);
  });
  it('letter nht76-1.47 (1976): a passenger tire on a trailer is divided by 1.10', () => {
    const found = rightOf(tireLoadRating({ designation: 'P235/75R15' }, single));
    expectReplays(found.rating);
    expect(found.rating.value.value.times('1.10').toDecimalPlaces(20).toFixed()).toBe('2028');
    expect(explain(found.rating)).toContain('571.120');
    expect(
      rightOf(
        tireLoadRating({ designation: 'P235/75R15' }, { fitment: 'single', on: 'passenger car' }),
      ).rating.value.value.toFixed(),
    ).toBe('2028');
    expect(
      rightOf(tireLoadRating({ designation: '215/65R15 96H' }, single))
        .rating.value.value.toDecimalPlaces(2)
        .toFixed(),
    ).toBe('1422.98');
  });
});

describe('speed convention SS, two copies', () => {
  it('an ST tire without a symbol: 70 mph asks 10 psi more, 80 mph 10 % less load besides; neither is a rating', () => {
    expect(rightOf(speedInformation('ST205/75R15 LRD', mph(65))).says).toBe('as marked');
    expect(rightOf(speedInformation('ST205/75R15 LRD', mph(70))).says).toBe('more pressure');
    expect(rightOf(speedInformation('ST205/75R15 LRD', mph(80))).says).toBe('more pressure and less load');
    const fast = rightOf(speedInformation('ST205/75R15 LRD', mph(90)));
    expect(fast.says).toBe('nothing published');
    expect(tags(fast)).toContain('NotForRatings');
  });
  it('a speed symbol governs: N is 87 mph (140 km/h)', () => {
    expect(rightOf(speedInformation('ST225/75R15 117/112N', mph(86))).says).toBe('as marked');
    expect(rightOf(speedInformation('ST225/75R15 117/112N', mph(88))).says).toBe('above what the tire is marked for');
  });
});

describe('trade facts and traps', () => {
  it('load range D is an 8-ply rating, 65 psi in ST sizes (common practice, no source; LR-1, ST-1)', () => {
    expect(rightOf(loadRange('D')).plyRating).toBe(8);
    expect(show(rightOf(rangePressure('ST-metric', 'D')).pressure.value)).toBe('65 psi');
  });
  it('four ST225/75R15 load range D tires bear 10,160 lb by the tables; a molded 2,620 is told to differ (ST-1 to ST-4)', () => {
    expect(
      rightOf(tireLoadRating({ designation: 'ST225/75R15 LRD' }, single))
        .rating.value.value.times(4)
        .toNumber(),
    ).toBe(10160);
    const claimed = rightOf(tireLoadRating({ designation: 'ST225/75R15 LRD', molded: { single: lb(2620) } }, single));
    expect([claimed.rating.value.value.toNumber(), tags(claimed).includes('MoldedDiffersFromTable')]).toEqual([
      2620,
      true,
    ]);
  });
  it('index 113 is 1,150 kg and 2,535 lb (LI-4)', () => {
    const { kg, lb: pounds } = rightOf(loadIndex(113));
    expect([show(kg.value), show(pounds.value)]).toEqual(['1,150 kg', '2,535 lb']);
  });
  it('date codes 3416 and 3403 are week 34 of 2016 and of 2003 (ST-5, AG)', () => {
    expect(rightOf(dateCode('3416'))).toMatchObject({ week: 34, years: [2016] });
    expect(rightOf(dateCode('DOT XXXX XXXX 3403'))).toMatchObject({ week: 34, years: [2003] });
    expect(rightOf(dateCode('348')).years).toEqual([1978, 1988, 1998]);
  });
});
