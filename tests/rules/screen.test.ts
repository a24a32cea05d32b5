/** What screening says: the words, missing facts, misreadings of the printed lines, contradictions. */
import { describe, expect, it } from 'vitest';
import { describeError } from '../../src/errors.js';
import { distanceText, federalRules, findingText, type Rule, rulesByQuestion, screen } from '../../src/rules/index.js';
import { given, nodesOf } from '../../src/trace/index.js';
import { foot, inch, kg, lb, type Unit } from '../../src/units/index.js';
import { expectReplays } from '../helpers/working.js';
import { ask, facts, leftOf, orFail, workings } from './helpers.js';

const texts = (id: string, given: string): readonly string[] => ask(id, facts(given)).answers.map(({ text }) => text);

describe('what a finding says', () => {
  it('writes the comparison out', () => {
    expect(texts('consp', 'overall width: 102 in, trailer GVWR: 10000 lb')).toEqual([
      'overall width 102 in >= 80 in: yes',
      'trailer GVWR 10,000 lb > 10,000 lb: no',
    ]);
    expect(texts('relabel', 'trailer GVWR: 5000 lb, added weight: 80 lb')).toEqual([
      'added weight 80 lb > least of (0.015 x trailer GVWR 5,000 lb = 75 lb, 100 lb): yes',
      'trailer GVWR 5,000 lb <= 10,000 lb: yes',
    ]);
    expect(texts('gross-80', 'tow vehicle gross: 7400 lb, trailer gross: 12400 lb')).toEqual([
      'combined gross 19,800 lb <= 80,000 lb: yes',
    ]);
  });
  it('has one finding for every question, in their order, and asks every rule', () => {
    const { findings } = orFail(screen({}, federalRules));
    expect(findings.map(({ id }) => id)).toEqual(rulesByQuestion(federalRules).map(({ id }) => id));
    expect(findings.flatMap(({ rows }) => rows.map(({ rule }) => rule.id)).sort()).toEqual(
      federalRules.map(({ id }) => id).sort(),
    );
  });
  it('answers nothing but cannot be told when nothing is known', () => {
    const { findings, decisions } = orFail(screen({}, federalRules));
    expect(new Set(findings.map(({ outcome }) => outcome))).toEqual(new Set(['cannot be told']));
    for (const { missing } of findings) expect(missing.length).toBeGreaterThan(0);
    expect(decisions).toEqual([]);
  });
  it('is one line of text with clause, date and mark', () => {
    expect(findingText(ask('rig', facts('trailer GVWR: 9999 lb')))).toBe(
      'rear impact guard: does not apply. trailer GVWR 9,999 lb >= 10,000 lb: no (1 lb below the line). [49 CFR 571.224 S3, 393.86; read 2026-11; verify]',
    );
    expect(findingText(ask('width', facts('overall width: 102 in')))).toBe(
      'overall width, National Network: kept. overall width 102 in <= 102 in: yes (on the line). [23 CFR 658.15; read 2026-11; verify]',
    );
    expect(findingText(ask('lamps-w', {}))).toBe(
      'clearance and identification lamps: cannot be told. overall width >= 80 in: cannot be told. not given: overall width. [49 CFR 571.108, tables; read 2026-11]',
    );
    expect(findingText(ask('lamps-w', facts('overall width: 81 in')))).toMatch(
      /^clearance and identification lamps: applies: clearance and identification lamps are required\. .*1 in above the line/,
    );
  });
  it('carries a caution, and the mark of the rule whose reach it shares', () => {
    for (const { caution, verify, rule } of orFail(screen({}, federalRules)).findings) {
      expect(caution).toMatch(/State law govern\.$/);
      expect(caution.startsWith(rule.caution ?? 'A finding compares')).toBe(true);
      if (rule.bindsWhere === 'cmv-390') expect(verify, rule.id).toBe(true);
    }
    expect(ask('cdl', {}).verify).toBe(false);
  });
  it('hands back every comparison it rests on', () => {
    const { findings, decisions } = orFail(
      screen(
        facts('trailer GVWR: 14000 lb, trailer gross: 12400 lb, trailer unloaded: 2950 lb, overall width: 102 in'),
        federalRules,
      ),
    );
    expect(decisions.length).toBe(1 + findings.reduce((count, finding) => count + finding.decisions.length, 0));
  });
  it('keeps the path of a figure from a spec', () => {
    const found = ask('rig', { 'trailer GVWR': given('gross rating', kg(4536), 'label', 'trailer.gvwr') });
    expect(
      nodesOf(workings(found).map(({ why }) => why)).some(
        (node) => node.kind === 'given' && node.path === 'trailer.gvwr',
      ),
    ).toBe(true);
  });
  it('shows every digit where two decimals would hide the side of the line', () => {
    const found = ask('consp', facts('overall width: 102 in, trailer GVWR: 10000.001 lb'));
    expect(found.answers[1]?.text).toBe('trailer GVWR 10,000.001 lb > 10,000 lb: yes');
    expect(distanceText(found.answers[1]?.distance as NonNullable<(typeof found.answers)[1]['distance']>)).toBe(
      '0.001 lb above the line',
    );
  });
});

