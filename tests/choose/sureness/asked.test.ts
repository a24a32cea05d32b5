/** What may not be sure: every reserve of loads and of parts, and every load that must press. */
import { expect, it } from 'vitest';
import { assessJson } from '../../../src/assessment/index.js';
import { questionsOf, shapeOf } from '../../../src/choose/sureness/asked.js';
import { rightOf } from '../../helpers/either.js';
import { changed, tiltDeck } from '../../helpers/specs.js';

const assessed = (path = 'cargo.0.weight', value: unknown = '9,000 lb') =>
  rightOf(assessJson(changed(tiltDeck(), path, value)));

it('asks every check of loads and of parts, and every load that must press', () => {
  const answer = assessed();
  const questions = questionsOf(answer);
  expect(answer.partChecks.length).toBeGreaterThan(5);
  expect(answer.uplift.mustPress.length).toBeGreaterThan(0);
  expect(questions.map(({ id, kind }) => [id, kind])).toEqual([
    ...[...answer.checks, ...answer.partChecks].map(({ id }) => [id, 'rating']),
    ...answer.uplift.mustPress.map(({ what }) => [`presses/${what}`, 'pressing']),
  ]);
  expect(questions.map(({ figure }) => figure)).toEqual([
    ...[...answer.checks, ...answer.partChecks].map(({ reserve }) => reserve),
    ...answer.uplift.mustPress.map(({ load }) => load),
  ]);
});

it('knows one formula at other figures from another formula', () => {
  const shape = (...of: Parameters<typeof assessed>): string => shapeOf(questionsOf(assessed(...of)));
  expect(shape()).toBe(shape('cargo.0.weight', '8,500 lb'));
  expect(shape()).not.toBe(shape('cargo', []));
  // The same questions, one weight converted.
  expect(shape()).not.toBe(shape('cargo.0.weight', '4,000 kg'));
});
