/** More load never turns over into within; more capacity never turns within into over. */
import { describe, expect, it } from 'vitest';
import type { Assessment } from '../../../src/assessment/index.js';
import type { Derived } from '../../../src/trace/index.js';
import { answerTo, checksById } from '../../helpers/facts.js';
import { fewOf, lawSeeds } from '../../helpers/law-seeds.js';
import { chanceOf } from '../../helpers/random/chance.js';
import { digitsAndUnit, figuresIn } from '../../helpers/random/leaves.js';
import { type JsonSpec, randomSpec } from '../../helpers/random-specs.js';
import { changed } from '../../helpers/specs.js';

/** A figure times so many percent, in its own unit. */
function scaled(spec: JsonSpec, path: string, value: unknown, percent: number): JsonSpec {
  const { digits, unit } = digitsAndUnit(value);
  return changed(spec, path, `${(Number(digits) * percent) / 100} ${unit}`);
}

/** A figure of the spec whose path fits, made larger. */
function enlarged(seed: number, paths: RegExp): { readonly path: string; readonly spec: JsonSpec } | undefined {
  const spec = randomSpec(seed);
  const chance = chanceOf(seed + 0x10ad);
  const [first, ...more] = figuresIn(spec).filter(({ path }) => paths.test(path));
  if (first === undefined) return undefined;
  const { path, value } = chance.pick([first, ...more]);
  return { path, spec: scaled(spec, path, value, chance.pick([101, 105, 120, 150])) };
}

/** Checks whose load is no part of what a piece of cargo presses down: it may lighten the front axle. */
const mayLighten = /^tow\/front-gawr/;

/** Whether every piece stands between the coupler and the axles, where it presses on both. */
function standsBetween({ weights, runningGear: { group } }: Assessment): boolean {
  const at = group?.at.value.value;
  if (at === undefined) return false;
  return weights.cargo.every((piece) => {
    if (piece === undefined) return false;
    const place = (piece.at as Derived<'in'>).value.value;
    return !place.isNegative() && !place.gt(at);
  });
}

describe('more load', () => {
  it('never turns over into within', () => {
    const broken: string[] = [];
    let asked = 0;
    for (const seed of lawSeeds(150)) {
      const more = enlarged(seed, /^cargo\.\d+\.weight$/);
      if (more === undefined) continue;
      const [one, other] = [answerTo(randomSpec(seed)), answerTo(more.spec)];
      if (one === undefined || other === undefined || !standsBetween(one)) continue;
      asked += 1;
      const now = checksById(other);
      for (const [id, { verdict }] of checksById(one))
        if (verdict === 'over' && now.get(id)?.verdict !== 'over' && !mayLighten.test(id))
          broken.push(`seed ${seed}: more at ${more.path}, and ${id} is ${now.get(id)?.verdict ?? 'not asked'}`);
    }
    expect(fewOf(broken)).toEqual([]);
    expect(asked).toBeGreaterThan(0);
  });
});

/** Ratings of parts; the label is none, as the parts are asked to bear it. */
const capacities =
  /^(trailer\.(coupler\.(gross|tongue)|chains\.each|jack\.rating|ramps\.rating|axles\.\d+\.(beam|springs|hubs|wheels\.each|tires\.molded\.(single|dual)|tires\.pressure))|tow\.(gvwr|frontGawr|rearGawr|gcwr|trailerRating|tongueRating|(receiver|ballMount|ball)\.(gross|tongue)|placard\.limit))$/;

describe('more capacity', () => {
  it('never turns within into over', () => {
    const broken: string[] = [];
    for (const seed of lawSeeds(200)) {
      const more = enlarged(seed, capacities);
      if (more === undefined) continue;
      const [one, other] = [answerTo(randomSpec(seed)), answerTo(more.spec)];
      if (one === undefined || other === undefined) continue;
      const before = checksById(one);
      for (const [id, { verdict }] of checksById(other))
        if (verdict === 'over' && before.get(id)?.verdict !== 'over')
          broken.push(`seed ${seed}: more at ${more.path}, and ${id} was ${before.get(id)?.verdict ?? 'not asked'}`);
    }
    expect(fewOf(broken)).toEqual([]);
  });
});
