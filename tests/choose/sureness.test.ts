/** Nothing that is called sure may be contradicted by a rig inside the tolerances; what is called a range is one. */
import fc from 'fast-check';
import { isLeft, isRight } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { type Assessment, assessJson, assessSpec } from '../../src/assessment/index.js';
import { type Sureness, sureness, type Unsure } from '../../src/choose/index.js';
import { questionsOf } from '../../src/choose/sureness/asked.js';
import { withFigures } from '../../src/choose/with-figures.js';
import { surenessText } from '../../src/print/index.js';
import { figureWith } from '../../src/trace/index.js';
import { Decimal } from '../../src/units/internal.js';
import { leftOf, rightOf } from '../helpers/either.js';
import { changed, tiltDeck } from '../helpers/specs.js';
import { spec as randomSpec } from '../study/random-specs.js';

/** `LONG=1` samples 10^5 rigs. */
const [specs, rigsEach] = process.env.LONG === undefined ? [60, 12] : [2500, 40];

/** A rig inside the tolerances: each input at an end, where it stands, or anywhere between. */
const rigOf = (inputs: readonly Unsure[]): fc.Arbitrary<ReadonlyMap<string, Decimal>> =>
  fc
    .tuple(
      ...inputs.map(({ between: { low, high }, leaf }) =>
        fc.oneof(
          fc.constantFrom(low, high),
          fc.constant(leaf.value.value.toNumber()),
          fc.integer({ min: 0, max: 1000 }).map((n) => low + ((high - low) * n) / 1000),
        ),
      ),
    )
    .map((figures) => new Map(inputs.map(({ path }, i) => [path, new Decimal(figures[i] as number)])));

/** What a rig says of each question: its reserve. */
const reservesOf = (rig: Assessment): ReadonlyMap<string, number> =>
  new Map(questionsOf(rig).map(({ id, figure }) => [id, figure.value.value.toNumber()]));

/** Everything in an answer that a rig contradicts. */
function contradictions({ checks }: Sureness, rig: Assessment): readonly string[] {
  const found = reservesOf(rig);
  return checks.flatMap(({ id, sure, least, most }) => {
    const reserve = found.get(id);
    if (reserve === undefined) return [];
    const wrong =
      (sure === 'within' && reserve < 0) ||
      (sure === 'over' && reserve >= 0) ||
      reserve < least.value.toNumber() - 1e-5 ||
      reserve > most.value.toNumber() + 1e-5;
    return wrong ? [`${id} ${sure} ${least.value} ${most.value}: ${reserve}`] : [];
  });
}

const answers = (seed: number): readonly Assessment[] =>
  fc.sample(randomSpec, { numRuns: specs, seed }).flatMap((spec) => {
    const assessed = assessJson(spec);
    return isRight(assessed) ? [assessed.right] : [];
  });

describe('sureness over random rigs', () => {
  it('is never contradicted', () => {
    const counts = { within: 0, 'not sure': 0, over: 0, rigs: 0 };
    for (const [n, assessment] of answers(21).entries()) {
      const sure = rightOf(sureness(assessment));
      if (!sure.complete) continue;
      for (const check of sure.checks) counts[check.sure] += 1;
      for (const figures of fc.sample(rigOf(sure.inputs), { numRuns: rigsEach, seed: n })) {
        const rig = assessSpec(withFigures(assessment.spec, figures));
        if (isLeft(rig)) continue;
        counts.rigs += 1;
        expect(contradictions(sure, rig.right), JSON.stringify([...figures])).toEqual([]);
      }
    }
    expect(Math.min(counts.within, counts['not sure'], counts.over)).toBeGreaterThan(10);
    expect(counts.rigs).toBeGreaterThan(specs * rigsEach * 0.5);
  });

  it('says no wider a range than the corners have, where the answer goes one way with every input', () => {
    let asked = 0;
    for (const assessment of answers(22)) {
      const { checks, inputs } = rightOf(sureness(assessment));
      const figureOf = new Map(questionsOf(assessment).map(({ id, figure }) => [id, figure]));
      for (const { id, least, most, endsReached, reserve } of checks) {
        const figure = figureOf.get(id);
        if (!endsReached || figure === undefined) continue;
        const at = (changes: readonly (readonly [string, number])[]): number =>
          figureWith(figure.why, new Map(changes.map(([path, value]) => [path, new Decimal(value)]))).toNumber();
        const now = reserve.value.toNumber();
        // Each input by itself tells on which side it stands at the least; then all together.
        const ends = inputs.map(({ path, between: { low, high } }) => {
          const [a, b] = [at([[path, low]]), at([[path, high]])];
          return { path, toLeast: a <= b ? low : high, toMost: a <= b ? high : low };
        });
        const [low, high] = [
          at(ends.map(({ path, toLeast }) => [path, toLeast])),
          at(ends.map(({ path, toMost }) => [path, toMost])),
        ];
        const width = most.value.toNumber() - least.value.toNumber();
        expect(low).toBeLessThanOrEqual(now);
        expect(width, id).toBeLessThanOrEqual(1.1 * (high - low) + 1e-4);
        asked += 1;
      }
    }
    expect(asked).toBeGreaterThan(specs);
  });
});

