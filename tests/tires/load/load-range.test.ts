/** The pressure of a load range. */
import { describe, expect, it } from 'vitest';
import { loadAtPressure, rangePressure, tireLoadRating } from '../../../src/tires/index.js';
import { psi, show } from '../../../src/units/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';

const tags = ({ notes }: { notes: readonly { tag: string }[] }): string[] => notes.map(({ tag }) => tag);

const single = { fitment: 'single', on: 'trailer' } as const;

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
