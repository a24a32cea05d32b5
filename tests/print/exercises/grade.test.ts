/** Grading: no correct way of writing an answer is marked wrong, and each known mistake is named. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Exercise,
  type ExerciseTopic,
  exercise,
  exerciseTopics,
  gradeAnswer,
  type MistakeTag,
} from '../../../src/print/index.js';
import { figureWith } from '../../../src/trace/index.js';
import { convert, lb, type Quantity, show, showNumber } from '../../../src/units/index.js';

const topics = Object.keys(exerciseTopics) as readonly ExerciseTopic[];
const problems = (count: number): readonly Exercise[] =>
  topics.flatMap((topic) => Array.from({ length: count }, (_, seed) => exercise(topic, seed)));
const forty = problems(40);

/** As many decimals as asked; to the nearest, or for none the way the figure must go. */
function rounded(value: number, decimals: number, roundedAs: Exercise['roundedAs']): string {
  if (decimals > 0) return value.toFixed(decimals);
  // A hair, for doubles that stand beside a whole number.
  const whole = roundedAs === 'load' ? Math.ceil(value - 1e-7) : Math.floor(value + 1e-7);
  return String(whole);
}

describe('exercises', () => {
  it('come out the same for the same seed, and unlike for others', () => {
    for (const topic of topics) {
      const texts = new Set(forty.filter((each) => each.topic === topic).map(({ text }) => text));
      expect(texts.size).toBeGreaterThan(30);
      expect(exercise(topic, 3).text).toBe(exercise(topic, 3).text);
    }
  });
  it('have answers that are their working, whole where rounding is not the point', () => {
    for (const { answer, rounds, text } of forty) {
      expect(figureWith(answer.why).toFixed()).toBe(answer.value.value.toFixed());
      const scaled = answer.value.unit === 'ratio' ? answer.value.value.times(100) : answer.value.value;
      expect(scaled.isInteger()).toBe(rounds !== true);
      expect(text).not.toMatch(/undefined|NaN|\d\.\d{3}(?!59237)/);
    }
  });
  it('agree with plain arithmetic on the figures of their text', () => {
    const numbers = (text: string): readonly number[] =>
      [...text.matchAll(/[\d,]*\d(?:\.\d+)?/g)].map(([n]) => Number(n.replaceAll(',', '')));
    const own: Partial<Record<ExerciseTopic, (n: readonly number[]) => number>> = {
      payload: ([gvwr = 0, , curb = 0]) => gvwr - curb,
      'tongue share': ([tongue = 0, axles = 0]) => tongue / (tongue + axles),
      'axle load': ([gross = 0, share = 0, count = 1]) => (gross * (1 - share / 100)) / count,
      'tire reserve': ([load = 0, , dual = 0]) => 4 * dual - load,
      'weakest part': ([beam = 0, springs = 0, wheel = 0, tire = 0]) => Math.min(beam, springs, 2 * wheel, 2 * tire),
      'tongue by place': ([own0 = 0, lever = 1, machine = 0, front = 0, behind = 0]) =>
        own0 + machine * (1 - (front + behind) / lever),
      jack: ([tongue = 0, lever = 0, jack = 0]) => (tongue * lever) / (lever - jack),
      'gross from tickets': ([s = 0, d = 0, t = 0, s0 = 0, d0 = 0]) => s + d + t - s0 - d0,
      'tongue from tickets': ([s = 0, d = 0, , s0 = 0, d0 = 0]) => s + d - s0 - d0,
      'capacity in pounds': ([kilograms = 0]) => kilograms / 0.45359237,
      'machine in pounds': ([kilograms = 0]) => kilograms / 0.45359237,
    };
    for (const { topic, text, answer } of forty)
      expect(own[topic]?.(numbers(text))).toBeCloseTo(answer.value.value.toNumber(), 6);
  });
});

interface Way {
  readonly decimals: number;
  readonly unit: 'lb' | 'kg' | 't' | 'bare' | 'lbs' | 'pounds';
  readonly grouped: boolean;
}

/** A share as a percentage or as a plain number. */
const shareIn = (value: number, { decimals, unit }: Way): string =>
  unit === 'bare' ? value.toFixed(Math.max(decimals, 2)) : `${(value * 100).toFixed(decimals)} %`;

