/** The federal rules, as a table and as the list that `screen` takes. */
import type { Derived, Table } from '../../trace/index.js';
import { fromTable } from '../../trace/index.js';
import { quantity } from '../../units/index.js';
import { frozen, has } from '../../units/internal.js';
import { federalRows } from '../data/federal.js';
import { type Operator, type Rule, sourceOfRule } from '../rule.js';

/**
 * The federal lines for a trailer and its combination.
 *
 * Rows whose text was read in a regulation or an agency page carry no mark; rows from secondary copies or from memory
 * carry a verify mark in every finding.
 *
 * @example screen(facts, federalRules)
 * @source the source of each row
 */
export const federalRules: readonly Rule[] = frozen(federalRows);

export const federalTable: Table<Rule> = {
  name: 'federal rules',
  source: {
    id: 'federal-rules',
    title: 'Federal regulations and agency pages, each row with its own source',
    grade: 'B',
    edition: 'read November 2026',
  },
  authoritative: 'value, in the unit printed with the operator; figures in the other unit are only shown',
  rows: federalRules,
};

export type FederalId = (typeof federalRows)[number]['id'];

/** The federal rule of this id. @example federalRule('width').clause // 23 CFR 658.15 */
export const federalRule = (id: FederalId): Rule => federalRules.find((rule) => rule.id === id) as Rule;

/** A printed figure of a federal rule, with its operator, for functions that ask one rule directly. */
export function printedLine(
  id: FederalId,
  index = 0,
  of: 'all' | 'where' = 'all',
): { readonly operator: Operator; readonly line: Derived<'lb'> } {
  const rule = federalRule(id);
  const condition = rule[of]?.[index];
  if (condition === undefined || condition.unit !== 'lb' || !has(condition.line, 'value'))
    throw new RangeError(`no printed figure in lb at ${id}, ${index}`);
  const figure = quantity(condition.line.value, 'lb');
  return {
    operator: condition.operator,
    line: fromTable(`line of ${rule.topic}`, figure, { table: federalTable.name, key: id, source: sourceOfRule(rule) }),
  };
}

/** A printed share of a federal rule: 1.75, 1.25, 0.40. */
export function printedShare(
  id: FederalId,
  index: number,
): { readonly operator: Operator; readonly share: Derived<'ratio'> } {
  const rule = federalRule(id);
  const condition = rule.all[index];
  if (condition === undefined || !has(condition.line, 'times'))
    throw new RangeError(`no printed share at ${id}, ${index}`);
  return {
    operator: condition.operator,
    share: fromTable(`printed share, ${rule.topic}`, quantity(condition.line.times, 'ratio'), {
      table: federalTable.name,
      key: id,
      source: sourceOfRule(rule),
    }),
  };
}
