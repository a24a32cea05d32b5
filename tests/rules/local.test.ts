/** Rules and step tables from a user's file: the invented example, and every way a file can be wrong. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { describeError } from '../../src/errors.js';
import {
  federalRules,
  readLocalRules,
  type StepTable,
  screen,
  weightClassFor,
  weightClassForFacts,
} from '../../src/rules/index.js';
import type { Derived } from '../../src/trace/index.js';
import { kg, lb, show, type UnitOf } from '../../src/units/index.js';
import { expectReplays } from '../helpers/working.js';
import { ask, facts, leftOf, orFail } from './helpers.js';

const text = readFileSync(join(import.meta.dirname, '../../examples/local-rules.json'), 'utf8');
const local = orFail(readLocalRules(JSON.parse(text)));
const table = (id: string): StepTable => local.stepTables.find((candidate) => candidate.id === id) as StepTable;

/** The example with one place changed. */
function changed(path: string, value: unknown): unknown {
  const file = JSON.parse(text);
  const keys = path.split('.');
  const last = keys.pop() as string;
  const record = keys.reduce((inside, key) => inside[key], file);
  if (value === undefined) delete record[last];
  else record[last] = value;
  return file;
}

describe('the example file', () => {
  it('says everywhere that it is invented', () => {
    expect(JSON.parse(text).notice).toMatch(/^INVENTED/);
    for (const { name } of local.jurisdictions) expect(name).toMatch(/invented/);
    for (const { topic, source } of [...local.rules, ...local.stepTables])
      expect(`${topic} ${source}`).toMatch(/\(invented\).*invented/);
  });
  it.each([
    ['3199 lb', 'does not apply'],
    ['3200 lb', 'does not apply'],
    ['3201 lb', 'applies'],
    ['1452 kg', 'applies'],
  ])('brakes in Northmark at %s: %s', (gross, outcome) => {
    expect(ask('northmark-brakes', facts(`trailer gross: ${gross}`), local.rules).outcome).toBe(outcome);
  });
  it('compares in kg where the rule prints kg', () => {
    const found = ask('eastvale-brakes', facts('trailer gross: 1400 kg, tow vehicle gross: 6000 lb'), local.rules);
    expect(found.answers.map(({ text: said }) => said)).toEqual([
      'trailer gross 1,400 kg >= 1,400 kg: yes',
      'trailer gross 1,400 kg > 0.5 x tow vehicle gross 2,721.55 kg = 1,360.78 kg: yes',
    ]);
    expect([found.outcome, found.verify]).toEqual(['applies', true]);
  });
  it('stands beside the federal rules in one screening', () => {
    expect(orFail(screen(facts('trailer gross: 3000 lb'), [...federalRules, ...local.rules])).findings).toHaveLength(
      federalRules.length + 2,
    );
  });
});

describe('step tables', () => {
  it.each([
    [9999, 'class 1', '1 lb', 'class 2'],
    [10000, 'class 1', '0 lb', 'class 2'],
    [10001, 'class 2', '5,999 lb', 'class 3'],
    [19800, 'class 3', '200 lb', 'class 4'],
    [26000, 'class 4', '0 lb', 'class 5'],
  ])('%i lb combined falls in %s with %s left', (weight, name, remaining, next) => {
    const found = orFail(weightClassFor(table('northmark-registration'), lb(weight)));
    expect([found.class, show((found.remaining as Derived<UnitOf<'mass'>>).value), found.next]).toEqual([
      name,
      remaining,
      next,
    ]);
    expectReplays(found.remaining as Derived<UnitOf<'mass'>>);
    expect(found.decisions.at(-1)?.holds).toBe(true);
  });
  it('has an open end when the table says so', () => {
    const found = orFail(weightClassFor(table('northmark-registration'), lb(26001)));
    expect([found.class, found.remaining, found.next, found.verify]).toEqual(['class 5', undefined, undefined, true]);
  });
  it.each([
    [2999, 'light'],
    [3000, 'middle'],
    [7999, 'middle'],
    [8000, 'heavy'],
    [13999, 'heavy'],
  ])('with "<", %i lb falls in %s', (weight, name) => {
    expect(orFail(weightClassFor(table('eastvale-registration'), lb(weight))).class).toBe(name);
  });
  it('refuses a weight beyond a closed table', () => {
    expect(leftOf(weightClassFor(table('eastvale-registration'), lb(14000)))).toMatchObject({
      tag: 'BeyondLastStep',
      table: 'eastvale-registration',
      found: '14,000 lb',
      last: '14000 lb',
    });
    expect(leftOf(weightClassFor(table('eastvale-registration'), lb(0)))).toMatchObject({ tag: 'OutOfRange' });
  });
  it('compares kilograms exactly, in the unit of the table', () => {
    expect(orFail(weightClassFor(table('northmark-registration'), kg(4536))).class).toBe('class 2');
  });
  it('finds its weight among the facts of a job, and does not guess it', () => {
    const found = orFail(
      weightClassForFacts(
        table('northmark-registration'),
        facts('tow vehicle gross: 7400 lb, trailer gross: 12400 lb'),
      ),
    );
    expect(found.text).toBe('combined gross 19,800 lb <= 20,000 lb: class 3; 200 lb to class 4');
    expect(
      leftOf(weightClassForFacts(table('northmark-registration'), facts('trailer gross: 12400 lb'))),
    ).toMatchObject({
      tag: 'MissingFacts',
      missing: ['tow vehicle gross'],
    });
    expect(leftOf(weightClassForFacts(table('northmark-registration'), facts('trailer gross: -1 lb')))).toMatchObject({
      tag: 'OutOfRange',
    });
  });
});

