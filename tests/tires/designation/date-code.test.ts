/** The week a tire was made in, and what is no date code. */
import { describe, expect, it } from 'vitest';
import { dateCode } from '../../../src/tires/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';

describe('dateCode', () => {
  it('reads week and year, of three digits every decade before 2000', () => {
    expect(rightOf(dateCode('3416'))).toMatchObject({ week: 34, years: [2016] });
    expect(rightOf(dateCode(' DOT 4B8J DR6 0100 '))).toMatchObject({ week: 1, years: [2000] });
    expect(rightOf(dateCode('0919'))).toMatchObject({ week: 9, years: [2019] });
    expect(rightOf(dateCode('3099'))).toMatchObject({ week: 30, years: [2099] });
    expect(rightOf(dateCode('537'))).toMatchObject({ week: 53, years: [1977, 1987, 1997] });
    expect(rightOf(dateCode('537')).notes.map(({ tag }) => tag)).toEqual(['NoAgeLimit', 'DecadeUnknown']);
  });
  it.each(['0016', '5416', '', '12', '34167', '34a6', '341:', '34/6'])('refuses "%s"', (text) => {
    expect(leftOf(dateCode(text))).toMatchObject({ tag: 'UnreadableDateCode', text });
  });
  it('reads forty characters and no more, and repeats no more than forty', () => {
    const forty = `${'X'.repeat(35)} 3416`;
    expect(rightOf(dateCode(forty)).week).toBe(34);
    expect(leftOf(dateCode(`X${forty}`)).text).toBe(`X${forty}`.slice(0, 40));
  });
});
