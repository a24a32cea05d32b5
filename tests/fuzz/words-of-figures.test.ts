/** Figures in words for people are rounded as a report prints them: nobody reads thirty digits of what was worked out. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { assessJson } from '../../src/assessment/index.js';
import { describeError, type TrailerError } from '../../src/errors.js';
import { report } from '../../src/print/index.js';
import { inch, toWire, type WireQuantity } from '../../src/units/index.js';
import { hostileSpec } from '../helpers/hostile-specs.js';
import { fewOf, lawSeeds } from '../helpers/law-seeds.js';
import { type Chance, chanceOf } from '../helpers/random/chance.js';
import { digitsAndUnit, figuresIn } from '../helpers/random/leaves.js';
import { type JsonSpec, randomSpec } from '../helpers/random-specs.js';
import { changed } from '../helpers/specs.js';

/** Some figures written in metric units, rounded as people do: what is worked out of them in pounds and inches has no end. */
function partlyMetric(spec: JsonSpec, chance: Chance): JsonSpec {
  const metric = { lb: ['kg', 0.45359237], in: ['mm', 25.4], psi: ['kPa', 6.894757] } as const;
  return figuresIn(spec).reduce((so, { path, value }) => {
    const { digits, unit } = digitsAndUnit(value);
    const other = unit === 'lb' || unit === 'in' || unit === 'psi' ? metric[unit] : undefined;
    if (other === undefined || !chance.happens(50)) return so;
    return changed(so, path, `${Math.round(Number(digits) * other[1] * 10) / 10} ${other[0]}`);
  }, spec);
}

/** One to four figures that contradict the others. */
function contradictory(spec: JsonSpec, chance: Chance): JsonSpec {
  const [first, ...more] = figuresIn(spec);
  if (first === undefined) return spec;
  return Array.from({ length: chance.pick([1, 2, 4]) }).reduce<JsonSpec>((so) => {
    const { path, value } = chance.pick([first, ...more]);
    const { digits, unit } = digitsAndUnit(value);
    return changed(so, path, `${Number(digits) * chance.pick([0, -1, 0.001, 0.2, 1 / 3, 3, 20])} ${unit}`);
  }, spec);
}

/** Everything an answer or a refusal says in words. */
function wordsOf(spec: unknown): readonly string[] {
  const found = assessJson(spec);
  if (!isLeft(found)) {
    const { attention, notes, notChecked } = found.right;
    const told = [...attention, ...notes].map(({ says }) => says);
    return [...told, ...notChecked.map(({ what, missing }) => `${what}: ${missing}`), report(found.right)];
  }
  const problems = found.left.tag === 'UndecodableSpec' ? found.left.problems : [];
  return [describeError(found.left), ...problems.map(({ got, needed }) => `${got}; ${needed}`)];
}

/** What the person wrote, its digits without commas. */
function written(spec: unknown): string {
  try {
    const text = JSON.stringify(spec, (_, part: unknown) => (typeof part === 'bigint' ? String(part) : part));
    return String(text).replaceAll(',', '');
  } catch {
    return '';
  }
}

/** Every figure of a text, its digits without commas. */
const figuresOf = (words: string): readonly string[] =>
  [...words.matchAll(/\d[\d,]*(\.\d+)?/g)].map(([figure]) => figure.replaceAll(',', ''));

/**
 * Figures of more than seven digits, with more decimals than a report prints, that nobody wrote; but for one that two decimals
 * would make another figure of the text, as 25,999.996 lb beside a line at 26,000 lb.
 */
const tooLong = (spec: unknown): readonly string[] => {
  const own = written(spec);
  return wordsOf(spec).flatMap((words) => {
    const all = figuresOf(words);
    const beside = new Set(all.map(Number));
    return all.filter(
      (figure) =>
        /\.\d{3}/.test(figure) &&
        figure.replace(/^0*\.?0*|\./g, '').length > 7 &&
        !own.includes(figure) &&
        !beside.has(Number(Number(figure).toFixed(2))),
    );
  });
};

describe('the words of single errors whose figures were worked out', () => {
  const [more, less] = ['10.33333333333333333333333333333333', '10.33333333331'];
  const [lbs, inches] = ['lb', 'in'].map((unit) => [
    { value: more, unit },
    { value: less, unit },
  ]) as [[WireQuantity<'lb'>, WireQuantity<'lb'>], [WireQuantity<'in'>, WireQuantity<'in'>]];
  const [[heavy, light], [long, short]] = [lbs, inches];
  const errors: readonly TrailerError[] = [
    { chapter: 'trace', tag: 'OutsideItsRange', what: 'place', found: long, from: toWire(inch(2)), to: short },
    { chapter: 'trace', tag: 'OutsideItsRange', what: 'place', found: short, above: long },
    { chapter: 'load', tag: 'TongueAboveWeight', of: 'trailer', tongue: heavy, weight: light },
    { chapter: 'load', tag: 'RampTooShort', height: long, length: short },
    { chapter: 'load', tag: 'SectionNotForThisWeight', section: 'general', weight: heavy, most: light },
    { chapter: 'towing', tag: 'TongueAboveGross', tongue: heavy, gross: light },
    { chapter: 'towing', tag: 'JackBehindAxles', jackBehindBall: long, axlesAt: short },
    { chapter: 'towing', tag: 'ReadingBelowTare', reading: light, tare: heavy },
    { chapter: 'axles', tag: 'GawrAboveParts', of: 'axle 1', part: 'beam', gawr: heavy, bears: light },
  ];
  it.each(errors.map((error) => [error.tag, describeError(error)] as const))('%s: %s', (_, words) => {
    const figures = words.match(/\d+(\.\d+)?(?= (lb|in))/g) ?? [];
    expect(figures.filter((figure) => /\.\d{3}/.test(figure))).toEqual([]);
    expect(figures).toContain(/GAWR/.test(words) ? '11' : '10.34');
    expect(figures).toContain(/GAWR/.test(words) ? '10' : '10.33');
  });
});

describe('the words of a refusal, and those of an answer', () => {
  const wrong: string[] = [];
  const asked = { answered: 0, refused: 0 };
  for (const seed of lawSeeds(60)) {
    const chance = chanceOf(seed + 0x3a7);
    const metric = partlyMetric(randomSpec(seed), chance);
    for (const spec of [
      hostileSpec(seed),
      metric,
      contradictory(metric, chance),
      contradictory(randomSpec(seed), chance),
    ]) {
      asked[isLeft(assessJson(spec)) ? 'refused' : 'answered'] += 1;
      for (const figure of tooLong(spec)) wrong.push(`seed ${seed}: ${figure}`);
    }
  }
  it('have no figure longer than a report prints it, but for those that somebody wrote', () =>
    expect(fewOf(wrong)).toEqual([]));
  it('were read both ways', () => {
    expect(asked.answered).toBeGreaterThan(0);
    expect(asked.refused).toBeGreaterThan(0);
  });
});
