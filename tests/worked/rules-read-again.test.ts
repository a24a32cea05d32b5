/**
 * Lines as read again in November 2026, each with the text it was read in: 26 USC 4051, 72 FR 68442, letters nht93-8.23 and
 * nht91-2.51, N.H. RSA 266:63, the agency cargo page on 393.110, the agency rules page on 393.102.
 */
import { describe, expect, it } from 'vitest';
import { securementForces } from '../../src/load/data/securement-forces.js';
import { type TiedArticle, tiedownCount } from '../../src/load/index.js';
import { safetyChains } from '../../src/towing/index.js';
import { foot, lb, show } from '../../src/units/index.js';
import { rightOf } from '../helpers/either.js';
import { expectReplays } from '../helpers/working.js';
import { ask, facts } from '../rules/helpers.js';

describe('excise, 26 USC 4051(a)(1), (a)(3): 12 percent, not suitable for 26,000 lb or less', () => {
  it.each([
    ['26000 lb', 'does not apply'],
    ['26001 lb', 'applies'],
  ])('%s: %s', (gvwr, outcome) => {
    const found = ask('excise', facts(`trailer GVWR: ${gvwr}`));
    expect(found).toMatchObject({ outcome, verify: false });
    expect(found.rule.effect).toMatch(/12 percent/);
    expect(found.caution).toMatch(/suitable for use/);
  });
});

describe('weight added before the first sale, 72 FR 68442: lesser of 1.5 percent of GVWR and 100 lb', () => {
  it.each([
    ['6000 lb', '90 lb', 'does not apply'],
    ['6000 lb', '91 lb', 'applies'],
    ['7000 lb', '100 lb', 'does not apply'],
    ['7000 lb', '101 lb', 'applies'],
    // above 10,000 lb no capacity figure is shown, RV trailers apart (from memory)
    ['14000 lb', '500 lb', 'does not apply'],
  ])('%s, %s added: %s', (gvwr, added, outcome) => {
    expect(ask('relabel', facts(`trailer GVWR: ${gvwr}, added weight: ${added}`)).outcome).toBe(outcome);
  });
});

describe('length and width as measured', () => {
  it('a gooseneck counts in the length (letter nht93-8.23): 24 ft of deck and 8 ft of neck are over 30 ft', () => {
    expect(ask('lamps-l', facts('overall length: 24 ft')).outcome).toBe('does not apply');
    expect(ask('lamps-l', facts('overall length: 32 ft'))).toMatchObject({ outcome: 'applies' });
    expect(ask('lamps-l', facts('overall length: 32 ft')).caution).toMatch(/gooseneck counts/);
  });
  it('width is measured across the load-carrying structure, on the National Network (letter nht91-2.51)', () => {
    const found = ask('width', facts('overall width: 102 in'));
    expect(found).toMatchObject({ outcome: 'kept', verify: true });
    expect(found.caution).toMatch(/load-carrying structure/);
  });
});

describe('rear guard: a line read in a proposed rule is to be verified', () => {
  it('10,000 lb or more, built on or after 1998-01-26', () => {
    const found = ask('rig', facts('trailer GVWR: 10000 lb'));
    expect(found).toMatchObject({ outcome: 'applies', verify: true });
    expect(found.rule.exceptions[0]).toBe('built before 1998-01-26');
  });
});

describe('chains: together by guidance question 2 to 393.70(d), each by N.H. RSA 266:63', () => {
  it.each([
    [7000, ['within', 'within']],
    [3500, ['within', 'over']],
    [3499, ['over', 'over']],
  ])('two of %i lb behind 7,000 lb', (each, verdicts) => {
    const found = rightOf(safetyChains({ each: lb(each), count: 2 }, lb(7000)));
    expect(found.checks.map(({ verdict }) => verdict)).toEqual(verdicts);
    expect(found.checks[1]?.clause).toMatchObject({ title: 'N.H. RSA 266:63', grade: 'A' });
    expectReplays(...found.checks.map(({ reserve }) => reserve));
  });
});

describe('number of tiedowns, 393.110: agency cargo page and a fleet compliance table of 2012', () => {
  const least = (length: number | string, weight: number, blockedForward = false): string => {
    const article: TiedArticle = { weight: lb(weight), length: foot(length), blockedForward, section: 'general' };
    return show(rightOf(tiedownCount(article)).readings[0]?.minimum.value ?? lb(0));
  };
  it.each([
    [5, 1100, '1'],
    [5, 1101, '2'],
    ['5.01', 500, '2'],
    [10, 5000, '2'],
    ['10.01', 5000, '3'],
    [20, 5000, '3'],
    ['20.01', 5000, '4'],
  ])('%s ft, %i lb, not blocked: %s', (length, weight, count) => expect(least(length, weight)).toBe(count));
  it.each([
    [5, 5000, '1'],
    [10, 5000, '1'],
    ['10.01', 5000, '2'],
    [20, 5000, '2'],
  ])('%s ft, %i lb, blocked: %s', (length, weight, count) => expect(least(length, weight, true)).toBe(count));
});

it('securement forces, 393.102(a): breaking strength 0.8, 0.5, 0.5; working load limit 0.435, 0.5, 0.25', () => {
  expect(securementForces.rows.map(({ g }) => g)).toEqual(['0.8', '0.5', '0.5', '0.435', '0.5', '0.25']);
});
