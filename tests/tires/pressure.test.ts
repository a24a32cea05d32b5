/** Load at a pressure, pressure for a load, and the pressure of a load range. */
import { describe, expect, it } from 'vitest';
import {
  checkRimPressure,
  checkRimWidth,
  estimateLoadAtPressure,
  loadAtPressure,
  pressureForLoad,
  rangePressure,
  serviceNotes,
  speedInformation,
  tireLoadRating,
} from '../../src/tires/index.js';
import { inch, kg, kPa, lb, mm, mph, psi, show } from '../../src/units/index.js';
import { leftOf, rightOf } from '../helpers/either.js';
import { expectReplays } from '../helpers/working.js';

const single = { fitment: 'single', on: 'trailer' } as const;
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

describe('pressureForLoad', () => {
  it('rounds up to the next printed step, at a tie not further', () => {
    for (const [load, pressure] of [
      [lb(2270), '55 psi'],
      [lb('2270.01'), '60 psi'],
      [lb(2380), '60 psi'],
      [lb('2380.01'), '65 psi'],
      [kg(1000), '55 psi'],
      [lb(5), '15 psi'],
    ] as const) {
      expect(show(rightOf(pressureForLoad('ST225/75R15 LRD', load, 'single')).pressure.value)).toBe(pressure);
    }
  });
  it('tells what loadAtPressure tells: prints that differ, letters to be careful with', () => {
    const found = rightOf(pressureForLoad('ST205/75R14 LRD', lb(2000), 'single'));
    expect([show(found.pressure.value), tags(found)]).toEqual(['65 psi', ['TablesDisagree']]);
    const unstated = rightOf(pressureForLoad('5.30x12 LRC', lb(500), 'single'));
    expect(tags(unstated)).toContain('ConstructionUnstated');
  });
  it('is not tabulated above the last row of the tire', () => {
    expect(leftOf(pressureForLoad('ST225/75R15 LRD', lb(2541), 'single'))).toMatchObject({
      tag: 'NotTabulated',
      nearest: ['2,380 lb at 60 psi', '2,540 lb at 65 psi'],
    });
    expect(leftOf(pressureForLoad('ST225/75R15 LRD', lb(-1), 'single'))).toMatchObject({ tag: 'NotPositive' });
  });
});

describe('rangePressure', () => {
  it('repeats no more than eight letters of what is no load range', () => {
    expect(leftOf(rangePressure('ST-metric', 'abcdefghijk'))).toMatchObject({ letter: 'ABCDEFGH' });
  });
  it('needs the size where the family has no figure', () => {
    expect(leftOf(rangePressure('small trailer', 'C'))).toMatchObject({ tag: 'SizeNeeded', letter: 'C' });
    expect(leftOf(rangePressure('ST-metric', 'F'))).toMatchObject({ tag: 'SizeNeeded' });
    const at = (size: string, letter: string): string =>
      show(rightOf(rangePressure('small trailer', letter, size)).pressure.value);
    expect([
      at('4.80-12', 'B'),
      at('4.80-12', 'C'),
      at('5.30-12', 'D'),
      at('4.80/4.00-8', 'B'),
      at('20.5x8.0-10', 'D'),
    ]).toEqual(['60 psi', '90 psi', '105 psi', '60 psi', '70 psi']);
    expect(show(rightOf(rangePressure('mobile home', 'G', '8-14.5MH')).pressure.value)).toBe('116 psi');
    expect(show(rightOf(rangePressure('ST-metric', 'G', 'ST235/85R16')).pressure.value)).toBe('110 psi');
  });
  it('keeps the family figure for a metric size and tells of another print', () => {
    const found = rightOf(rangePressure('ST-metric', 'E', 'ST225/75R15'));
    expect([show(found.pressure.value), tags(found)]).toEqual(['80 psi', ['OtherPressurePrinted']]);
  });
  it('is not tabulated for a letter that the size does not have', () => {
    expect(leftOf(rangePressure('small trailer', 'G', '4.80-12'))).toMatchObject({ tag: 'NotTabulated' });
    expect(leftOf(rangePressure('small trailer', 'B', '9.99-9'))).toMatchObject({ tag: 'NotTabulated' });
  });
  it('names the first sizes and letters that are printed, where it finds none', () => {
    const nearest = ['4.80-12 B at 60 psi', '4.80-12 C at 90 psi'];
    expect(leftOf(rangePressure('small trailer', 'G', '4.80-12'))).toMatchObject({ nearest });
    expect(leftOf(tireLoadRating({ designation: '4.80-12 LRG' }, single))).toMatchObject({ nearest });
    expect(leftOf(loadAtPressure('4.80-12 LRA', psi(30), 'single'))).toMatchObject({ nearest });
    expect(leftOf(rangePressure('ST-metric', 'A', 'ST225/75R15'))).toMatchObject({
      nearest: ['ST225/75R15 at 15 psi', 'ST225/75R15 at 20 psi', 'ST225/75R15 at 25 psi'],
    });
  });
  it('names the table that was asked for', () => {
    const table = (choice?: string) =>
      leftOf(loadAtPressure('4.80-12 LRB', psi(30), 'single', choice === undefined ? {} : { table: choice }));
    expect(table('LT-1')).toMatchObject({ table: 'tire load and pressure table LT-1' });
    expect(leftOf(loadAtPressure('9.99-9 LRB', psi(30), 'single'))).toMatchObject({
      table: 'tire load and pressure tables',
    });
  });
});

