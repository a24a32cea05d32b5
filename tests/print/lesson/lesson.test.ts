/** The explanation for a learner: the answer first, every figure that leads to it once, and all sums right. */
import { describe, expect, it } from 'vitest';
import { type Assessment, assessJson } from '../../../src/assessment/index.js';
import { lesson, lessonOf } from '../../../src/print/index.js';
import { type Derived, figureWith, given, over, result, workingLines } from '../../../src/trace/index.js';
import { lb, show, type Unit } from '../../../src/units/index.js';
import { rightOf } from '../../helpers/either.js';
import { rigs } from '../../helpers/rigs.js';
import { changed, tiltDeck } from '../../helpers/specs.js';

const answer = (spec: unknown): Assessment => rightOf(assessJson(spec));
const example = answer(tiltDeck());
const tongue = example.weights.balance?.tongue as Derived<'lb'>;
const flat = (text: string): string => text.replace(/\s+/g, ' ');

describe('the tongue load of the example', () => {
  const text = lesson(tongue);
  it('begins with question and answer, and says the idea', () => {
    expect(text.split('\n').slice(0, 2)).toEqual(['How much is the tongue load?', 'Answer: 1,491 lb.']);
    expect(text).toContain('Take the coupler as a hinge');
  });
  it('has each given once, with where one reads it', () => {
    const { givens } = lessonOf(tongue);
    expect(new Set(givens.map(({ symbol }) => symbol)).size).toBe(givens.length);
    for (const { symbol } of givens) expect(text.match(new RegExp(`^ {2}${symbol} +[\\d,.]+$`, 'gm'))?.length).toBe(1);
    expect(flat(text)).toContain('trailer weight 3,650 on a scale ticket (trailer.curb.weight)');
  });
  it('keeps one column for each unit', () => {
    const columns = (unit: RegExp): readonly number[] => [
      ...new Set(text.split('\n').flatMap((line) => (unit.test(line) ? [line.length] : []))),
    ];
    expect(columns(/^ {2}\d? ?.*(weight|load) {2,}[\d,.]+$/).length).toBe(1);
    expect(columns(/^ {2}\d? ?.*position {2,}[\d,.]+$/).length).toBe(1);
    expect(columns(/moment.* {2,}[\d,.]+$/).length).toBe(1);
  });
  it('proves it by going back to the gross weight', () =>
    expect(flat(text)).toContain(
      'Proof: tongue load + axle group load = gross weight: 1,490.59 lb + 11,159.41 lb = 12,650 lb.',
    ));
  it('says what changes it most, and a changed spec says the same', () => {
    expect(flat(text)).toContain('1 in more excavator front face: 44.1 lb less tongue load');
    const moved = answer(changed(tiltDeck(), 'cargo.0.front', '123 in')).weights.balance?.tongue;
    expect(moved && tongue.value.value.minus(moved.value.value).toFixed(1)).toBe('44.1');
  });
  it('reads in kilograms and millimetres, the working untouched', () => {
    const metric = lesson(tongue, { units: 'metric' });
    expect(flat(metric)).toContain('Answer: 677 kg.');
    expect(flat(metric)).toContain(
      'Proof: tongue load + axle group load = gross weight: 676.12 kg + 5,061.82 kg = 5,737.94 kg.',
    );
    expect(flat(metric)).toContain('25 mm more excavator front face: 19.7 kg less tongue load');
    expect(metric).not.toMatch(/\blb\b|\bin\b {2}/);
  });
});

describe('a least of many', () => {
  const payload = example.payload?.best?.weight as Derived<'lb'>;
  it('is a table with its least marked, and only the steps that lead to it', () => {
    const text = lesson(payload);
    expect(text.match(/ <$/gm)?.length).toBe(1);
    expect(text).toMatch(/payload by ball mount tongue +9,683\.33 <$/m);
    expect(text).not.toMatch(/least of \(/);
    expect(lessonOf(payload).steps.length).toBeLessThan(workingLines([payload.why]).length / 5);
    expect(text).toContain('A capacity is rounded down, once, at the end: 9,683 lb.');
  });
  it('marks every one that ties', () => {
    const spec = [
      ['tow', undefined],
      ['trailer.gvwr', '14,000 lb'],
      ['trailer.coupler', { gross: '14,000 lb', tongue: '1,680 lb' }],
    ].reduce((all, [path, value]) => changed(all, path as string, value), tiltDeck());
    const tied = answer(spec).payload?.best?.weight as Derived<'lb'>;
    expect(lesson(tied).match(/ <$/gm)?.length).toBeGreaterThan(2);
  });
});

describe('any figure of any rig', () => {
  it('has a lesson in eighty columns whose steps are the working', () => {
    let asked = 0;
    for (const { spec } of rigs)
      for (const { reserve, used } of answer(spec).checks.slice(0, 8))
        for (const figure of [reserve, used] as readonly Derived<Unit>[]) {
          asked += 1;
          for (const units of ['us', 'metric'] as const) {
            const text = lesson(figure, { units });
            expect(text.split('\n').filter((line) => [...line].length > 80)).toEqual([]);
            expect(text).not.toMatch(/undefined|NaN/);
          }
          const { steps } = lessonOf(figure);
          expect(steps.at(-1)?.node).toBe(figure.why);
          for (const { node } of steps) expect(figureWith(node).toFixed()).toBe(node.value.value.toFixed());
        }
    expect(asked).toBeGreaterThan(80);
  });
  it('proves a quotient by multiplying back, and takes the caller’s words', () => {
    const share = result('tongue share', over(given('tongue load', lb(1200)), given('gross weight', lb(10000))));
    const text = flat(lesson(share, { question: 'What share stands on the tongue?', idea: 'Part over whole.' }));
    expect(text).toMatch(/^What share stands on the tongue\? Answer: 0\.12\. Idea: Part over whole\./);
    expect(text).toContain('Proof: tongue share x gross weight = tongue load: 0.12 x 10,000 lb = 1,200 lb.');
    expect(show(share.value)).toBe('0.12');
  });
});
