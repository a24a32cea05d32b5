/** Figures that cannot all be so leave their own question open, ask attention at its keys, and touch nothing else in the answer. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { type Assessment, assessJson, type OpenQuestion } from '../../../src/assessment/index.js';
import { show } from '../../../src/units/index.js';
import { rightOf } from '../../helpers/either.js';
import { fewOf, lawSeeds } from '../../helpers/law-seeds.js';
import { type JsonSpec, randomSpec } from '../../helpers/random-specs.js';
import { changed } from '../../helpers/specs.js';
import { wildSpec } from '../../helpers/wild-specs.js';

const narrowed = ({ notChecked }: Assessment): readonly OpenQuestion[] =>
  notChecked.filter(({ missing }) => /figures that agree with each other|that is not above its weight/.test(missing));
const keysOf = ({ paths = [] }: { readonly paths?: readonly string[] }): string => paths.join();

/** Each check by its name, with load and limit. */
const checksOf = ({ checks, partChecks }: Assessment): ReadonlyMap<string, string> =>
  new Map(
    [...checks, ...partChecks].map(({ what, load, limit }) => [what, `${show(load.value)} on ${show(limit.value)}`]),
  );

/** The checks that say something else than they do of the spec without the keys of the question. */
function otherwise(spec: JsonSpec, answer: Assessment, { paths = [] }: OpenQuestion): readonly string[] {
  const without = assessJson(paths.reduce((so, path) => changed(so, path, undefined), spec));
  if (isLeft(without)) return [];
  const there = checksOf(without.right);
  return [...checksOf(answer)].flatMap(([what, told]) => {
    const other = there.get(what);
    return other === undefined || other === told ? [] : [`${what}: ${told}, without ${paths.join()} ${other}`];
  });
}

describe('figures of a spec that contradict each other once they are worked out', () => {
  const wrong: string[] = [];
  const asked = new Set<string>();
  for (const seed of lawSeeds(300)) {
    const spec = wildSpec(seed);
    const found = assessJson(spec);
    if (isLeft(found)) continue;
    for (const question of narrowed(found.right)) {
      asked.add(question.id);
      const { verdict, attention } = found.right;
      if (verdict === 'within') wrong.push(`seed ${seed}: within, with ${question.id} open`);
      if (!attention.some((note) => keysOf(note) === keysOf(question)))
        wrong.push(`seed ${seed}: nothing asks attention at ${keysOf(question)}`);
      wrong.push(...otherwise(spec, found.right, question).map((told) => `seed ${seed}: ${told}`));
    }
  }
  it('leave their question open, ask attention at its keys, are never within, and change no check', () =>
    expect(fewOf(wrong)).toEqual([]));
  it('were there', () => expect(asked.size).toBeGreaterThan(0));
});

describe('a dovetail that falls steeper than the ramps (trigonometry, by hand)', () => {
  // Seed 4244: asin(483 mm / 2,286 mm) = 12.198 deg, the dovetail falls at 14 deg; it used to refuse the whole spec.
  const spec = randomSpec(4244);
  const answer = rightOf(assessJson(spec));
  it('is told at its key with the angle of the ramps, and no edge is answered', () => {
    expect(narrowed(answer).map(({ id, paths }) => ({ id, paths }))).toEqual([
      { id: 'edges', paths: ['trailer.ramps.dovetail'] },
    ]);
    expect(answer.loading.edges).toBeUndefined();
    const told = answer.attention.find(({ tag }) => tag === 'OutsideItsRange');
    expect(told?.says).toBe(
      'hanging up at the edge of the deck: dovetail angle is 14 deg; it must be at least 0 deg and at most 12.19 deg',
    );
    expect(answer.verdict).not.toBe('within');
  });
  it('leaves the ramps answered', () =>
    expect(answer.loading.ramps?.angle.value.value.toNumber()).toBeCloseTo(
      (Math.asin(483 / 2286) * 180) / Math.PI,
      10,
    ));
  it('is answered as soon as it falls less', () => {
    const less = rightOf(assessJson(changed(spec, 'trailer.ramps.dovetail.angle', '12.1 deg')));
    expect(narrowed(less)).toEqual([]);
    expect(less.loading.edges).toBeDefined();
  });
});