describe('rims', () => {
  it('checks pressure, within at a tie', () => {
    const [over, tie] = [rightOf(checkRimPressure(psi(80), psi(65))), rightOf(checkRimPressure(psi(65), psi(65)))];
    expectReplays(over.reserve, tie.reserve);
    expect([over.verdict, show(over.reserve.value), tie.verdict]).toEqual(['over', '-15 psi', 'within']);
    expect(leftOf(checkRimPressure(psi(80), psi(0)))).toMatchObject({ tag: 'NotPositive' });
  });
  it('checks the width both ways, in any unit of length', () => {
    const verdicts = (width: Parameters<typeof checkRimWidth>[0]): string[] =>
      checkRimWidth(width, { least: inch(6), greatest: inch(7) }).map(({ verdict }) => verdict);
    expect([verdicts(inch(6)), verdicts(inch(7)), verdicts(inch(5)), verdicts(mm('203.2'))]).toEqual([
      ['within', 'within'],
      ['within', 'within'],
      ['over', 'within'],
      ['within', 'over'],
    ]);
    expectReplays(...checkRimWidth(mm(165), { least: inch(6), greatest: inch(7) }).map(({ reserve }) => reserve));
  });
});

describe('an estimate', () => {
  it('says that it is untested below the lowest tabulated pressure, 15 psi, and not at it', () => {
    const at = (pressure: number | string): string[] =>
      tags(rightOf(estimateLoadAtPressure('ST225/75R15', { load: lb(2540), pressure: psi(65) }, psi(pressure))));
    expect([at(15), at('15.5'), at('14.9')]).toEqual([['Estimate'], ['Estimate'], ['Estimate', 'BelowTables']]);
  });
});

describe('speed information', () => {
  it('says in every band that it is no rating, and asks for the wheel where it asks for pressure', () => {
    const at = (speed: number): string[] => tags(rightOf(speedInformation('ST205/75R15 LRD', mph(speed))));
    const always = serviceNotes.map(({ tag }) => tag);
    expect([at(65), at(66), at(75), at(76), at(86)]).toEqual([
      always,
      [...always, 'MorePressure', 'WheelLimit'],
      [...always, 'MorePressure', 'WheelLimit'],
      [...always, 'MorePressure', 'LessLoad', 'WheelLimit'],
      always,
    ]);
  });
  it('has no load to put in place of a rating, and always says so', () => {
    const found = rightOf(speedInformation('ST205/75R15 LRD', mph(70)));
    expect(Object.keys(found).sort()).toEqual(['decisions', 'notes', 'says']);
    expect(tags(found)).toEqual(expect.arrayContaining(serviceNotes.map(({ tag }) => tag)));
    expect(rightOf(speedInformation('LT235/85R16 LRE', mph(70))).says).toBe('nothing published');
  });
});
