/** Load at a pressure. */
import { describe, expect, it } from 'vitest';
import { loadAtPressure } from '../../../src/tires/index.js';
import { kPa, psi, show } from '../../../src/units/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';
import { expectReplays } from '../../helpers/working.js';

const tags = ({ notes }: { notes: readonly { tag: string }[] }): string[] => notes.map(({ tag }) => tag);

describe('loadAtPressure', () => {
  it('takes the row below, never between', () => {
    for (const [at, load] of [
      [60, '2,380 lb'],
      ['64.999', '2,380 lb'],
      [65, '2,540 lb'],
    ] as const) {
      const found = rightOf(loadAtPressure('ST225/75R15 LRD', psi(at), 'single'));
      expectReplays(found.load, found.row);
      expect(show(found.load.value)).toBe(load);
    }
  });
  it("gives no more than the pressure of the tire's own load range", () => {
    expect(leftOf(loadAtPressure('ST225/75R15 LRD', psi(80), 'single'))).toMatchObject({
      tag: 'PressureAboveRated',
      asked: '80 psi',
      rated: '65 psi',
    });
    expect(leftOf(loadAtPressure('31x10.50R15LT LRB', psi(40), 'single'))).toMatchObject({
      tag: 'PressureAboveRated',
      rated: '35 psi',
    });
    expect(leftOf(loadAtPressure('ST225/75R15 LRE', psi(90), 'single'))).toMatchObject({
      tag: 'PressureAboveRated',
      rated: '80 psi',
    });
    expect(leftOf(loadAtPressure('ST225/75R15 LRE', psi(90), 'single', { table: 'ST-3' }))).toMatchObject({
      tag: 'NotTabulated',
      nearest: ['2,540 lb at 65 psi'],
    });
  });
  it('gives no more than the pressure printed for the size and letter, where the family has another', () => {
    // 8.00-16.5 is printed with 45, 60 and 75 psi for C, D and E; its family has 50, 65 and 80.
    for (const [letter, rated] of [
      ['C', 45],
      ['D', 60],
      ['E', 75],
    ] as const) {
      rightOf(loadAtPressure(`8.00-16.5 LR${letter}`, psi(rated), 'single'));
      expect(leftOf(loadAtPressure(`8.00-16.5 LR${letter}`, psi(rated + 5), 'single'))).toMatchObject({
        tag: 'PressureAboveRated',
        rated: `${rated} psi`,
      });
    }
  });
  it('is not tabulated below the first row, with the nearest', () => {
    expect(leftOf(loadAtPressure('ST225/75R15 LRD', psi(14), 'single'))).toMatchObject({
      tag: 'NotTabulated',
      nearest: ['1,060 lb at 15 psi'],
    });
    expect(leftOf(loadAtPressure('31x10.50R15LT', psi(55), 'single'))).toMatchObject({
      tag: 'NotTabulated',
      nearest: ['2,270 lb at 50 psi'],
    });
  });
  it('tells when prints differ, and takes the lower (ST-1 2,040, ST-3 2,100)', () => {
    const found = rightOf(loadAtPressure('ST205/75R14 LRD', psi(65), 'single'));
    expectReplays(found.load);
    expect([show(found.load.value), tags(found), found.tables]).toEqual([
      '2,040 lb',
      ['TablesDisagree'],
      ['ST-1', 'ST-3'],
    ]);
    expect(show(rightOf(loadAtPressure('ST205/75R14 LRD', psi(65), 'single', { table: 'ST-3' })).load.value)).toBe(
      '2,100 lb',
    );
  });
  it('says that a load range is missing', () => {
    expect(tags(rightOf(loadAtPressure('ST225/75R15', psi(65), 'single')))).toContain('LoadRangeNotStated');
  });
  it('converts kPa exactly: 550 kPa is a little less than 80 psi', () => {
    expect(show(rightOf(loadAtPressure('LT235/85R16 LRE', kPa(550), 'single')).row.value)).toBe('75 psi');
    expect(show(rightOf(loadAtPressure('LT235/85R16 LRE', kPa(551), 'single')).row.value)).toBe('75 psi');
    expect(leftOf(loadAtPressure('LT235/85R16 LRE', kPa(552), 'single'))).toMatchObject({ tag: 'PressureAboveRated' });
  });
  it('refuses dual loads that are not printed, pressures of nothing and sizes that are not listed', () => {
    expect(leftOf(loadAtPressure('ST205/75R15 LRD', psi(65), 'dual'))).toMatchObject({ tag: 'NoDualRating' });
    expect(leftOf(loadAtPressure('ST155/80R13 LRB', psi(35), 'dual'))).toMatchObject({ tag: 'NoDualRating' });
    expect(leftOf(loadAtPressure('ST205/75R15 LRD', psi(0), 'single'))).toMatchObject({ tag: 'NotPositive' });
    expect(leftOf(loadAtPressure('ST195/75R15 LRD', psi(65), 'single'))).toMatchObject({
      tag: 'NotTabulated',
      nearest: [expect.any(String), expect.any(String), expect.any(String)],
    });
    expect(leftOf(loadAtPressure('ST205/75R15 LRD', psi(65), 'single', { table: 'constructor' }))).toMatchObject({
      tag: 'NotTabulated',
    });
  });
});
