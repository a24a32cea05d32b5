/** Which rigs a rule covers (`when`) and exempts (`unless`). Invented rules, so that no other condition decides. */
import { describe, expect, it } from 'vitest';
import type { Facts, Rule } from '../../../src/rules/index.js';
import { ask, facts } from '../helpers.js';

const rule: Rule = {
  id: 'invented',
  topic: 'an invented duty',
  jurisdiction: 'nowhere',
  kind: 'duty',
  all: [{ test: 'trailer gross', operator: '<=', line: { value: '3000' }, unit: 'lb' }],
  effect: 'nothing is asked',
  exceptions: [],
  clause: 'none',
  grade: 'A',
  read: '2026-11',
  source: 'invented',
};
const outcome = (one: Rule, given: Facts): string => ask('invented', given, [one]).outcome;

describe('a rule that speaks unless', () => {
  const unless: Rule = { ...rule, unless: ['full trailer'] };
  it('binds where the answer is no, not where it is yes, and cannot be told where it is not known', () => {
    expect(outcome(unless, facts('trailer gross: 3000 lb, full trailer: no'))).toBe('applies');
    expect(outcome(unless, facts('trailer gross: 3000 lb, full trailer: yes'))).toBe('does not apply');
    expect(outcome(unless, facts('trailer gross: 3000 lb'))).toBe('cannot be told');
    expect(ask('invented', facts('trailer gross: 3000 lb'), [unless]).missing).toEqual(['full trailer']);
  });
  it('does not ask its conditions of what it does not speak of', () => {
    const { missing, answers } = ask('invented', facts('full trailer: yes'), [unless]);
    expect([missing, answers.length]).toEqual([[], 1]);
  });
  it('does not bind above its line, whether or not it speaks', () => {
    for (const said of ['yes', 'no'])
      expect(outcome(unless, facts(`trailer gross: 3001 lb, full trailer: ${said}`))).toBe('does not apply');
  });
});

describe('a rule that speaks when', () => {
  const when: Rule = { ...rule, when: ['full trailer'] };
  it('binds where the answer is yes, not where it is no', () => {
    expect(outcome(when, facts('trailer gross: 3000 lb, full trailer: yes'))).toBe('applies');
    expect(outcome(when, facts('trailer gross: 3000 lb, full trailer: no'))).toBe('does not apply');
    expect(outcome(when, facts('trailer gross: 3000 lb'))).toBe('cannot be told');
  });
});
