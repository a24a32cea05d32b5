/** Rules and step tables from a user's file: the invented example, and every way a file can be wrong. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import {
  federalRules,
  rulesByQuestion,
  type StepTable,
  screen,
  weightClassFor,
  weightClassForFacts,
} from '../../src/rules/index.js';
import { decodeLocalRules } from '../../src/spec/index.js';
import type { Derived } from '../../src/trace/index.js';
import { kg, lb, show, type UnitOf } from '../../src/units/index.js';
import { expectReplays } from '../helpers/working.js';
import { ask, facts, leftOf, orFail } from './helpers.js';

const text = readFileSync(join(import.meta.dirname, '../../examples/local-rules.json'), 'utf8');
const local = orFail(decodeLocalRules(JSON.parse(text)));
const table = (id: string): StepTable => local.stepTables.find((candidate) => candidate.id === id) as StepTable;

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
      rulesByQuestion(federalRules).length + 2,
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
