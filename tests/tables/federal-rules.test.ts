/** The federal lines, typed a second time: rule, condition, operator, value, unit, grade; the printed figures of each clause. */
import { describe, expect, it } from 'vitest';
import { federalRules, type Line, rulesByQuestion, rulesTables } from '../../src/rules/index.js';
import { needsVerification } from '../../src/trace/index.js';

const printed = `
cmv-390         0 >= 10001 lb B
cdl-A           0 >= 26001 lb A
cdl-A           1 >  10000 lb A
cdl-B           0 >= 26001 lb A
cdl-B           1 <= 10000 lb A
consp           0 >= 80 in A
consp           1 >  10000 lb A
lamps-w         0 >= 80 in A
lamps-l         0 >= 30 ft A
rig             0 >= 10000 lb B
brake-3000-semi 0 <= 3000 lb A
brake-3000-semi 1 <= 0.40x lb A
brake-3000-full 0 <= 3000 lb B
brake-3000-full 1 <= 0.40x lb B
surge-1         0 <= 12000 lb B
surge-1         1 <= 1.75x lb B
surge-2         0 >  12000 lb B
surge-2         1 <  20001 lb B
surge-2         2 <= 1.25x lb B
chains-fed      0 >= 1x lb A
tracking        0 <= 3 in B
fmvss110        0 <= 10000 lb B
fmvss120        0 >  10000 lb A
relabel         0 >  least(0.015x,100) lb A
relabel         1 <= 10000 lb A
heavy-eq        0 >= 10000 lb B
light-veh       0 <= 10000 lb A
light-eq-option 0 <  10000 lb B
ax-single       0 <= 20000 lb A
ax-tandem       0 <= 34000 lb A
gross-80        0 <= 80000 lb A
width           0 <= 102 in B
excise          0 >  26000 lb A
`.trim().split('\n').map((row) => row.replace(/\s+/g, ' '));

const line = (drawn: Line): string => ('value' in drawn ? drawn.value : 'times' in drawn ? `${drawn.times}x` : `least(${drawn.least.map(line).join(',')})`);

describe('federal rules', () => {
  it('prints every operator, value, unit and grade as transcribed', () => {
    expect(federalRules.flatMap(({ id, where = [], all, grade }) => [...where, ...all].map((part, i) => `${id} ${i} ${part.operator} ${line(part.line)} ${part.unit} ${grade}`))).toEqual(printed);
  });
  it('has six rules without a figure, bound to what binds them', () => {
    expect(federalRules.filter(({ all }) => all.length === 0).map(({ id, grade, bindsWhere }) => [id, grade, bindsWhere])).toEqual([['marking', 'memory', 'cmv-390'], ['recheck', 'memory', 'cmv-390'], ['tire-marking', 'memory', 'cmv-390'], ['yearly-inspection', 'memory', 'cmv-390'], ['brake-all', 'B', 'cmv-390'], ['breakaway', 'memory', 'brake-all']]);
  });
  it('has alternatives of three questions, and eight limits', () => {
    expect(rulesByQuestion(federalRules).filter(({ rows }) => rows.length > 1).map(({ id, rows }) => [id, ...rows.map((row) => row.id)])).toEqual([['cdl', 'cdl-A', 'cdl-B'], ['brake-3000', 'brake-3000-semi', 'brake-3000-full'], ['surge', 'surge-1', 'surge-2']]);
    expect(federalRules.filter(({ kind }) => kind === 'limit').map(({ id }) => id)).toEqual(['surge-1', 'surge-2', 'chains-fed', 'tracking', 'ax-single', 'ax-tandem', 'gross-80', 'width']);
  });
  it('marks what should be looked up: secondary copies and memory', () => {
    expect(federalRules.filter(({ grade }) => needsVerification(grade, 'regulation')).map(({ id }) => id)).toEqual([
      'cmv-390', 'rig', 'marking', 'recheck', 'tire-marking', 'yearly-inspection', 'brake-all', 'brake-3000-full', 'breakaway', 'surge-1', 'surge-2', 'tracking', 'fmvss110', 'heavy-eq', 'light-eq-option', 'width',
    ]);
  });
  it('gives each rule its own id, a clause, a date of reading, a source and what follows', () => {
    expect(new Set(federalRules.map(({ id }) => id)).size).toBe(federalRules.length);
    for (const rule of federalRules) {
      expect(rule.clause, rule.id).toMatch(/^\d\d (CFR|USC) \d/);
      expect(rule.read, rule.id).toBe('2026-11');
      expect(`${rule.source}|${rule.effect}`, rule.id).toMatch(/^.{5,}\|.{10,}$/);
    }
  });
  it('cites the clauses as read again in November 2026', () => {
    const cited = (id: string): string => federalRules.filter((rule) => rule.id === id).map(({ clause, dated }) => `${clause} | ${dated ?? ''}`).join();
    expect(['cmv-390', 'marking', 'recheck', 'tire-marking', 'yearly-inspection', 'excise', 'relabel', 'rig'].map(cited)).toEqual([
      '49 CFR 390.5T, commercial motor vehicle (1) (390.5 itself suspended since 2017, from memory) | 2014-03-19',
      '49 CFR 390.21 | ', '49 CFR 392.9(b) | ', '49 CFR 393.75(g), (i) (paragraphs from memory) | ', '49 CFR 396.17 | ',
      '26 USC 4051(a)(1), (a)(3) | 1994 to 2026',
      '49 CFR 571.110 S10, 571.120 S10 (section number from memory) | 2007-12-04',
      '49 CFR 571.224 S3, 393.86 | 1998-05-14',
    ]);
  });
  it('carries the date that each copy itself bears', () => {
    const dated = federalRules.flatMap((rule) => (rule.dated === undefined ? [] : [`${rule.id} ${rule.dated}`]));
    expect(dated).toEqual([
      'cmv-390 2014-03-19', 'consp 1995-04-26', 'lamps-w 1993-05-28', 'lamps-l 1993-05-28', 'rig 1998-05-14', 'brake-all 2005-08-15', 'brake-3000-full 2005-08-15',
      'surge-1 2007-03-06', 'surge-2 2007-03-06', 'chains-fed 2012-08-30', 'fmvss110 2005-08-31', 'fmvss120 2005-08-31', 'relabel 2007-12-04', 'heavy-eq 2009', 'light-veh 2014-12-18',
      'width 1991-03-27', 'excise 1994 to 2026',
    ]);
  });
  it('never says that something is lawful', () => {
    for (const { effect, caution = '', topic } of federalRules) expect(`${effect} ${caution} ${topic}`).not.toMatch(/\blegal\b|\blawful\b|\bpermitted\b/i);
  });
  it('is listed among the tables', () => {
    expect(rulesTables.map(({ name, rows }) => [name, rows.length])).toEqual([['federal rules', 30], ['agency letters on GVWR, GAWR and tongue', 8]]);
  });
});
