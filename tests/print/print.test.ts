/**
 * The pages of ten unlike rigs and of the lessons, kept as text: whatever moves in print, a word, a figure or a line, is seen.
 *
 * `UPDATE=1 npx vitest run tests/print/print.test.ts` writes them anew; read them before committing.
 */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Assessment, assessJson } from '../../src/assessment/index.js';
import { remedies, sureness } from '../../src/choose/index.js';
import {
  brief,
  briefExtras,
  exerciseTopics,
  leaflet,
  lesson,
  lessonPages,
  remediesText,
  report,
  surenessText,
  toLatex,
  toMarkdown,
  toMathML,
  toSheet,
} from '../../src/print/index.js';
import type { SpecInput } from '../../src/spec/index.js';
import { rightOf } from '../helpers/either.js';
import { rigs } from '../helpers/rigs.js';

const folder = new URL('expected/', import.meta.url);

function isAsKept(name: string, page: string): void {
  const text = page.replaceAll('\r\n', '\n');
  const file = new URL(name, folder);
  if (process.env.UPDATE === '1') {
    mkdirSync(folder, { recursive: true });
    writeFileSync(file, text);
  }
  expect(existsSync(file), `${name} is kept`).toBe(true);
  expect(text.split('\n')).toEqual(readFileSync(file, 'utf8').split('\n'));
}

/** The sheet and the formulas of what a rig carries, in every notation. */
function notations({ payload, weights, checks }: Assessment): string {
  const figure = payload?.anywhere?.weight ?? payload?.best?.weight ?? weights.gross;
  if (figure === undefined) return 'nothing to write down';
  const content = { figures: [figure], checks: checks.slice(0, 3) };
  return [
    toLatex(figure),
    toMarkdown(figure),
    toMathML(figure),
    toSheet(content, 'csv'),
    toSheet(content, 'fods'),
  ].join('\n\n');
}

describe('the pages of a rig', () => {
  it.each(rigs)('$file', ({ file, spec }) => {
    const assessment = rightOf(assessJson(spec));
    const sure = rightOf(sureness(assessment));
    const found = remedies(spec as SpecInput);
    const metric = file.startsWith('06');
    const units = metric ? 'metric' : 'us';
    const page = [
      brief(assessment, { units, ...briefExtras({ sureness: sure }) }),
      report(assessment, { units, rules: metric ? 'all' : 'near' }),
      brief(assessment, { units: metric ? 'us' : 'metric' }),
      leaflet(assessment, { units, date: '2026-11-30' }),
      found._tag === 'Right' ? remediesText(found.right) : 'no remedies',
      surenessText(sure),
      assessment.weights.gross === undefined ? '' : lesson(assessment.weights.gross, { units }),
    ].join('\n\n');
    isAsKept(file.replace('.json', '.txt'), page);
  });
  it.each(rigs.slice(0, 1))('$file, in formulas', ({ file, spec }) =>
    isAsKept(file.replace('.json', '-formulas.txt'), notations(rightOf(assessJson(spec)))),
  );
});

describe('the pages of a lesson', () => {
  it.each(Object.keys(exerciseTopics) as (keyof typeof exerciseTopics)[])('%s', (topic) => {
    const { example, exercises, key } = lessonPages(topic, 3, { count: 2 });
    isAsKept(`lesson-${topic.replace(/[^a-z]+/gi, '-')}.txt`, [example, exercises, key].join('\n\n'));
  });
});
