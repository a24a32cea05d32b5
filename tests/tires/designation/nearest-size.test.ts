/** Sizes as sellers write them: what is missing is named, the nearest printed row is shown, no part is filled in. */
import { describe, expect, it } from 'vitest';
import { describeError } from '../../../src/errors.js';
import { sizeDistance } from '../../../src/tires/designation/nearest-size.js';
import { readTireDesignation, type Service, tireLoadRating } from '../../../src/tires/index.js';
import { lb } from '../../../src/units/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';
import { expectReplays } from '../../helpers/working.js';

const single: Service = { fitment: 'single', on: 'trailer' };
const refused = (designation: string) => leftOf(tireLoadRating({ designation }, single));

describe('a size as sellers write it', () => {
  // printed rows: ST-1 (225/75 D 2,540 at 65 psi; 235/80 E 3,420 at 80 psi), ST-3 (8-14.5MH E 2,540 at 85 psi)
  it.each([
    [
      '225/75R15 LRD',
      'ST or LT is missing in front of the size: write it where the sidewall says so',
      'ST225/75R15 D at 65 psi, 2,540 lb',
    ],
    [
      '235/80R16 LRE',
      'ST is missing in front of the size: write it where the sidewall says so',
      'ST235/80R16 E at 80 psi, 3,420 lb',
    ],
    [
      '8-14.5 LRE',
      'MH is missing behind the size: write it where the sidewall says so',
      '8-14.5MH E at 85 psi, 2,540 lb',
    ],
    [
      '4.80-8 LRB',
      'the second width is missing: write 4.80/4.00-8 where the sidewall says so',
      '4.80/4.00-8 B at 60 psi, 590 lb',
    ],
  ])('%s', (designation, instead, nearest) => {
    const problem = refused(designation);
    expect(problem).toMatchObject({ tag: 'NotTabulated', instead });
    expect('nearest' in problem && problem.nearest?.[0]).toBe(nearest);
    expect(describeError(problem)).toContain(instead);
  });
  it.each([
    ['225/75R15', 'ST225/75R15 B at 35 psi, 1,760 lb'],
    ['8-14.5', '8-14.5MH E at 85 psi, 2,540 lb'],
    ['4.80-8', '4.80/4.00-8 B at 60 psi, 590 lb'],
  ])('%s without a load range lacks the same', (designation, nearest) => {
    const problem = refused(designation);
    expect(problem).toMatchObject({ tag: 'NotTabulated', instead: expect.stringMatching(/is missing/) });
    expect('nearest' in problem && problem.nearest?.[0]).toBe(nearest);
  });
  // printed rows: ST-3 (145/80-12 D 1,220 at 65 psi, E 1,520 at 80 psi)
  it.each([
    ['ST145R12', '145/80-12 D at 65 psi, 1,220 lb'],
    ['ST145/R12', '145/80-12 D at 65 psi, 1,220 lb'],
    ['ST145/R12 LRE', '145/80-12 E at 80 psi, 1,520 lb'],
  ])('%s lacks its aspect; a row of 145/80-12 is the nearest print', (text, row) => {
    const problem = leftOf(readTireDesignation(text));
    expect(problem).toMatchObject({ fault: 'MissingAspect', nearest: [row] });
    expect(describeError(problem)).toContain(`the nearest printed rows are ${row}`);
  });
  it('205/65R10 lacks its load range: it is no passenger-car tire of standard load', () => {
    const problem = refused('205/65R10');
    expect(problem).toMatchObject({
      tag: 'NotTabulated',
      asked: '205/65R10',
      instead: 'the load range is missing: write it where the sidewall says so',
    });
    expect('nearest' in problem && problem.nearest?.[0]).toBe('205/65-10 B at 35 psi');
  });
  it('names nothing missing where no print has the same numbers', () => {
    const problem = refused('9.99-9 LRB');
    expect(problem).toMatchObject({ tag: 'NotTabulated', asked: '9.99-9' });
    expect(problem).not.toHaveProperty('instead');
  });
  it('a print is nearest to itself, then to the same numbers, then to other numbers', () => {
    const from = (size: string): number => sizeDistance('ST225/75R15', size);
    expect(from('ST225/75R15')).toBe(0);
    expect([from('225/75R15'), from('LT225/75R15'), from('225/75R15LT')]).toEqual([2, 1, 4]);
    expect(from('ST225/75R16')).toBeGreaterThan(from('225/75R15LT'));
  });
  it('shows three prints at most', () => {
    // Four printed sizes have 235 and 16.
    const near = leftOf(readTireDesignation('ST235R16'));
    expect('nearest' in near && near.nearest?.length).toBe(3);
    const rows = refused('ST195/75R15 LRD');
    expect('nearest' in rows && rows.nearest?.length).toBe(3);
  });
  it('shows no print where none is near', () => {
    expect(leftOf(readTireDesignation('ST999'))).not.toHaveProperty('nearest');
    expect(leftOf(readTireDesignation('ST295R19'))).not.toHaveProperty('nearest');
  });
});

describe('a load range makes no passenger-car tire', () => {
  it('205/65R10 LRD is a small trailer tire of 1,330 lb (ST-3), not one cut by 1.10', () => {
    const found = rightOf(tireLoadRating({ designation: '205/65R10 LRD' }, single));
    expect([found.designation.family, found.rating.value.value.toNumber()]).toEqual(['small trailer', 1330]);
    expect(found.notes.map(({ tag }) => tag)).not.toContain('PassengerTire');
    expectReplays(found.rating);
  });
  it('without a load range a radial of 12 in and less stays a passenger-car tire, and says so', () => {
    const found = rightOf(tireLoadRating({ designation: '145/80R12 74T' }, single));
    expect(found.designation.family).toBe('Euro-metric');
    expect(found.notes.map(({ tag }) => tag)).toContain('PassengerTire');
  });
  it('above 12 in the missing prefix is told, and until it is written the tire counts for its load over 1.10', () => {
    const found = rightOf(tireLoadRating({ designation: '225/75R15 LRD', molded: { single: lb(2540) } }, single));
    expect(found.notes.map(({ tag }) => tag)).toEqual(expect.arrayContaining(['PrefixMissing', 'PassengerTire']));
    expect(found.rating.value.value.toNumber()).toBeLessThan(2310);
    const told = rightOf(tireLoadRating({ designation: 'ST225/75R15 LRD', molded: { single: lb(2540) } }, single));
    expect([told.rating.value.value.toNumber(), told.notes]).toEqual([2540, []]);
  });
});
