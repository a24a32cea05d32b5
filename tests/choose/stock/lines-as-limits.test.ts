/** A weight on a published line itself is still on this side of it, or no longer, by the operator that the rule prints. */
import { expect, it } from 'vitest';
import { assessJson, ruleFindings } from '../../../src/assessment/index.js';
import { linesAsLimits } from '../../../src/choose/index.js';
import { rightOf } from '../../helpers/either.js';
import { changed, tiltDeck } from '../../helpers/specs.js';

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

it('leaves out a line whose figure is not all known', () => {
  // Without the scales of the truck the combined gross is only known to be more than the trailer's.
  const partly = rightOf(assessJson(changed(tiltDeck(), 'tow.front', undefined)));
  const texts = ruleFindings(partly.rules).flatMap(({ answers }) => answers.map(({ text }) => text));
  expect(texts).toContain('combined gross at least 12,650 lb <= 80,000 lb: cannot be told');
  expect(linesAsLimits(partly).map(({ id }) => id)).not.toContain('gross-80');
  expect(linesAsLimits(answer).map(({ id }) => id)).toContain('gross-80');
});
