/** Grades, clauses and lines of the rules as they were read again in November 2026: each row typed a second time from what was read. */
import { describe, expect, it } from 'vitest';
import { chainWll } from '../../src/load/data/chain-wll.js';
import { securementForces } from '../../src/load/data/securement-forces.js';
import { webbingWll } from '../../src/load/data/webbing-wll.js';
import { wireRopeWll } from '../../src/load/data/wire-rope-wll.js';
import { general } from '../../src/load/tiedowns/sections.js';
import { federalRules, type Rule } from '../../src/rules/index.js';
import { chainsEachByState, chainsTogether } from '../../src/towing/data/sources.js';

// rule | grade | clause | date of the text | what must be said with it
const printed = `
excise|A|26 USC 4051(a)(1), (a)(3)|1994 to 2026|12 percent; suitable for use
surge-1|B|49 CFR 393.48(d)(1)(i)|2007-03-06|By (d)(2) and (3), from memory; must be used where it is above the GVWR
surge-2|B|49 CFR 393.48(d)(1)(ii)|2007-03-06|By (d)(2) and (3), from memory; must be used where it is above the GVWR
cmv-390|B|49 CFR 390.5T, commercial motor vehicle (1) (390.5 itself suspended since 2017, from memory)|2014-03-19|79 FR 15245
rig|B|49 CFR 571.224 S3, 393.86|1998-05-14|Proposed Rules; built before 1998-01-26; dovetails and beavertails; 16008-1pja, 16281-1pja, 16660-1pja, 16907-1pja
consp|A|49 CFR 571.108 S5.7 (today S8.2, from memory)|1995-04-26|nht95-2.54 (0841); built before 1993-12-01 (from memory); living or office quarters (from memory)
lamps-l|A|49 CFR 571.108, tables|1993-05-28|nht93-4.12 and nht93-8.23; gooseneck counts in the overall length
brake-3000-semi|A|49 CFR 393.42(b)(3)||guidance to 393.42, question 3
brake-3000-full|B|49 CFR 393.42(b)(4)|2005-08-15|70 FR 48048, cut before (b)(4)
chains-fed|A|49 CFR 393.70(d)|2012-08-30|counted together (guidance, question 2); States may be stricter
heavy-eq|B|49 CFR 393.130(a)|2009|at least four tiedowns, accessories lowered and secured, articulation restrained; chapter 10
relabel|A|49 CFR 571.110 S10, 571.120 S10 (section number from memory)|2007-12-04|72 FR 68442; 75 FR 22532 of 2010-04-29; first retail sale; only RV trailers show a capacity figure (from memory)
fmvss110|B|49 CFR 571.110 S2|2005-08-31|trade article quoting S4.3.5; cargo statement
cdl-A|A|49 CFR 383.91(a)(1), 383.5||11,794 kg; 4,536 kg
cdl-B|A|49 CFR 383.91(a)(2), 383.5||11,794 kg; 4,536 kg
width|B|23 CFR 658.15|1991-03-27|nht91-2.51; load-carrying structure; Hawaii 108 in (from memory)`;

describe('federal rules as read again', () => {
  it.each(printed.trim().split('\n').map((line) => line.split('|')))('%s', (id, grade, clause, dated, said = '') => {
    const rule = (federalRules as readonly Rule[]).find((each) => each.id === id) as Rule;
    expect([rule.grade, rule.clause, rule.dated ?? '']).toEqual([grade, clause, dated]);
    const { effect, exceptions, source, caution = '', alsoPrinted = '' } = rule;
    const text = [effect, ...exceptions, source, caution, alsoPrinted].join(' | ');
    for (const part of said.split('; ').filter((each) => !alsoPrinted.includes(each))) expect(text).toContain(part);
  });
});

describe('tables beside the rules, as read again', () => {
  it('393.102: breaking strength 0.8, 0.5, 0.5 and working load limit 0.435, 0.5, 0.25, from the agency page', () => {
    expect(securementForces.rows.map(({ g }) => g)).toEqual(['0.8', '0.5', '0.5', '0.435', '0.5', '0.25']);
    expect(securementForces.source.grade).toBe('A');
  });
  it('393.108: 28 chain rows, 4 of webbing, 7 of wire rope, from reproductions', () => {
    expect([chainWll, webbingWll, wireRopeWll].map(({ rows, source }) => [rows.length, source.grade])).toEqual([
      [28, 'B'],
      [4, 'B'],
      [7, 'B'],
    ]);
  });
  it('393.110: an agency page as quoted, and a table of 2012', () => {
    expect([general.title, general.grade, general.edition]).toEqual([
      '49 CFR 393.110',
      'C',
      'agency cargo page as quoted in a forum; fleet compliance table of 2012',
    ]);
  });
  it('chains together by 393.70(d) and its guidance, each by N.H. RSA 266:63', () => {
    expect([chainsTogether, chainsEachByState].map(({ title, grade }) => [title, grade])).toEqual([
      ['49 CFR 393.70(d) and its guidance', 'A'],
      ['N.H. RSA 266:63', 'A'],
    ]);
  });
});