describe('misreadings', () => {
  it('4,536 kg is 10,000.17 lb: over 10,000 lb, under 10,001 lb; the line is never converted', () => {
    expect(ask('consp', facts('overall width: 80 in, trailer GVWR: 4536 kg')).outcome).toBe('applies');
    expect(texts('fmvss120', 'trailer GVWR: 4536 kg')).toEqual([
      'trailer GVWR 10,000.17 lb (4,536 kg) > 10,000 lb: yes',
    ]);
    const light =
      'commercial: yes, interstate: yes, tow vehicle GVWR: 2000 kg, trailer GVWR: 2536 kg, label GCWR: not shown, actual weights within ratings: yes';
    expect(ask('cmv-390', facts(light)).outcome).toBe('does not apply');
    expectReplays(...workings(ask('cmv-390', facts(light))));
  });
  it('11,794 kg is 26,001.3 lb and stands for 26,001 lb: 11,793 kg is below it', () => {
    const truck = (weight: string): string =>
      ask('cdl', facts(`tow vehicle GVWR: ${weight}, trailer GVWR: 7000 lb, actual weights within ratings: yes`))
        .outcome;
    expect([truck('11793 kg'), truck('11794 kg')]).toEqual(['does not apply', 'applies']);
  });
  it('2,032 mm is 80 in exactly, and 9.144 m is 30 ft exactly', () => {
    expect(ask('lamps-w', { 'overall width': given('width', inch(80), 'stated') }).outcome).toBe('applies');
    expect(ask('lamps-l', { 'overall length': inch(360) }).outcome).toBe('applies');
    expect(ask('lamps-l', { 'overall length': inch('359.99') }).outcome).toBe('does not apply');
  });
  it('exactly 10,000 lb: guard and light placard yes, tape, towed unit and heavy label no', () => {
    const at = facts(
      'trailer GVWR: 10000 lb, overall width: 102 in, tow vehicle GVWR: 33000 lb, label GCWR: not shown, actual weights within ratings: yes',
    );
    expect(
      ['rig', 'fmvss110', 'fmvss120', 'consp', 'cdl'].map((id) => [ask(id, at).rule.id, ask(id, at).outcome]),
    ).toEqual([
      ['rig', 'applies'],
      ['fmvss110', 'applies'],
      ['fmvss120', 'does not apply'],
      ['consp', 'does not apply'],
      ['cdl-B', 'applies'],
    ]);
  });
  it('a machine of exactly 10,000 lb falls under both cargo sections', () => {
    const at = facts(
      'commercial: yes, interstate: yes, trailer GVWR: 14000 lb, cargo article weight: 10000 lb, lightest article not tied as heavy equipment: 10000 lb',
    );
    expect(['heavy-eq', 'light-veh', 'light-eq-option'].map((id) => ask(id, at).outcome)).toEqual([
      'applies',
      'applies',
      'does not apply',
    ]);
  });
  it('a heavy trailer behind a light truck asks for no group below 26,001 lb', () => {
    expect(
      ask(
        'cdl',
        facts(
          'tow vehicle GVWR: 8000 lb, trailer GVWR: 15000 lb, label GCWR: not shown, actual weights within ratings: yes',
        ),
      ).outcome,
    ).toBe('does not apply');
  });
  it('a label GCWR decides where the sum does not', () => {
    const pair = 'tow vehicle GVWR: 11300 lb, trailer GVWR: 14000 lb, actual weights within ratings: yes';
    expect(ask('cdl', facts(`${pair}, label GCWR: not shown`)).outcome).toBe('does not apply');
    expect(ask('cdl', facts(`${pair}, label GCWR: 30000 lb`)).outcome).toBe('applies');
    expect(ask('cdl', facts(pair)).missing).toEqual(['label GCWR']);
  });
  it('one class up: 11,300 + 14,000 stays below 26,001, 11,300 + 16,000 does not', () => {
    expect(
      ask(
        'cdl',
        facts(
          'tow vehicle GVWR: 11300 lb, trailer GVWR: 16000 lb, label GCWR: not shown, actual weights within ratings: yes',
        ),
      ).outcome,
    ).toBe('applies');
  });
  it('a GVWR below what the trailer weighs loaded does not make the towed unit lighter', () => {
    expect(
      ask(
        'cdl',
        facts(
          'tow vehicle GVWR: 16500 lb, tow vehicle gross: 12000 lb, trailer GVWR: 9900 lb, trailer gross: 10400 lb, label GCWR: not shown',
        ),
      ).outcome,
    ).toBe('applies');
  });
  it('brakes of 393.42 bind a commercial vehicle: a private owner reads State law', () => {
    const found = ask('brake-all', facts('commercial: no, trailer GVWR: 14000 lb'));
    expect(found.outcome).toBe('does not apply');
    expect(found.caution).toMatch(/State law/);
  });
});

