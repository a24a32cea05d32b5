/** The words of the placard, date codes, and an error of every kind in words. */
import { describe, expect, it } from 'vitest';
import { describeError } from '../../src/errors.js';
import {
  dateCode,
  type PlacardFacts,
  placard,
  readTireDesignation,
  type TiresOwnError,
  tiresTables,
  wordsForTires,
} from '../../src/tires/index.js';
import { kg, lb, psi } from '../../src/units/index.js';
import { leftOf, rightOf } from '../helpers/either.js';
import { expectReplays } from '../helpers/working.js';

const tires: PlacardFacts['tires'] = [
  { where: 'axle 1', designation: 'ST205/75R15 LRD', coldPressure: psi(65) },
  { where: 'spare', designation: 'ST205/75R15 LRD', coldPressure: psi(65) },
];

describe('placard', () => {
  it('prints cargo in kg and lb, both rounded down, with sizes and cold pressures', () => {
    const found = rightOf(placard({ gvwr: lb(7000), unloaded: lb('2449.5'), tires }));
    expectReplays(found.cargo, found.cargoKg, ...found.tires.map((tire) => tire.kPa));
    expect(found.text.split('\n')).toEqual([
      'Cargo: at most 2,064 kg or 4,550 lb',
      'Tires, axle 1: ST205/75R15 load range D, 448 kPa (65 psi) cold',
      'Tires, spare: ST205/75R15 load range D, 448 kPa (65 psi) cold',
    ]);
    expect(found.notes.map(({ tag }) => tag)).toEqual(['LabelGoverns']);
  });
  it('rounds kg from the unrounded weight, not from the rounded pounds', () => {
    // 4,550.9 lb is 2,064.25 kg; 4,550 lb would be 2,063.8 kg
    expect(rightOf(placard({ gvwr: lb(7000), unloaded: lb('2449.1'), tires })).cargoKg.value.value.toFixed()).toBe(
      '2064',
    );
  });
  it('belongs to 10,000 lb or less, 4,536 kg or less: each compared as printed', () => {
    expect(rightOf(placard({ gvwr: lb(10000), unloaded: lb(2450), tires })).cargo.value.value.toFixed()).toBe('7550');
    expect(rightOf(placard({ gvwr: kg(4536), unloaded: lb(2450), tires })).cargo.value.value.toFixed()).toBe('7550');
    expect(leftOf(placard({ gvwr: lb('10000.01'), unloaded: lb(2450), tires }))).toMatchObject({
      tag: 'NoPlacardAbove',
    });
    expect(leftOf(placard({ gvwr: kg(4537), unloaded: lb(2450), tires }))).toMatchObject({ tag: 'NoPlacardAbove' });
  });
  it('refuses an unloaded weight above the rating, no tires, and what is no tire', () => {
    expect(rightOf(placard({ gvwr: lb(2450), unloaded: lb(2450), tires })).cargo.value.value.toFixed()).toBe('0');
    expect(leftOf(placard({ gvwr: lb(2449), unloaded: lb(2450), tires }))).toMatchObject({ tag: 'UnloadedAboveGvwr' });
    expect(leftOf(placard({ gvwr: lb(7000), unloaded: lb(2450), tires: [] }))).toMatchObject({ tag: 'NoTires' });
    expect(
      leftOf(
        placard({
          gvwr: lb(7000),
          unloaded: lb(2450),
          tires: [{ where: 'axle 1', designation: 'x', coldPressure: psi(65) }],
        }),
      ),
    ).toMatchObject({ tag: 'UnreadableDesignation' });
    expect(
      leftOf(
        placard({
          gvwr: lb(7000),
          unloaded: lb(2450),
          tires: [{ where: 'axle 1', designation: 'ST205/75R15', coldPressure: psi(0) }],
        }),
      ),
    ).toMatchObject({ tag: 'NotPositive' });
    expect(leftOf(placard({ gvwr: lb(-7000), unloaded: lb(2450), tires }))).toMatchObject({ tag: 'NotPositive' });
  });
});

describe('dateCode', () => {
  it.each(['0016', '5416', '34', '34165', '3x16', '', '12345678', '3'.repeat(1000), '-316', ' '])(
    'refuses %j',
    (text) => {
      expect(leftOf(dateCode(text))).toMatchObject({ tag: 'UnreadableDateCode' });
    },
  );
  it('reads week 53 and year 00', () => {
    expect(rightOf(dateCode('5300'))).toMatchObject({ week: 53, years: [2000] });
  });
});

describe('errors in words', () => {
  const every: readonly TiresOwnError[] = [
    leftOf(readTireDesignation('ST2O5/75R15')),
    { chapter: 'tires', tag: 'SizeNeeded', family: 'small trailer', letter: 'C' },
    { chapter: 'tires', tag: 'LoadRangeNeeded', designation: 'ST205/75R15' },
    { chapter: 'tires', tag: 'NoDualRating', designation: 'ST205/75R15' },
    { chapter: 'tires', tag: 'DualAboveSingle', single: '1 lb', dual: '2 lb' },
    { chapter: 'tires', tag: 'NotPositive', what: 'tire load', found: '0 lb' },
    { chapter: 'tires', tag: 'PressureAboveRated', asked: '80 psi', rated: '65 psi' },
    { chapter: 'tires', tag: 'NoAspectRatio', size: '175R14C' },
    { chapter: 'tires', tag: 'NoTires' },
    { chapter: 'tires', tag: 'NoPlacardAbove', gvwr: '14,000 lb', most: '10,000 lb' },
    { chapter: 'tires', tag: 'UnloadedAboveGvwr', gvwr: '1 lb', unloaded: '2 lb' },
    { chapter: 'tires', tag: 'UnreadableDateCode', text: 'x', needed: 'digits' },
  ];
  it('say what was found and what is needed, with the path in front', () => {
    for (const error of every) {
      expect(wordsForTires(error), error.tag).toMatch(/; (it must be|give|write) /);
      expect(describeError({ ...error, path: 'axles.0.tire' })).toBe(`axles.0.tire: ${wordsForTires(error)}`);
    }
    expect(describeError(every[0] as TiresOwnError)).toContain('at character 4');
  });
  it('every table names a source and an authoritative column', () => {
    for (const { source, authoritative, rows } of tiresTables)
      expect([source.title !== '', authoritative !== '', rows.length > 0]).toEqual([true, true, true]);
  });
});
