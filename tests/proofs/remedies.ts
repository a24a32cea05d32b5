/** Every proposal puts its rig right, and no smaller change of the same lever does. */
import fc from 'fast-check';
import { isRight } from 'fp-ts/lib/Either.js';
import { assessJson } from '../../src/assessment/index.js';
import { mostAssessments, type Remedies, type Remedy } from '../../src/choose/index.js';
import { isWithin } from '../../src/choose/verdict.js';
import { changed as changedAll } from '../../src/study/index.js';
import { rightOf } from '../helpers/either.js';
import { tiltDeck } from '../helpers/specs.js';
import { remedies } from '../helpers/untyped.js';
import type { Proof } from './proof.js';

const pounds = (least: number, most: number, step: number): fc.Arbitrary<string> =>
  fc.integer({ min: least / step, max: most / step }).map((n) => `${n * step} lb`);

/** The example trailer with another machine, place, pressures and hitch parts: most of these rigs are not within. */
const rig = fc
  .record({
    'cargo.0.weight': pounds(6000, 11000, 100),
    'cargo.0.front': fc.integer({ min: 62, max: 134 }).map((n) => `${n} in`),
    'trailer.axles.0.tires.pressure': fc.constantFrom('50 psi', '65 psi', '80 psi', '80 psi'),
    'tow.ballMount.tongue': pounds(900, 2000, 100),
    'tow.ball.gross': fc.constantFrom('12,000 lb', '14,000 lb', '16,000 lb', '16,000 lb'),
    'trailer.coupler.gross': fc.constantFrom('12,000 lb', '14,000 lb', '15,000 lb', '15,000 lb'),
    'trailer.coupler.tongue': pounds(1000, 2000, 250),
    'trailer.jack.rating': pounds(1500, 5000, 500),
    'trailer.ramps.rating': pounds(8000, 14000, 1000),
    'cargo.0.tiedowns': fc
      .integer({ min: 2, max: 4 })
      .map((n) => Array.from({ length: n }, () => ({ chain: { size: '3/8', grade: '70' }, runs: 'direct' }))),
    second: fc.constantFrom(undefined, undefined, {
      name: 'bucket',
      weight: '600 lb',
      front: '70 in',
      balancePoint: '18 in',
      length: '36 in',
    }),
  })
  .map(({ second, ...figures }): unknown => {
    const spec = changedAll(tiltDeck(), {
      ...figures,
      'trailer.axles.1.tires.pressure': figures['trailer.axles.0.tires.pressure'],
    });
    return second === undefined ? spec : changedAll(spec, { 'cargo.1': second });
  });

const label = /gvwr|gawr|trailerRating|tongueRating/i;

/** What speaks against the proposals for one rig: each is applied and assessed again. */
function faultsOf(spec: unknown, { single, together, assessed }: Remedies): readonly string[] {
  const told = JSON.stringify(spec);
  const wrong = [...single, ...together].flatMap(({ changes }): readonly string[] => [
    ...(isWithin(rightOf(assessJson(changedAll(spec, changes)))) ? [] : ['is not within']),
    ...(Object.keys(changes).some((path) => label.test(path)) ? ['changes a label'] : []),
  ]);
  return [...(assessed > mostAssessments ? [`${assessed} assessments`] : []), ...wrong].map(
    (line) => `${line}: ${told}`,
  );
}

function isPutRight(spec: unknown, { single, together, anyhowChanges }: Remedies): boolean {
  const anyhow = assessJson(changedAll(spec, anyhowChanges));
  return single.length + together.length > 0 || (isRight(anyhow) && isWithin(anyhow.right));
}

/** Random rigs, until `failing` of them that are not within have been asked. */
export function proveRemedies(failing: number, seed: number): Proof {
  const figures = { 'failing rigs': 0, 'put right': 0, 'single changes': 0, 'changes together': 0 };
  const against: string[] = [];
  for (let round = 0; figures['failing rigs'] < failing; round += 1)
    for (const spec of fc.sample(rig, { numRuns: 20, seed: seed + 1000 * round })) {
      const found = rightOf(remedies(spec));
      if (found.isWithin || figures['failing rigs'] >= failing) continue;
      figures['failing rigs'] += 1;
      if (isPutRight(spec, found)) figures['put right'] += 1;
      figures['single changes'] += found.single.length;
      figures['changes together'] += found.together.length;
      against.push(...faultsOf(spec, found));
    }
  return { figures, against };
}

/** The levers whose steps are looked over: where they stand, their unit, their step, and which ways they go. */
const levers = [
  { path: 'cargo.0.front', key: 'front', unit: 'in', step: 0.25, ways: [1, -1], least: 62, most: 134 },
  { path: 'cargo.0.weight', key: 'weight', unit: 'lb', step: 10, ways: [-1], least: 0, most: 1e6 },
] as const;
type Lever = (typeof levers)[number];

/** The figures nearer than the one proposed, on the grid of the lever: all of them, or some tens. */
function nearerThan({ key, step, ways, least, most }: Lever, spec: unknown, to: number, each: number): number[] {
  const [piece] = (spec as { readonly cargo: readonly [Record<string, string>] }).cargo;
  const now = Number.parseFloat((piece[key] as string).replace(',', ''));
  const steps = Math.round(Math.abs(to - now) / step);
  const stride = each === 1 ? 1 : Math.ceil(steps / each);
  const found: number[] = [];
  for (let k = 1; k < steps; k += stride) for (const way of ways) found.push(now + way * k * step);
  return found.filter((at) => at >= least && at <= most);
}

/** What a single change of one lever comes to; undefined when it is a change of another. */
function changeOf({ path }: Lever, { changes }: Remedy, { anyhowChanges }: Remedies): number | undefined {
  const to = (changes[path] as { readonly text: string } | undefined)?.text;
  return to === undefined || Object.keys(changes).length > 1 + Object.keys(anyhowChanges).length
    ? undefined
    : Number.parseFloat(to);
}

/** No smaller move or unloading, until `changes` of them have been looked over; `each` 1 asks every step of the grid. */
export function proveSmallest(changes: number, seed: number, each = 1): Proof {
  const figures = { 'changes looked over': 0, 'smaller ones tried': 0 };
  const against: string[] = [];
  const look = (spec: unknown, found: Remedies, remedy: Remedy, lever: Lever): void => {
    const to = changeOf(lever, remedy, found);
    if (to === undefined) return;
    figures['changes looked over'] += 1;
    for (const at of nearerThan(lever, spec, to, each)) {
      figures['smaller ones tried'] += 1;
      const there = assessJson(changedAll(spec, { ...found.anyhowChanges, [lever.path]: `${at} ${lever.unit}` }));
      if (isRight(there) && isWithin(there.right))
        against.push(`${lever.path} ${at}, found ${to}: ${JSON.stringify(spec)}`);
    }
  };
  for (let round = 0; figures['changes looked over'] < changes; round += 1)
    for (const spec of fc.sample(rig, { numRuns: 20, seed: seed + 1000 * round })) {
      if (figures['changes looked over'] >= changes) break;
      const found = rightOf(remedies(spec));
      for (const remedy of found.single) for (const lever of levers) look(spec, found, remedy, lever);
    }
  return { figures, against };
}