describe('facts known in part', () => {
  it('crosses a line on what is known, and says that it is a lower bound', () => {
    const found = ask('cmv-390', facts('commercial: yes, interstate: yes, trailer GVWR: 14000 lb'));
    expect(found.outcome).toBe('applies');
    expect(found.answers[2]?.text).toBe('greatest of GVWR, gross, GCWR at least 14,000 lb >= 10,001 lb: yes');
    expect(found.missing).toEqual([]);
    expectReplays(...workings(found));
  });
  it('does not stay below a line on what is known', () => {
    const found = ask('cdl', facts('tow vehicle GVWR: 11300 lb, trailer GVWR: 14000 lb, label GCWR: not shown'));
    expect(found.outcome).toBe('cannot be told');
    expect(found.missing).toEqual(['tow vehicle gross', 'trailer gross']);
    expect(found.answers[0]?.text).toBe('GCWR at least 25,300 lb >= 26,001 lb: cannot be told');
  });
  it('one condition that fails is enough for no', () => {
    expect(
      ask('cdl', facts('tow vehicle GVWR: 9000 lb, trailer GVWR: 7000 lb, actual weights within ratings: yes')).outcome,
    ).toBe('does not apply');
    expect(ask('consp', facts('overall width: 79 in')).outcome).toBe('does not apply');
  });
  it('passes a cap on what is known, but does not keep it', () => {
    expect(ask('gross-80', facts('trailer gross: 80001 lb')).outcome).toBe('crossed');
    expect(ask('gross-80', facts('trailer gross: 80000 lb')).outcome).toBe('cannot be told');
  });
  it('draws no line with half a fact', () => {
    const found = ask('relabel', facts('added weight: 60 lb'));
    expect([found.outcome, found.missing]).toEqual(['cannot be told', ['trailer GVWR']]);
  });
  it('draws no line with the lower bound of a sum', () => {
    const rule: Rule = {
      ...(federalRules.find(({ id }) => id === 'excise') as Rule),
      all: [
        { test: 'weight on tow vehicle', operator: '<=', line: { times: '0.2', of: 'combined gross' }, unit: 'lb' },
      ],
    };
    const found = ask('excise', facts('weight on tow vehicle: 1000 lb, trailer gross: 6000 lb'), [rule]);
    expect([found.outcome, found.missing]).toEqual(['cannot be told', ['tow vehicle gross']]);
    expect(
      ask('excise', facts('weight on tow vehicle: 1000 lb, trailer gross: 6000 lb, tow vehicle gross: 5000 lb'), [rule])
        .outcome,
    ).toBe('applies');
  });
  it('uses a weight that is known although its rating is not', () => {
    const found = ask(
      'cmv-390',
      facts('commercial: yes, interstate: yes, trailer gross: 12000 lb, actual weights within ratings: yes'),
    );
    expect([found.outcome, found.answers[2]?.text]).toEqual([
      'applies',
      'greatest of GVWR, gross, GCWR at least 12,000 lb >= 10,001 lb: yes',
    ]);
  });
  it('names each missing fact once', () => {
    const found = ask('surge', facts('commercial: yes, interstate: yes'));
    expect(new Set(found.missing).size).toBe(found.missing.length);
    expect(found.missing).toContain('trailer GVWR');
  });
});

