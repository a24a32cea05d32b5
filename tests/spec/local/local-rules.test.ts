/** The rules of a State: the invented example, every way a file can be wrong, and the way back. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { describeError } from '../../../src/errors.js';
import { decodeLocalRules, decodeSpec } from '../../../src/spec/index.js';
import { localRulesCodec } from '../../../src/spec/local/local-rules.js';
import { leftOf, rightOf } from '../../helpers/either.js';
import { changed, tiltDeck } from '../../helpers/specs.js';
import { ask, facts } from '../../rules/helpers.js';

const file = JSON.parse(readFileSync('examples/local-rules.json', 'utf8')) as object;

describe('a file that is wrong', () => {
  it.each([
    ['rules.0.all.0.operator', '=>', 'rules.0.all.0.operator'],
    ['rules.0.all.0.operator', '=', 'rules.0.all.0.operator'],
    ['rules.0.jurisdiction', 'southmark', 'rules.0.jurisdiction'],
    ['rules.0.jurisdiction', 'federal', 'rules.0.jurisdiction'],
    ['rules.0.all.0.unit', 'in', 'rules.0.all.0.unit'],
    ['rules.0.all.0.unit', 'stone', 'rules.0.all.0.unit'],
    ['rules.0.all.0.test', 'trailer colour', 'rules.0.all.0.test'],
    ['rules.1.all.1.of', 'overall width', 'rules.1.all.1.of'],
    ['rules.0.when', ['on Sundays'], 'rules.0.when.0'],
    ['rules.0.unless', ['on Sundays'], 'rules.0.unless.0'],
    ['rules.0.grade', 'Z', 'rules.0.grade'],
    ['rules.0.bindsWhere', 'nowhere', 'rules.0.bindsWhere'],
    ['rules.0.all.0.value', 'about 3200', 'rules.0.all.0.value'],
    ['rules.0.all.0.value', '-3200', 'rules.0.all.0.value'],
    ['rules.0.all.0.value', 3200, 'rules.0.all.0.value'],
    ['rules.0.all.0.value', undefined, 'rules.0.all.0'],
    ['rules.1.all.1.value', '5', 'rules.1.all.1'],
    ['rules.1.all.1.times', 'half', 'rules.1.all.1.times'],
    ['rules.1.all.1.times', undefined, 'rules.1.all.1'],
    ['rules.1.all.1.of', undefined, 'rules.1.all.1'],
    ['rules.0.all.0.times', '0.5', 'rules.0.all.0'],
    ['rules.0.all.0.of', 'trailer GVWR', 'rules.0.all.0'],
    [
      'rules.1.all.1',
      { test: 'overall width', operator: '>', times: '0.5', of: 'trailer gross', unit: 'in' },
      'rules.1.all.1',
    ],
    ['rules.0.all.0.test', 'overall width', 'rules.0.all.0.unit'],
    ['rules.0.all', [], 'rules.0.all'],
    ['rules.0.kind', 'maybe', 'rules.0.kind'],
    ['rules.0.id', 'rig', 'rules.0.id'],
    ['rules.0.exeptions', [], 'rules.0.exeptions'],
    ['rules.0.all.0.note', 'x', 'rules.0.all.0.note'],
    ['comment', 'x', 'comment'],
    ['jurisdictions.0.name', undefined, 'jurisdictions.0.name'],
    ['stepTables.0.operator', '>=', 'stepTables.0.operator'],
    ['stepTables.0.jurisdiction', 'southmark', 'stepTables.0.jurisdiction'],
    ['stepTables.0.test', 'overall width', 'stepTables.0.test'],
    ['stepTables.0.unit', 'ft', 'stepTables.0.unit'],
    ['stepTables.0.grade', 'Z', 'stepTables.0.grade'],
    ['stepTables.0.steps', [], 'stepTables.0.steps'],
    ['stepTables.0.steps.1.upTo', '10000', 'stepTables.0.steps.1.upTo'],
    ['stepTables.0.steps.1.upTo', 'lots', 'stepTables.0.steps.1.upTo'],
    ['stepTables.0.steps.1.fee', '10', 'stepTables.0.steps.1.fee'],
  ] as readonly (readonly [string, unknown, string])[])('%s: %j is refused at %s', (path, value, where) => {
    const error = leftOf(decodeLocalRules(changed(file, path, value)));
    expect(error.problems.map((problem) => problem.path)).toContain(where);
    expect(error.path).toBe(where);
    expect(describeError(error)).not.toMatch(/undefined|\[object/);
    const inside = leftOf(decodeSpec(changed(tiltDeck(), 'rules.local', changed(file, path, value))));
    expect(inside.path).toBe(`rules.local.${where}`);
  });
  it('tells all of it at once', () => {
    const twice = changed(changed(file, 'rules.0.all.0.operator', '=>'), 'stepTables.1.steps', []);
    expect(leftOf(decodeLocalRules(changed(twice, 'rules.1.comment', 'x'))).problems.map(({ path }) => path)).toEqual([
      'rules.0.all.0.operator',
      'rules.1.comment',
      'stepTables.1.steps',
    ]);
    const undeclared = changed(changed(file, 'rules.0.jurisdiction', 'southmark'), 'rules.1.bindsWhere', 'nowhere');
    expect(
      leftOf(decodeLocalRules(changed(undeclared, 'stepTables.0.id', 'rig'))).problems.map(({ path }) => path),
    ).toEqual(['rules.0.jurisdiction', 'stepTables.0.id', 'rules.1.bindsWhere']);
  });
  it('does not let a file speak for the federal rules', () => {
    const posing = changed(changed(file, 'jurisdictions.0.id', 'federal'), 'rules.0.jurisdiction', 'federal');
    expect(leftOf(decodeLocalRules(posing)).problems.map(({ path }) => path)).toContain('rules.0.jurisdiction');
  });
  it('lets a rule bind by one of the file that stands on its own, not by one that leans, nor by a limit', () => {
    const told = rightOf(decodeLocalRules(file)).rules.map(({ id }) => id);
    const leaning = changed(file, 'rules.1.bindsWhere', told[0]);
    expect(rightOf(decodeLocalRules(leaning)).rules[1]?.bindsWhere).toBe(told[0]);
    const chain = changed(leaning, 'rules.0.bindsWhere', told[1]);
    const [first] = leftOf(decodeLocalRules(chain)).problems;
    expect(first).toMatchObject({ path: 'rules.0.bindsWhere', got: `"${told[1]}"` });
    expect(first?.needed).not.toContain(told[0]);
    expect(leftOf(decodeLocalRules(changed(leaning, 'rules.0.kind', 'limit'))).problems).toMatchObject([
      { path: 'rules.1.bindsWhere', fault: 'contradiction' },
    ]);
  });
  it.each([[null], ['rules'], [[]], [{}], [42], [undefined]])('%j is no rule file', (input) => {
    expect(leftOf(decodeLocalRules(input))).toMatchObject({ chapter: 'spec', tag: 'UndecodableSpec' });
  });
});

describe('a file that is right', () => {
  it('reads digits with commas as the same figure', () => {
    expect(rightOf(decodeLocalRules(changed(file, 'rules.0.all.0.value', '3,200'))).rules[0]?.all[0]?.line).toEqual({
      value: '3200',
    });
  });
  it('lets a local rule bind where a federal one applies', () => {
    const { rules } = rightOf(decodeLocalRules(changed(file, 'rules.0.bindsWhere', 'cmv-390')));
    expect(ask('northmark-brakes', facts('commercial: no, trailer gross: 9000 lb'), rules).outcome).toBe(
      'does not apply',
    );
  });
  it('is written as it was read, and read again the same', () => {
    const read = rightOf(decodeLocalRules(file));
    expect(localRulesCodec.is(read)).toBe(true);
    expect(rightOf(decodeLocalRules(localRulesCodec.encode(read)))).toEqual(read);
    expect(localRulesCodec.is({ ...read, rules: [{ ...read.rules[0], kind: 'maybe' }] })).toBe(false);
  });
});
