/** Worksheets: blanks where they were asked for, a key that fits them, and pages that fit a page. */
import { describe, expect, it } from 'vitest';
import { assess } from '../../../src/assessment/index.js';
import {
  type ExerciseTopic,
  exercise,
  exerciseTopics,
  gradeAnswer,
  lessonPages,
  worksheet,
} from '../../../src/print/index.js';
import type { Derived } from '../../../src/trace/index.js';
import { rightOf } from '../../helpers/either.js';
import { tiltDeck } from '../../helpers/specs.js';

const tongue = rightOf(assess(tiltDeck())).weights.balance?.tongue as Derived<'lb'>;
const flat = (text: string): string => text.replace(/\s+/g, ' ');
const wide = (text: string): readonly string[] => text.split('\n').filter((line) => [...line].length > 80);

describe('a worksheet', () => {
  it('leaves the chosen steps blank, and prints them in the key', () => {
    const { sheet, key } = worksheet(tongue, { blank: ['gross weight', 'axle group load'] });
    expect(sheet.match(/_{9}$/gm)?.length).toBe(2);
    expect(sheet).not.toContain('12,650');
    expect(sheet).not.toContain('11,159.41');
    expect(sheet).toContain('1,490.59');
    expect(flat(key)).toContain('gross weight: 12,650 lb axle group load: 11,159.4 lb');
  });
  it('leaves every step and the answer blank unless told otherwise, without the proof that gives it away', () => {
    const { sheet, key } = worksheet(tongue);
    expect(sheet).not.toMatch(/1,49\d|11,159|12,650|638,520|Proof|changes it most/);
    expect(sheet).toContain('Answer: _________.');
    expect(key.trim().split('\n').length).toBe(9);
    expect([...wide(sheet), ...wide(key)]).toEqual([]);
    expect(flat(sheet)).toMatch(/no safe speed.*licensed engineer\. $/);
  });
  it('can be in kilograms', () => {
    const { sheet, key } = worksheet(tongue, { units: 'metric', blank: ['tongue load'] });
    expect(sheet).toContain('1,655.61');
    expect(key).toContain('676.1 kg');
  });
});

describe('two pages by one call', () => {
  it.each(Object.keys(exerciseTopics) as readonly ExerciseTopic[])('on %s', (topic) => {
    const { example, exercises, key } = lessonPages(topic, 4);
    for (const text of [example, exercises, key]) expect(wide(text)).toEqual([]);
    // A page of a printer holds sixty lines.
    for (const text of [example, exercises]) expect(text.split('\n').length).toBeLessThanOrEqual(60);
    expect(exercises.match(/Answer: _+/g)?.length).toBe(5);
    const answers = [...key.matchAll(/^\d\. (.*)$/gm)].map(([, answer = '']) => answer);
    expect(answers.length).toBe(5);
    for (const [i, answer] of answers.entries())
      expect(gradeAnswer(exercise(topic, 401 + i), answer), answer).toMatchObject({ right: true });
    expect(lessonPages(topic, 4)).toEqual({ example, exercises, key });
    expect(lessonPages(topic, 5).exercises).not.toBe(exercises);
  });
});