describe('facts that cannot be', () => {
  it.each([
    ['tow vehicle GVWR: 14000 lb, label GCWR: 13999 lb', 'tow vehicle GVWR', 'label GCWR'],
    ['trailer unloaded: 3000 lb, trailer gross: 2999 lb', 'trailer unloaded', 'trailer gross'],
    [
      'actual weights within ratings: yes, trailer unloaded: 3000 lb, trailer gross: 2999 lb',
      'trailer unloaded',
      'trailer gross',
    ],
    ['weight on tow vehicle: 3001 lb, trailer gross: 3000 lb', 'weight on tow vehicle', 'trailer gross'],
    [
      'actual weights within ratings: yes, trailer GVWR: 10000 lb, trailer gross: 10001 lb',
      'trailer gross',
      'trailer GVWR',
    ],
    [
      'actual weights within ratings: yes, tow vehicle GVWR: 10000 lb, tow vehicle gross: 10001 lb',
      'tow vehicle gross',
      'tow vehicle GVWR',
    ],
  ])('%s', (said, first, second) => {
    expect(leftOf(screen(facts(said), federalRules))).toMatchObject({
      chapter: 'rules',
      tag: 'ContradictoryFacts',
      facts: [first, second],
    });
  });
  it.each([
    'tow vehicle GVWR: 14000 lb, label GCWR: 14000 lb',
    'trailer unloaded: 3000 lb, trailer gross: 3000 lb',
    'trailer GVWR: 10000 lb, trailer gross: 10001 lb', // an overload, which is an answer of another chapter
    'trailer GVWR: 7000 lb, heaviest single axle: 7500 lb',
    'weight on tow vehicle: -200 lb, trailer gross: 3000 lb',
  ])('is no contradiction: %s', (said) => {
    expect(orFail(screen(facts(said), federalRules)).findings.length).toBe(rulesByQuestion(federalRules).length);
  });
  it('names the path of the figure', () => {
    const error = leftOf(
      screen(
        { 'tow vehicle GVWR': lb(14000), 'label GCWR': given('GCWR', lb(9000), 'label', 'towVehicle.gcwr') },
        federalRules,
      ),
    );
    expect(describeError(error)).toBe(
      'towVehicle.gcwr: tow vehicle GVWR and label GCWR contradict each other: 14,000 lb and 9,000 lb; give a label GCWR not below the GVWR of the vehicle that shows it',
    );
  });
  it('refuses weights and lengths of nothing, wrong units, unknown facts, in words', () => {
    expect(leftOf(screen({ 'trailer GVWR': lb(0) }, federalRules))).toMatchObject({
      tag: 'OutOfRange',
      what: 'trailer GVWR',
    });
    expect(leftOf(screen({ 'overall width': inch(-3) }, federalRules))).toMatchObject({
      tag: 'OutOfRange',
      needed: 'greater than zero',
    });
    expect(leftOf(screen({ 'overall width': lb(3) } as never, federalRules))).toMatchObject({
      tag: 'WrongRuleUnit',
      needed: 'length',
    });
    expect(describeError(leftOf(screen({ 'overal width': foot(3) } as never, federalRules)))).toMatch(
      /^overal width: there is no fact "overal width"; write one of trailer GVWR.*, overall width, overall length,/,
    );
  });
  it('refuses a rule that binds where no rule is, or that measures a weight in inches', () => {
    const rule = federalRules.find(({ id }) => id === 'tracking') as Rule;
    expect(leftOf(screen({}, [{ ...rule, bindsWhere: 'nowhere' }]))).toMatchObject({
      tag: 'UnknownRule',
      found: 'nowhere',
      path: 'tracking',
    });
    // A limit is nothing to lean on, and nothing leans on itself, by whatever way round.
    expect(leftOf(screen({}, [{ ...rule, bindsWhere: 'width' }]))).toMatchObject({ found: 'width' });
    const round = federalRules.map((row) => (row.id === 'cmv-390' ? { ...row, bindsWhere: 'breakaway' } : row));
    const error = leftOf(screen({}, round));
    expect(error).toMatchObject({ tag: 'UnknownRule', found: 'breakaway', path: 'cmv-390' });
    expect((error as { known: readonly string[] }).known).toContain('rig');
    expect((error as { known: readonly string[] }).known).not.toContain('brake-all');
    const wrong = {
      ...rule,
      all: [{ test: 'trailer GVWR', operator: '>', line: { value: '3' }, unit: 'in' as Unit }],
    } as unknown as Rule;
    const range = { ...rule, where: wrong.all } as Rule;
    for (const misfit of [wrong, range])
      expect(leftOf(screen({}, [misfit]))).toMatchObject({
        tag: 'WrongRuleUnit',
        fact: 'trailer GVWR',
        found: 'in',
        path: 'tracking',
      });
  });
});
