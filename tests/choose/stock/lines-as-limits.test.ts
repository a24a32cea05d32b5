/** A weight on a published line itself is still on this side of it, or no longer, by the operator that the rule prints. */
import { expect, it } from 'vitest';
import { assessJson, ruleFindings } from '../../../src/assessment/index.js';
import { linesAsLimits } from '../../../src/choose/index.js';
import { rightOf } from '../../helpers/either.js';
import { tiltDeck } from '../../helpers/specs.js';

const answer = rightOf(assessJson(tiltDeck()));
const included = (id: string): readonly boolean[] =>
  linesAsLimits(answer)
    .filter((line) => line.id === id)
    .map(({ lineIncluded }) => lineIncluded);

it.each([
  ['ax-single', '<=', true],
  ['consp', '>', true],
  ['rig', '>=', false],
  ['cmv-390', '>=', false],
])('%s prints %s: %s', (id, operator, is) => {
  const rows = ruleFindings(answer.rules).flatMap((finding) => finding.rows);
  const row = rows.find(({ rule }) => rule.id === id);
  expect(row?.answers.flatMap(({ decision }) => decision?.comparison ?? [])).toContain(operator);
  expect(included(id)).toEqual([is]);
});

it('below 20,001 lb is not on it', () => {
  expect(included('surge-2')).toContain(false);
  expect(included('registration class by combined weight (invented)')).toEqual([true]);
});
