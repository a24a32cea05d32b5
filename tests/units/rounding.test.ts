/** Rounding by name: capacities down, loads up, halves away from zero; zero, signs, exact ties and almost-ties. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { asDerived, difference, product, sum } from '../../src/trace/index.js';
import { doubleOf } from '../../src/units/figure.js';
import {
  compare,
  inch,
  lb,
  psi,
  ratio,
  roundCapacityDown,
  roundLoadUp,
  roundNearest,
  show,
  showBrief,
  showFeetInches,
} from '../../src/units/index.js';
import { roundLoadAway, roundToStep, stepsOfDouble } from '../../src/units/rounding.js';
import { decimals } from '../helpers/arbitraries.js';

describe('rounding', () => {
  it('prints a load up, and one that lifts away from zero: it is held down by at least that', () => {
    const printed = ['1631.2', '1631', '0', '-3803.46', '-3803'].map((load) => show(roundLoadAway(lb(load), lb(1))));
    expect(printed).toEqual(['1,632 lb', '1,631 lb', '0 lb', '-3,804 lb', '-3,803 lb']);
  });
  it.each([
    // figure, step, down, up, nearest
    ['0', '1', '0 lb', '0 lb', '0 lb'],
    ['-0', '5', '0 lb', '0 lb', '0 lb'],
    ['10752.9', '1', '10,752 lb', '10,753 lb', '10,753 lb'],
    ['10752', '1', '10,752 lb', '10,752 lb', '10,752 lb'],
    ['0.4', '1', '0 lb', '1 lb', '0 lb'],
    ['0.5', '1', '0 lb', '1 lb', '1 lb'],
    ['-0.4', '1', '-1 lb', '0 lb', '0 lb'],
    ['-0.5', '1', '-1 lb', '0 lb', '-1 lb'],
    ['-1.5', '1', '-2 lb', '-1 lb', '-2 lb'],
    ['2.5', '1', '2 lb', '3 lb', '3 lb'],
    ['1250', '100', '1,200 lb', '1,300 lb', '1,300 lb'],
    ['1249.999', '100', '1,200 lb', '1,300 lb', '1,200 lb'],
    ['0.125', '0.25', '0 lb', '0.25 lb', '0.25 lb'],
    ['7', '5', '5 lb', '10 lb', '5 lb'],
    ['-7', '5', '-10 lb', '-5 lb', '-5 lb'],
    ['2539.5', '0.5', '2,539.5 lb', '2,539.5 lb', '2,539.5 lb'],
  ])('%s to steps of %s', (figure, step, down, up, nearest) => {
    const [q, to] = [lb(figure), lb(step)];
    expect([roundCapacityDown(q, to), roundLoadUp(q, to), roundNearest(q, to)].map(show)).toEqual([down, up, nearest]);
  });

  it('sends halves toward zero where a published column does so', () => {
    const halvesDown = (value: string): string => roundToStep(lb(value).value, lb(5).value, 'nearest-down').toFixed();
    expect(['2.5', '-2.5', '7.5', '7.6', '0', '-0'].map(halvesDown)).toEqual(['0', '0', '5', '10', '0', '0']);
  });

  it('treats a quotient that was cut at 34 digits as the figure it stands for', () => {
    for (let parts = 3; parts <= 60; parts += 1) {
      const again = lb(lb(7000).value.div(parts).times(parts));
      expect(show(roundCapacityDown(again, lb(1)))).toBe('7,000 lb');
      expect(show(roundLoadUp(again, lb(1)))).toBe('7,000 lb');
      const half = lb(lb('2.5').value.div(parts).times(parts));
      expect(show(roundNearest(half, lb(1)))).toBe('3 lb');
      expect(show(roundNearest(lb(half.value.neg()), lb(1)))).toBe('-3 lb');
    }
  });

  it('does not swallow a real difference', () => {
    expect(show(roundLoadUp(lb('7000.00000000000001'), lb(1)))).toBe('7,001 lb');
    expect(show(roundCapacityDown(lb('6999.99999999999999'), lb(1)))).toBe('6,999 lb');
  });

  it('never lifts a capacity, never lowers a load, and leaves what is on a step', () => {
    fc.assert(
      fc.property(decimals, fc.constantFrom('0.1', '0.25', '1', '5', '50'), (digits, step) => {
        const [q, to] = [psi(digits), psi(step)];
        const [down, up, nearest] = [roundCapacityDown(q, to), roundLoadUp(q, to), roundNearest(q, to)];
        expect(compare(down, q)).toBeLessThanOrEqual(0);
        expect(compare(up, q)).toBeGreaterThanOrEqual(0);
        expect(up.value.minus(down.value).lte(to.value)).toBe(true);
        expect([down, up].some((side) => side.value.eq(nearest.value))).toBe(true);
        for (const side of [down, up, nearest]) expect(roundNearest(side, to).value.eq(side.value)).toBe(true);
      }),
      { numRuns: 500 },
    );
  });

  it('leaves a large figure on a small step, where its double is not', () => {
    const cents = lb('0.01');
    for (let i = 0; i < 500; i += 1) {
      const q = lb(`${10_000_000 + 7 * i}.${String(i % 100).padStart(2, '0')}`);
      for (const round of [roundCapacityDown, roundLoadUp, roundNearest])
        expect(round(q, cents).value.eq(q.value), show(q)).toBe(true);
    }
    // 686 / 0.07 is a hair below 9,800 in doubles, 6,314 / 0.41 a hair above 15,400.
    for (let i = 1; i < 300; i += 1)
      for (const [q, step] of [
        [lb(7 * i), lb('0.07')],
        [lb(41 * i), lb('0.41')],
      ] as const)
        for (const round of [roundCapacityDown, roundLoadUp])
          expect(round(q, step).value.eq(q.value), show(q)).toBe(true);
  });

  it('asks the digits of a figure that its double lost', () => {
    // (2^52 + 0.5) - 2^52: doubles give zero, half a pound off; (2^45 + 2^-8) - 2^45 likewise.
    const left = (large: number, small: string) => {
      const one = product('large', asDerived('x', lb(large)), asDerived('share', ratio(2 ** 26)));
      return difference('left', sum('all', [one, asDerived('small', lb(small))]), one).value;
    };
    const half = left(2 ** 26, '0.5');
    expect([doubleOf(half), showBrief(half, 0)]).toEqual([0, '1 lb']);
    // 2^48 in and 1/32 in, less 2^48 in, is half of a sixteenth.
    const inches = product('large', asDerived('x', inch(2 ** 24)), asDerived('share', ratio(2 ** 24)));
    const thirtySecond = difference('left', sum('all', [inches, asDerived('small', inch('0.03125'))]), inches).value;
    expect([doubleOf(thirtySecond), showFeetInches(thirtySecond)]).toEqual([0, `0' 0 1/16"`]);
    expect(show(roundNearest(left(2 ** 26, '0.5'), lb(1)))).toBe('1 lb');
    expect(show(roundNearest(left(2 ** 19, '0.00390625'), lb('0.0078125')))).toBe('0.0078125 lb');
  });

  it('in doubles is what it is in decimals, for every mode, at halves and beside them', () => {
    const modes = ['down', 'up', 'nearest', 'nearest-down'] as const;
    for (const mode of modes) {
      for (let eighths = -40; eighths <= 40; eighths += 1) {
        const steps = roundToStep(lb(eighths / 8).value, lb(1).value, mode).toNumber();
        expect(stepsOfDouble(eighths / 8, 0, mode), `${mode} ${eighths / 8}`).toBe(steps === 0 ? 0 : steps);
      }
      // Near an edge an uncertain double does not tell; clear of it, it does.
      const edge = mode === 'down' || mode === 'up' ? 3 : 3.5;
      for (const off of [-1e-9, 0, 1e-9]) expect(stepsOfDouble(edge + off, 1e-8, mode)).toBeUndefined();
      for (const off of [-0.25, 0.25])
        expect(stepsOfDouble(edge + off, 1e-8, mode)).toBe(
          roundToStep(lb(edge + off).value, lb(1).value, mode).toNumber(),
        );
      expect(stepsOfDouble(2 ** 41, 0, mode)).toBeUndefined();
      expect(stepsOfDouble(Number.NaN, 0, mode)).toBeUndefined();
    }
  });
  it('refuses a step that is not greater than zero', () => {
    for (const step of ['0', '-1', '-0']) expect(() => roundNearest(lb(1), lb(step))).toThrow(RangeError);
  });
});

describe('printing', () => {
  it.each([
    [0, '0 lb'],
    [-0, '0 lb'],
    ['-0.001', '0 lb'],
    ['0.005', '0.01 lb'],
    ['-0.005', '-0.01 lb'],
    ['999999.995', '1,000,000 lb'],
    ['1234567.1', '1,234,567.1 lb'],
    ['12.30', '12.3 lb'],
  ])('showBrief of %s', (figure, text) => expect(showBrief(lb(figure))).toBe(text));
  it('showBrief rounds by the digits where the double stands on the half', () => {
    const nines = '9'.repeat(17);
    expect(
      [`0.124${nines}`, `0.1250${'0'.repeat(16)}1`, '0.125', `-0.124${nines}`].map((text) => showBrief(lb(text))),
    ).toEqual(['0.12 lb', '0.13 lb', '0.13 lb', '-0.12 lb']);
    expect([`1234567.4${nines}`, '1234567.5'].map((text) => showBrief(lb(text), 0))).toEqual([
      '1,234,567 lb',
      '1,234,568 lb',
    ]);
  });
  it('prints every digit of a figure that is exact in doubles', () => {
    const share = asDerived('share', ratio('0.03125'));
    const small = product('small', asDerived('x', lb('0.03125')), share);
    const large = asDerived('large', lb(999_999_999));
    expect(show(small.value)).toBe('0.0009765625 lb');
    expect(show(sum('all', [large, small]).value)).toBe('999,999,999.0009765625 lb');
    expect(show(difference('left', small, large).value)).toBe('-999,999,998.9990234375 lb');
    expect(show(sum('both', [large, asDerived('x', lb('0.03125'))]).value)).toBe('999,999,999.03125 lb');
  });
  it('showBrief prints figures that no double holds', () => {
    const [zeros, groups] = ['0'.repeat(399), ',000'.repeat(133)];
    expect(showBrief(lb(`1${zeros}`))).toBe(`1${groups} lb`);
    expect(showBrief(lb(`12${zeros}`), 4)).toBe(`12${groups} lb`);
  });
  it('showBrief takes any number of places, tens and hundreds too', () => {
    const shown = (places: number): string => showBrief(lb('1234.5678912345'), places);
    expect([-2, -1, 0, 4, 5, 7, 12].map(shown)).toEqual([
      '1,200 lb',
      '1,230 lb',
      '1,235 lb',
      '1,234.5679 lb',
      '1,234.56789 lb',
      '1,234.5678912 lb',
      '1,234.5678912345 lb',
    ]);
  });
  it.each([
    [0, `0' 0"`],
    ['198.5', `16' 6 1/2"`],
    ['-66', `-5' 6"`],
    ['11.99', `1' 0"`],
    ['-0.01', `0' 0"`],
    ['0.03125', `0' 0 1/16"`],
    ['143.97', `12' 0"`],
    // By their decimals: a hair below the half of a sixteenth, and too large for doubles to tell.
    [`0.03124${'9'.repeat(18)}`, `0' 0"`],
    [`0.1562500${'0'.repeat(16)}1`, `0' 0 3/16"`],
    ['109951162777.5', `9162596898' 1 1/2"`],
    ['-109951162777.5', `-9162596898' 1 1/2"`],
  ])('showFeetInches of %s', (figure, text) => expect(showFeetInches(inch(figure))).toBe(text));
});