/** A weight in some unit, to so many decimals, with or without commas. */
function weightIn(exact: Quantity<'lb'>, { decimals, unit, grouped }: Way, roundedAs: Exercise['roundedAs']): string {
  const metric = unit === 'kg' || unit === 't';
  const value = (metric ? convert(exact, unit) : exact).value.toNumber();
  const digits = rounded(value, unit === 't' ? decimals + 3 : decimals, roundedAs);
  const written = grouped && !digits.includes('.') ? showNumber(lb(digits).value) : digits;
  return unit === 'bare' ? written : `${written} ${unit}`;
}

describe('a right answer', () => {
  it('is right in every way of writing it: ten thousand of them', () => {
    let asked = 0;
    const ways = fc.record<Way>({
      decimals: fc.integer({ min: 0, max: 6 }),
      unit: fc.constantFrom('lb', 'kg', 't', 'bare', 'lbs', 'pounds'),
      grouped: fc.boolean(),
    });
    fc.assert(
      fc.property(fc.constantFrom(...topics), fc.integer({ min: 0, max: 5000 }), ways, (topic, seed, way) => {
        const problem = exercise(topic, seed);
        const exact = problem.answer.value as Quantity<'lb'>;
        const isShare = problem.answer.value.unit === 'ratio';
        const text = isShare ? shareIn(exact.value.toNumber(), way) : weightIn(exact, way, problem.roundedAs);
        asked += 1;
        expect(gradeAnswer(problem, text), `${problem.text} -> ${text}, exactly ${show(exact)}`).toMatchObject({
          right: true,
        });
      }),
      { numRuns: 10_000, seed: 2026 },
    );
    expect(asked).toBe(10_000);
  }, 60_000);
});

describe('a wrong answer', () => {
  const named = new Map<MistakeTag, number>();
  const count = (tag: MistakeTag): void => void named.set(tag, (named.get(tag) ?? 0) + 1);
  it('of a known mistake is told that mistake, exact or rounded, in forty problems of each kind', () => {
    for (const problem of forty)
      for (const { tag, figure, says } of problem.mistakes) {
        const { unit, value } = figure.value;
        const texts =
          unit === 'ratio' ? [`${value.times(100).toFixed(1)} %`] : [show(figure.value), `${value.toFixed(0)} lb`];
        for (const text of texts)
          expect(gradeAnswer(problem, text), `${problem.text} -> ${text}`).toEqual({
            right: false,
            mistake: tag,
            says,
          });
        count(tag);
      }
  });
  it('rounded to the side that does not hold is told so', () => {
    for (const problem of forty.filter(({ rounds }) => rounds === true)) {
      const exact = problem.answer.value.value;
      const wrong = problem.roundedAs === 'capacity' ? exact.ceil() : exact.floor();
      const tag = problem.roundedAs === 'capacity' ? 'CapacityRoundedUp' : 'LoadRoundedDown';
      expect(gradeAnswer(problem, `${wrong.toFixed()} lb`)).toMatchObject({ right: false, mistake: tag });
      count(tag);
    }
  });
  it('in the wrong unit of weight is told so, and one that cannot be read as well', () => {
    for (const problem of forty.filter(({ answer, rounds }) => answer.value.unit === 'lb' && rounds !== true)) {
      const exact = problem.answer.value as Quantity<'lb'>;
      expect(gradeAnswer(problem, `${exact.value.toFixed()} kg`)).toMatchObject({
        right: false,
        mistake: 'PoundsForKilograms',
      });
      expect(gradeAnswer(problem, 'a lot').says).toMatch(/could not be read/);
    }
  });
  it('without a name is wrong, and is not told a mistake', () => {
    const problem = exercise('payload', 5);
    const wrong = problem.answer.value.value.plus(137).toFixed();
    expect(gradeAnswer(problem, `${wrong} lb`)).toEqual({
      right: false,
      says: expect.stringMatching(/no mistake that is known/),
    });
  });
  it('has at least 25 names, each met in forty problems', () => {
    expect(named.size).toBeGreaterThanOrEqual(25);
    for (const [tag, times] of named) expect(times, tag).toBeGreaterThanOrEqual(40);
  });
});
