/** Whatever half a spec says for sure, the whole spec says too. */
import fc from 'fast-check';
import { isLeft } from 'fp-ts/lib/Either.js';
import { assessJson as assess } from '../../src/assessment/index.js';
import { boundsFrom } from '../../src/choose/index.js';
import { questionsOf } from '../../src/choose/sureness/asked.js';
import { changed, tiltDeck } from '../helpers/specs.js';
import { spec as randomSpec } from '../study/random-specs.js';
import type { Proof } from './proof.js';

/** Facts that somebody may not know. */
const removable = [
  'trailer.curb.tongue',
  'trailer.axles.0.at',
  'trailer.axles.1.at',
  'cargo.0.at',
  'cargo.0.front',
  'cargo.0.balancePoint',
  'tow.front',
  'tow.rear',
  'tow.wheelbase',
  'tow.overhang',
  'trailer.sharing',
];

const truck = tiltDeck().tow;
const rig = fc.oneof(
  randomSpec.map((spec) => ({ ...spec, tow: truck })),
  randomSpec,
  fc
    .record({ weight: fc.integer({ min: 40, max: 110 }), front: fc.integer({ min: 62, max: 134 }) })
    .map(({ weight, front }) =>
      changed(changed(tiltDeck(), 'cargo.0.weight', `${weight * 100} lb`), 'cargo.0.front', `${front} in`),
    ),
);

const isThere = (spec: unknown, path: string): boolean =>
  path.split('.').reduce<unknown>((part, key) => (part as Record<string, unknown> | undefined)?.[key], spec) !==
  undefined;

interface Found {
  readonly definite: number;
  readonly depends: number;
  readonly against: readonly string[];
}

/** What is said without some facts, beside what the whole spec says; undefined when one of the two is refused. */
function heldBeside(spec: unknown, gone: readonly string[]): Found | undefined {
  const bounds = boundsFrom(gone.reduce<unknown>((left, path) => changed(left, path, undefined), spec));
  const whole = assess(spec);
  if (gone.length === 0 || isLeft(whole) || isLeft(bounds)) return undefined;
  const reserves = new Map(questionsOf(whole.right).map(({ id, figure }) => [id, figure.value.value.toNumber()]));
  const asked = bounds.right.checks.filter(({ id }) => reserves.has(id));
  const definite = asked.filter(({ answer }) => answer !== 'depends');
  const wrong = definite.filter(({ id, answer, least, most }) => {
    const reserve = reserves.get(id) as number;
    const outside = reserve < least.value.toNumber() - 1e-4 || reserve > most.value.toNumber() + 1e-4;
    return outside || (reserve >= 0 ? 'within' : 'over') !== answer;
  });
  const told = JSON.stringify({ gone, spec });
  return {
    definite: definite.length,
    depends: asked.length - definite.length,
    against: wrong.map(({ id, answer }) => `${id}: ${answer}, and the whole says ${reserves.get(id)}: ${told}`),
  };
}

/** Rigs are drawn until `rigs` of them have been answered whole and by half. */
export function proveBounds(rigs: number, seed: number): Proof {
  const figures = { rigs: 0, definite: 0, depends: 0 };
  const against: string[] = [];
  const drawn = fc.tuple(rig, fc.subarray(removable, { minLength: 1, maxLength: 4 }));
  for (let round = 0; figures.rigs < rigs; round += 1)
    for (const [spec, paths] of fc.sample(drawn, { numRuns: 50, seed: seed + 1000 * round })) {
      if (figures.rigs >= rigs) break;
      const found = heldBeside(
        spec,
        paths.filter((path) => isThere(spec, path)),
      );
      if (found === undefined) continue;
      figures.rigs += 1;
      figures.definite += found.definite;
      figures.depends += found.depends;
      against.push(...found.against);
    }
  return { figures, against };
}
