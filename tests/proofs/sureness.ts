/** Nothing that is called sure is contradicted by a rig inside the tolerances, and no range is wider than the rigs make it. */
import fc from 'fast-check';
import { isLeft } from 'fp-ts/lib/Either.js';
import { type Assessment, assessJson, assessSpec } from '../../src/assessment/index.js';
import { type Sureness, sureness, type Unsure } from '../../src/choose/index.js';
import { questionsOf } from '../../src/choose/sureness/asked.js';
import { withFigures } from '../../src/choose/with-figures.js';
import { type Derived, figureWith } from '../../src/trace/index.js';
import type { Unit } from '../../src/units/index.js';
import { Decimal } from '../../src/units/internal.js';
import { rightOf } from '../helpers/either.js';
import { spec as randomSpec } from '../study/random-specs.js';
import type { Proof } from './proof.js';

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

/** Everything in an answer that a rig contradicts. */
function contradictions({ checks }: Sureness, rig: Assessment): readonly string[] {
  const found = new Map(questionsOf(rig).map(({ id, figure }) => [id, figure.value.value.toNumber()]));
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

/** The least and the most of a figure at the corners, where it goes one way with every input. */
function cornersOf({ why }: Derived<Unit>, inputs: readonly Unsure[]): readonly [least: number, most: number] {
  const at = (changes: readonly (readonly [string, number])[]): number =>
    figureWith(why, new Map(changes.map(([path, value]) => [path, new Decimal(value)]))).toNumber();
  // Each input by itself tells on which side it stands at the least; then all together.
  const ends = inputs.map(({ path, between: { low, high } }) => {
    const [a, b] = [at([[path, low]]), at([[path, high]])];
    return { path, toLeast: a <= b ? low : high, toMost: a <= b ? high : low };
  });
  return [at(ends.map(({ path, toLeast }) => [path, toLeast])), at(ends.map(({ path, toMost }) => [path, toMost]))];
}

/** Checks whose range is wider than 1.1 of what the corners reach. */
function tooWide(assessment: Assessment, { checks, inputs }: Sureness): { asked: number; wide: readonly string[] } {
  const figureOf = new Map(questionsOf(assessment).map(({ id, figure }) => [id, figure]));
  let asked = 0;
  const wide: string[] = [];
  for (const { id, least, most, endsReached } of checks) {
    const figure = figureOf.get(id);
    if (!endsReached || figure === undefined) continue;
    asked += 1;
    const [low, high] = cornersOf(figure, inputs);
    const width = most.value.minus(least.value).toNumber();
    if (width > 1.1 * (high - low) + 1e-4) wide.push(`${id}: ${width} where the corners reach ${high - low}`);
  }
  return { asked, wide };
}

/** Rigs are drawn, `rigsEach` from the tolerances of one spec, until `rigs` of them have been assessed. */
export function proveSureness(rigs: number, seed: number, rigsEach = 40): Proof {
  const figures = { specs: 0, rigs: 0, within: 0, 'not sure': 0, over: 0, 'widths compared': 0 };
  const against: string[] = [];
  for (let round = 0; figures.rigs < rigs; round += 1)
    for (const [n, spec] of fc.sample(randomSpec, { numRuns: 50, seed: seed + 1000 * round }).entries()) {
      const assessed = assessJson(spec);
      if (isLeft(assessed) || figures.rigs >= rigs) continue;
      const sure = rightOf(sureness(assessed.right));
      const { asked, wide } = tooWide(assessed.right, sure);
      figures['widths compared'] += asked;
      against.push(...wide.map((line) => `${line}: ${JSON.stringify(spec)}`));
      if (!sure.complete) continue;
      figures.specs += 1;
      for (const check of sure.checks) figures[check.sure] += 1;
      for (const changes of fc.sample(rigOf(sure.inputs), {
        numRuns: Math.min(rigsEach, rigs - figures.rigs),
        seed: n,
      })) {
        const rig = assessSpec(withFigures(assessed.right.spec, changes));
        if (isLeft(rig)) continue;
        figures.rigs += 1;
        against.push(
          ...contradictions(sure, rig.right).map((line) => `${line}: ${JSON.stringify([spec, ...changes])}`),
        );
      }
    }
  return { figures, against };
}
