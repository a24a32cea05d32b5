/** A piece inside its window breaks nothing that depends on its place; just outside a limit, that limit is broken. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { assessJson } from '../../../src/assessment/index.js';
import type { Decimal } from '../../../src/units/internal.js';
import { answerTo } from '../../helpers/facts.js';
import { fewOf, lawSeeds } from '../../helpers/law-seeds.js';
import { type JsonSpec, randomSpec } from '../../helpers/random-specs.js';

/** The spec with one piece at another place. */
function placedAt(spec: JsonSpec, index: number, at: Decimal): JsonSpec {
  const cargo = (spec['cargo'] as readonly Record<string, unknown>[]).map((piece, i) => {
    if (i !== index) return piece;
    const { front: _front, ...rest } = piece;
    const { balancePoint: _point, ...plain } = rest;
    return { ...plain, at: { value: at.toFixed(), unit: 'in' } };
  });
  return { ...spec, cargo };
}

/** Ratings that no place changes. */
const ofTheWhole = /^(whole|gvwr|gross)|gross|gcwr|chains|tow-rating|ramp|trailer-rating|brake/i;

describe('the window of a piece of a random rig', () => {
  const broken: string[] = [];
  let asked = 0;
  for (const seed of lawSeeds(120)) {
    const spec = randomSpec(seed);
    for (const { index, window } of answerTo(spec)?.placement.pieces ?? []) {
      if (window.empty) continue;
      const [from, to] = [window.lower.at.value.value, window.upper.at.value.value];
      for (const at of [from, from.plus(to).div(2), to]) {
        const found = assessJson(placedAt(spec, index, at));
        asked += 1;
        if (isLeft(found)) {
          broken.push(`seed ${seed}, piece ${index}: refused, ${found.left.tag}`);
          continue;
        }
        const { checks, uplift } = found.right;
        const wrong = [
          ...checks.filter(({ verdict, id }) => verdict === 'over' && !ofTheWhole.test(id)).map(({ id }) => id),
          ...uplift.lifted.map(({ what }) => `${what} lifts`),
        ];
        if (wrong.length > 0) broken.push(`seed ${seed}, piece ${index} at ${at.toFixed(3)}: ${wrong.join(', ')}`);
      }
    }
  }
  it('holds at both ends and in the middle', () => expect(fewOf(broken)).toEqual([]));
  it('was asked', () => expect(asked).toBeGreaterThan(0));
});