describe('sureness of the example', () => {
  const assessment = rightOf(assessJson(tiltDeck()));
  it('is not sure of one check: the tongue on the ball mount', () => {
    const { sure, checks, weighNext } = rightOf(sureness(assessment));
    expect(sure).toBe('not sure');
    expect(checks.filter((check) => check.sure !== 'within').map(({ id }) => id)).toEqual(['tow/ball-mount/tongue']);
    expect(weighNext[0]?.path).toBe('cargo.0.balancePoint');
  });
  it('gives the range by hand: 3 % of the machine, an inch at each place, weighed figures as they stand', () => {
    const { checks } = rightOf(
      sureness(assessment, {
        byBasis: [{ basis: 'scale', dimension: 'mass', amount: '0 lb', source: 'as weighed' }],
        byPath: { 'cargo.0.balancePoint': '1 in' },
      }),
    );
    const one = checks.find(({ id }) => id === 'tow/ball-mount/tongue')!;
    // tongue = 520 + W (x - a) / x, x the middle of the axles, a the place of the balance point
    const tongue = (weight: number, axles: number, place: number): number => 520 + (weight * (axles - place)) / axles;
    expect(one.least.value.toNumber()).toBeCloseTo(1600 - tongue(9270, 205, 180), 4);
    expect(one.most.value.toNumber()).toBeCloseTo(1600 - tongue(8730, 203, 184), 4);
  });
  it('becomes sure when the places are measured', () => {
    const places = ['cargo.0.front', 'cargo.0.balancePoint', 'trailer.axles.0.at', 'trailer.axles.1.at'];
    const measured = Object.fromEntries(places.map((path) => [path, '0.25 in']));
    const better = sureness(assessment, { byPath: { ...measured, 'cargo.0.weight': '1 %' } });
    expect(rightOf(better).sure).toBe('within');
  });
  it('is over for sure when it is far over', () => {
    const heavy = rightOf(assessJson(changed(tiltDeck(), 'cargo.0.weight', '14,000 lb')));
    expect(rightOf(sureness(heavy)).sure).toBe('over');
  });
  it('takes an exact tie as within', () => {
    const tie = rightOf(assessJson(changed(tiltDeck(), 'trailer.gvwr', '12,650 lb')));
    const exactly = { byBasis: [], byPath: {} };
    const labels = rightOf(sureness(tie, exactly)).inputs.map(({ path }) => [path, '0 %'] as const);
    const { checks } = rightOf(sureness(tie, { byPath: Object.fromEntries(labels) }));
    expect(checks.find(({ id }) => id === 'gvwr')).toMatchObject({ sure: 'within' });
    const lighterOnly = rightOf(sureness(tie, { byPath: { ...Object.fromEntries(labels), 'trailer.gvwr': '1 lb' } }));
    expect(lighterOnly.checks.find(({ id }) => id === 'gvwr')?.sure).toBe('not sure');
  });
  it('prints what is not sure and what to weigh', () => {
    const text = surenessText(rightOf(sureness(assessment)));
    expect(text).toContain('not sure: tongue against ball mount tongue, reserve');
    expect(text).toContain('weigh or measure next: cargo.0.balancePoint (now good to 2 in)');
    expect(text.split('\n').filter((line) => line.length > 80)).toEqual([]);
  });
});

describe('tolerances that cannot be', () => {
  const assessment = rightOf(assessJson(tiltDeck()));
  it.each([
    ['-1 %', 'a share'],
    ['-2 in', 'a share'],
    ['5 lb', 'a share'],
    ['100 %', 'a share'],
    ['some', 'a share'],
  ])('%s for a place', (amount) => {
    const error = leftOf(sureness(assessment, { byPath: { 'cargo.0.front': amount } }));
    expect(error).toMatchObject({ tag: 'UnusableFigure', path: 'tolerances.byPath.cargo.0.front', found: amount });
  });
  it('for a figure that is not there', () => {
    const error = leftOf(sureness(assessment, { byPath: { 'cargo.0.wieght': '1 %' } }));
    expect(error).toMatchObject({ tag: 'NotInTheSpec', path: 'cargo.0.wieght' });
    expect(error.tag === 'NotInTheSpec' && error.nearest[0]).toBe('cargo.0.weight');
  });
});