describe('a file that is wrong', () => {
  it.each([
    ['rules.0.all.0.operator', '=>', 'UnknownOperator', 'rules.0.all.0.operator'],
    ['rules.0.all.0.operator', '=', 'UnknownOperator', 'rules.0.all.0.operator'],
    ['rules.0.jurisdiction', 'southmark', 'UnknownJurisdiction', 'rules.0.jurisdiction'],
    ['rules.0.jurisdiction', 'federal', 'UnknownJurisdiction', 'rules.0.jurisdiction'],
    ['rules.0.all.0.unit', 'in', 'WrongRuleUnit', 'rules.0.all.0.unit'],
    ['rules.0.all.0.unit', 'stone', 'UnknownUnit', 'rules.0.all.0.unit'],
    ['rules.0.all.0.test', 'trailer colour', 'UnknownFact', 'rules.0.all.0.test'],
    ['rules.1.all.1.of', 'overall width', 'UnknownFact', 'rules.1.all.1.of'],
    ['rules.0.when', ['on Sundays'], 'UnknownFact', 'rules.0.when.0'],
    ['rules.0.unless', ['on Sundays'], 'UnknownFact', 'rules.0.unless.0'],
    ['rules.0.grade', 'Z', 'UnknownGrade', 'rules.0.grade'],
    ['rules.0.bindsWhere', 'nowhere', 'UnknownRule', 'rules.0.bindsWhere'],
    ['rules.0.all.0.value', 'about 3200', 'UnreadableRules', 'rules.0.all.0.value'],
    ['rules.0.all.0.value', '-3200', 'UnreadableRules', 'rules.0.all.0.value'],
    ['rules.0.all.0.value', 3200, 'UnreadableRules', 'rules.0.all.0.value'],
    ['rules.0.all.0.value', undefined, 'UnreadableRules', 'rules.0.all.0'],
    ['rules.1.all.1.value', '5', 'UnreadableRules', 'rules.1.all.1'],
    ['rules.1.all.1.times', 'half', 'UnreadableRules', 'rules.1.all.1.times'],
    ['rules.0.all', [], 'UnreadableRules', 'rules.0.all'],
    ['rules.0.effectWhen', 'maybe', 'UnreadableRules', 'rules.0.effectWhen'],
    ['rules.0.id', 'rig', 'UnreadableRules', 'rig'],
    ['rules.0.exeptions', [], 'UnreadableRules', 'rules.0.exeptions'],
    ['rules.0.all.0.note', 'x', 'UnreadableRules', 'rules.0.all.0.note'],
    ['comment', 'x', 'UnreadableRules', 'comment'],
    ['jurisdictions.0.name', undefined, 'UnreadableRules', 'jurisdictions.0.name'],
    ['stepTables.0.operator', '>=', 'UnknownOperator', 'stepTables.0.operator'],
    ['stepTables.0.jurisdiction', 'southmark', 'UnknownJurisdiction', 'stepTables.0.jurisdiction'],
    ['stepTables.0.test', 'overall width', 'UnknownFact', 'stepTables.0.test'],
    ['stepTables.0.unit', 'ft', 'WrongRuleUnit', 'stepTables.0.unit'],
    ['stepTables.0.grade', 'Z', 'UnknownGrade', 'stepTables.0.grade'],
    ['stepTables.0.steps', [], 'UnreadableRules', 'stepTables.0.steps'],
    ['stepTables.0.steps.1.upTo', '10000', 'UnreadableRules', 'stepTables.0.steps.1.upTo'],
    ['stepTables.0.steps.1.upTo', 'lots', 'UnreadableRules', 'stepTables.0.steps.1.upTo'],
    ['stepTables.0.steps.1.fee', '10', 'UnreadableRules', 'stepTables.0.steps.1.fee'],
  ])('%s: %j is %s at %s', (path, value, tag, where) => {
    const error = leftOf(readLocalRules(changed(path, value)));
    expect(error).toMatchObject({ chapter: 'rules', tag, path: where });
    expect(describeError(error)).toMatch(/^[\w.-]+: asked .+; found .+; needed .+/);
  });
  it.each([[null], ['rules'], [[]], [{}], [42], [undefined]])('%j is no rule file', (input) => {
    expect(leftOf(readLocalRules(input))).toMatchObject({ tag: 'UnreadableRules' });
  });
  it('reads digits with commas as the same figure', () => {
    expect(orFail(readLocalRules(changed('rules.0.all.0.value', '3,200'))).rules[0]?.all[0]?.line).toEqual({
      value: '3200',
    });
  });
  it('lets a local rule bind where a federal one applies', () => {
    const { rules } = orFail(readLocalRules(changed('rules.0.bindsWhere', 'cmv-390')));
    expect(ask('northmark-brakes', facts('commercial: no, trailer gross: 9000 lb'), rules).outcome).toBe(
      'does not apply',
    );
  });
});
