/** The agency letters on GVWR, GAWR and tongue load, typed a second time: number, date as printed, kind. */
import { describe, expect, it } from 'vitest';
import { agencyLetters } from '../../src/rules/index.js';

const printed = `
nht72-6.32 1972-01-04 trailer
nht75-5.2  1975-05-27 trailer
nht76-3.20 1976-01-15 trailer
nht71-5.63 1971-10-14 trailer
nht72-4.48 1972-12-13 trailer
aiam0613   1971       general
aiam1472   1974       general
nht80-2.14 1980-04-23 general
`.trim().split('\n').map((row) => row.replace(/\s+/g, ' '));

describe('agency letters', () => {
  it('stand as transcribed', () => {
    expect(agencyLetters.rows.map(({ id, dated, speaksOf }) => `${id} ${dated} ${speaksOf}`)).toEqual(printed);
  });
  it('say beside every general letter on the sum of GAWRs why it is not followed for trailers', () => {
    const general = agencyLetters.rows.filter(({ speaksOf }) => speaksOf === 'general');
    expect(general.every(({ topic, remark }) => topic === 'sum of GAWRs' && remark !== undefined)).toBe(true);
  });
  it('agree that the tongue share is inside the GVWR', () => {
    expect(agencyLetters.rows.find(({ id }) => id === 'nht76-3.20')?.point).toMatch(/includes the share the tow vehicle carries/);
  });
});
