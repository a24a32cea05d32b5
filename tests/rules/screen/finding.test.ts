/** A duty applies or not, a limit is kept or crossed; alternatives are one finding; a rule reads what another one says. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { federalRules, findingText, hasEffect, type Rule, rulesByQuestion, screen } from '../../../src/rules/index.js';
import { lb } from '../../../src/units/index.js';
import { expectReplays } from '../../helpers/working.js';
import { ask, facts, leftOf, orFail, workings } from '../helpers.js';

const carrier = 'commercial: yes, interstate: yes, label GCWR: not shown';

describe('two kinds of rules', () => {
  it.each([
    ['width', 'overall width: 102 in', 'kept'],
    ['width', 'overall width: 103 in', 'crossed'],
    ['width', '', 'cannot be told'],
    ['tracking', 'commercial: no, path deviation: 4 in', 'does not apply'],
    ['tracking', `${carrier}, trailer GVWR: 12000 lb, path deviation: 0 in`, 'kept'],
    ['tracking', 'path deviation: 2 in', 'cannot be told'],
    ['rig', 'trailer GVWR: 10000 lb', 'applies'],
    ['rig', 'trailer GVWR: 9999 lb', 'does not apply'],
    ['rig', '', 'cannot be told'],
  ])('%s with %s: %s', (id, given, outcome) => {
    const found = ask(id, facts(given));
    expect(found.outcome).toBe(outcome);
    expect(findingText(found).startsWith(`${found.topic}: ${outcome}`)).toBe(true);
    expect(findingText(found).includes(found.rule.effect)).toBe(hasEffect(found));
  });
  it('says kind and outcome together, so that a program can switch on both', () => {
    for (const given of ['', carrier, 'overall width: 103 in, trailer GVWR: 30000 lb', 'commercial: no'])
      for (const finding of orFail(screen(facts(given), federalRules)).findings)
        expect(
          finding.kind === 'duty'
            ? ['applies', 'does not apply', 'cannot be told']
            : ['kept', 'crossed', 'does not apply', 'cannot be told'],
        ).toContain(finding.outcome);
  });
});

describe('alternatives of one question are one finding', () => {
  const pair = (tow: number, towed: number): string =>
    `actual weights within ratings: yes, label GCWR: not shown, tow vehicle GVWR: ${tow} lb, trailer GVWR: ${towed} lb`;
  it.each([
    [16001, 10001, 'CDL group A, by weight', 'applies'],
    [26001, 10000, 'CDL group B, by weight', 'applies'],
    [26001, 10001, 'CDL group A, by weight', 'applies'],
    [11500, 14000, 'CDL group, by weight', 'does not apply'],
  ])('truck %i lb, trailer %i lb: %s %s', (tow, towed, topic, outcome) => {
    const found = ask('cdl', facts(pair(tow, towed)));
    expect([found.topic, found.outcome, found.rows.length]).toEqual([topic, outcome, 2]);
    expectReplays(...workings(found));
  });
  it('compares both groups where neither applies, and each line once', () => {
    expect(ask('cdl', facts(pair(11500, 14000))).rule.id).toBe('cdl-A');
    expect(ask('cdl', facts(pair(11500, 14000))).answers.map(({ text }) => text)).toEqual([
      'GCWR 25,500 lb >= 26,001 lb: no',
      'towed GVWR or gross 14,000 lb > 10,000 lb: yes',
      'tow vehicle GVWR or gross 11,500 lb >= 26,001 lb: no',
      'towed GVWR or gross 14,000 lb <= 10,000 lb: no',
    ]);
  });
  it('asks of what is open only', () => {
    // The truck is below group B whatever else: what is missing decides on group A.
    const found = ask('cdl', facts('tow vehicle GVWR: 16000 lb, tow vehicle gross: 9000 lb, trailer GVWR: 9900 lb'));
    expect([found.outcome, found.missing]).toEqual(['cannot be told', ['label GCWR', 'trailer gross']]);
  });
  it.each([
    ['yes', 'brake exception, full trailer'],
    ['no', 'brake exception, semitrailer'],
  ])('light trailer, full trailer %s: %s', (full, topic) => {
    const found = ask(
      'brake-3000',
      facts(
        `${carrier}, tow vehicle GVWR: 10001 lb, full trailer: ${full}, trailer gross: 3000 lb, weight on tow vehicle: 300 lb, trailer axle weights: 2700 lb, towing axle weights: 7000 lb`,
      ),
    );
    expect([found.topic, found.outcome]).toEqual([topic, 'applies']);
  });
});

describe('surge brakes, on the greater of GVWR and gross', () => {
  const rig = (gvwr: number, gross: number, tow: number): string =>
    `${carrier}, surge brakes: yes, tow vehicle GVWR: ${tow} lb, tow vehicle gross: ${tow} lb, trailer GVWR: ${gvwr} lb, trailer gross: ${gross} lb`;
  it.each([
    [10500, 9000, 6000, 'kept', 'surge-1'],
    [9000, 10501, 6000, 'crossed', 'surge-1'],
    [12000, 12001, 9601, 'kept', 'surge-2'],
    [12000, 12001, 9600, 'crossed', 'surge-2'],
    [20001, 9000, 30000, 'crossed', 'surge-2'],
  ])('GVWR %i, gross %i behind %i lb: %s by %s', (gvwr, gross, tow, outcome, row) => {
    const found = ask('surge', facts(rig(gvwr, gross, tow)));
    expect([found.outcome, found.rule.id]).toEqual([outcome, row]);
    expectReplays(...workings(found));
  });
  it('speaks of trailers with surge brakes only', () => {
    expect(ask('surge', facts(rig(14000, 9000, 6000).replace('brakes: yes', 'brakes: no'))).outcome).toBe(
      'does not apply',
    );
    const untold = ask('surge', facts(rig(14000, 9000, 6000).replace('surge brakes: yes, ', '')));
    expect([untold.outcome, untold.missing]).toEqual(['cannot be told', ['surge brakes']]);
  });
});

describe('brakes: the rule, its exception, and breakaway say one thing', () => {
  const light = 'trailer gross: 2900 lb, weight on tow vehicle: 300 lb, towing axle weights: 9000 lb, full trailer: no';
  const says = (given: string): readonly string[] =>
    ['brake-3000', 'brake-all', 'breakaway'].map((id) => ask(id, facts(given)).outcome);
  it.each([
    ['heavy', `${carrier}, trailer GVWR: 12000 lb, trailer gross: 9000 lb`, 'does not apply', 'applies', 'applies'],
    ['light', `${carrier}, tow vehicle GVWR: 12000 lb, ${light}`, 'applies', 'does not apply', 'does not apply'],
    ['not weighed', `${carrier}, trailer GVWR: 12000 lb`, 'cannot be told', 'cannot be told', 'cannot be told'],
    ['private', 'commercial: no, trailer gross: 9000 lb', 'does not apply', 'does not apply', 'does not apply'],
  ])('%s', (_, given, ...outcomes) => {
    expect(says(given)).toEqual(outcomes);
  });
  it('asks for what the exception lacks, and writes each comparison once', () => {
    const open = ask('breakaway', facts(`${carrier}, trailer GVWR: 12000 lb`));
    expect(open.missing).toEqual(expect.arrayContaining(['trailer gross']));
    const texts = open.answers.map(({ text }) => text);
    expect(new Set(texts).size).toBe(texts.length);
  });
  it('carries the mark of everything it leans on', () => {
    const told = (federalRules as readonly Rule[]).map((rule): Rule => ({ ...rule, grade: 'A' }));
    expect(ask('breakaway', {}, told).verify).toBe(false);
    const doubted = told.map((rule): Rule => (rule.id === 'brake-3000-full' ? { ...rule, grade: 'C' } : rule));
    expect(ask('breakaway', {}, doubted).verify).toBe(true);
  });
});

describe('what is not there', () => {
  it.each([
    ['ax-tandem', 'heaviest tandem: none', 'heaviest tandem: none'],
    ['heavy-eq', 'cargo article weight: none', 'cargo article weight: none'],
    [
      'light-veh',
      'lightest article not tied as heavy equipment: none',
      'lightest article not tied as heavy equipment: none',
    ],
  ])('%s does not apply with %s', (id, given, text) => {
    const found = ask(id, facts(`${carrier}, trailer GVWR: 14000 lb, ${given}`));
    expect(found.outcome).toBe('does not apply');
    expect(found.answers.map((answer) => answer.text)).toContain(text);
  });
  it('names what the line lacks beside what the figure lacks', () => {
    const rule: Rule = {
      ...(federalRules.find(({ id }) => id === 'gross-80') as Rule),
      all: [{ test: 'combined gross', operator: '<=', line: { times: '2', of: 'heaviest tandem' }, unit: 'lb' }],
    };
    const lacks = (given: string): readonly string[] => ask('gross-80', facts(given), [rule]).missing;
    expect(lacks('')).toEqual(['tow vehicle gross', 'trailer gross', 'heaviest tandem']);
    expect(lacks('trailer gross: 9000 lb')).toEqual(['tow vehicle gross', 'heaviest tandem']);
    expect(lacks('trailer gross: 9000 lb, tow vehicle gross: 7000 lb')).toEqual(['heaviest tandem']);
    expect(lacks('trailer gross: 9000 lb, heaviest tandem: 8000 lb')).toEqual(['tow vehicle gross']);
  });
  it('is no line to compare with either', () => {
    const rule: Rule = {
      ...(federalRules.find(({ id }) => id === 'gross-80') as Rule),
      all: [{ test: 'trailer gross', operator: '<=', line: { times: '2', of: 'heaviest tandem' }, unit: 'lb' }],
    };
    const given = facts('trailer gross: 9000 lb, heaviest tandem: none');
    expect(ask('gross-80', given, [rule])).toMatchObject({
      outcome: 'does not apply',
      missing: [],
      answers: [{ text: 'trailer gross <= 2 x heaviest tandem (none)' }],
    });
    expect(ask('gross-80', facts('trailer gross: 9000 lb'), [rule]).answers[0]?.text).toBe(
      'trailer gross 9,000 lb <= 2 x heaviest tandem (not known): cannot be told',
    );
    const least: Rule = {
      ...rule,
      all: [
        {
          test: 'trailer gross',
          operator: '<=',
          line: { least: [{ value: '80000' }, { times: '2', of: 'heaviest tandem' }] },
          unit: 'lb',
        },
      ],
    };
    expect(ask('gross-80', given, [least]).outcome).toBe('does not apply');
    expect(ask('gross-80', { 'trailer gross': lb(9000) }, [least]).missing).toEqual(['heaviest tandem']);
  });
});

describe('where the weight of a label is corrected', () => {
  it.each([
    ['10000 lb', 'applies'],
    ['10001 lb', 'does not apply'],
  ])('%s: a capacity figure is shown up to 10,000 lb, so it %s', (gvwr, outcome) => {
    expect(ask('relabel', facts(`trailer GVWR: ${gvwr}, added weight: 101 lb`)).outcome).toBe(outcome);
  });
});

describe('figures that such facts can have', () => {
  it('takes a path without deviation, and none below zero', () => {
    expect(ask('tracking', facts('path deviation: 0 in')).missing).not.toContain('path deviation');
    expect(leftOf(screen(facts('path deviation: -4 in'), federalRules))).toMatchObject({
      tag: 'OutOfRange',
      what: 'path deviation',
      needed: 'zero or more',
    });
  });
});

it('the page of ids names every question with its kind and its rows', () => {
  const page = readFileSync('docs/ids.md', 'utf8');
  const lines = page.slice(page.indexOf('## Published rules'), page.indexOf('## Faults of a spec')).split('\n');
  for (const { id, rows } of rulesByQuestion(federalRules)) {
    const line = lines.find((each) => each.startsWith('| `') && each.split('|')[1]?.includes(`\`${id}\``)) ?? '';
    expect(line, id).toContain(`| ${rows[0].kind} |`);
    if (rows.length > 1) for (const row of rows) expect(line, id).toContain(`\`${row.id}\``);
  }
});
