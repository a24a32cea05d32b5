/** Every proposal puts its rig right, and no smaller change of the same lever does. */

import fc from 'fast-check';
import { isRight } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { assessJson } from '../../src/assessment/index.js';
import { mostAssessments, type Remedies } from '../../src/choose/index.js';
import { isWithin } from '../../src/choose/verdict.js';
import { remediesText } from '../../src/print/index.js';
import { changed as changedAll } from '../../src/study/index.js';
import { leftOf, rightOf } from '../helpers/either.js';
import { changed, tiltDeck } from '../helpers/specs.js';
import { remedies } from '../helpers/untyped.js';

/** `LONG=1` asks 1,000 failing rigs, and looks for smaller changes on 100. */
const [rigs, searched] = process.env.LONG === undefined ? [8, 2] : [1400, 100];

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

const all = ({ single, together }: Remedies) => [...single, ...together];

describe('remedies of failing rigs', () => {
  it('puts every rig right that it has a proposal for, within its count of assessments', () => {
    const counts = { failing: 0, answered: 0, proposals: 0, pairs: 0 };
    for (const spec of fc.sample(rig, { numRuns: rigs, seed: 31 })) {
      const found = rightOf(remedies(spec));
      expect(found.assessed).toBeLessThanOrEqual(mostAssessments);
      if (found.isWithin) continue;
      counts.failing += 1;
      const alone = assessJson(changedAll(spec, found.anyhowChanges));
      const settled = isRight(alone) && isWithin(alone.right);
      if (settled || all(found).length > 0) counts.answered += 1;
      for (const { changes } of all(found)) {
        expect(isWithin(rightOf(assessJson(changedAll(spec, changes)))), JSON.stringify(changes)).toBe(true);
        expect(Object.keys(changes).filter((path) => /gvwr|gawr|trailerRating|tongueRating/i.test(path))).toEqual([]);
      }
      counts.proposals += found.single.length;
      counts.pairs += found.together.length;
    }
    expect(counts.answered / counts.failing).toBeGreaterThan(0.7);
    expect(counts.proposals).toBeGreaterThan(rigs / 8);
    expect(counts.pairs).toBeGreaterThan(0);
  }, 7_200_000);

  it('finds no smaller move or unloading on the grid of its steps', () => {
    let asked = 0;
    for (const spec of fc.sample(rig, { numRuns: searched * 10, seed: 32 })) {
      if (asked >= searched) break;
      const { single, anyhowChanges } = rightOf(remedies(spec));
      for (const { changes } of single)
        for (const [path, unit, step] of [
          ['cargo.0.front', 'in', 0.25],
          ['cargo.0.weight', 'lb', 10],
        ] as const) {
          const to = (changes[path] as { readonly text: string } | undefined)?.text;
          if (to === undefined || Object.keys(changes).length > 1 + Object.keys(anyhowChanges).length) continue;
          const now = Number.parseFloat(
            (spec as { cargo: [Record<string, string>] }).cargo[0][path.slice(8)] as string,
          );
          const steps = Math.round(Math.abs(Number.parseFloat(to) - now) / step);
          const sides = path === 'cargo.0.front' ? [1, -1] : [-1];
          for (let k = 1; k < steps; k += process.env.LONG === undefined ? Math.ceil(steps / 8) : 1)
            for (const side of sides) {
              const text = `${now + side * k * step} ${unit}`;
              const there = assessJson(changedAll(spec, { ...anyhowChanges, [path]: text }));
              const deck = path !== 'cargo.0.front' || (now + side * k * step >= 62 && now + side * k * step <= 134);
              expect(deck && isRight(there) && isWithin(there.right), `${path} ${text}, found ${to}`).toBe(false);
            }
          asked += 1;
        }
    }
    expect(asked).toBeGreaterThanOrEqual(searched);
  }, 7_200_000);
});

describe('remedies of the example', () => {
  const legs = 'trailer.rearLegs';
  it('asks for legs under the tail, and for nothing else', () => {
    const { anyhow, single, together, assessed } = rightOf(remedies(tiltDeck()));
    expect(anyhow.map(({ says }) => says)).toEqual([
      'set legs under the tail before loading, rated for at least 7,950 lb together',
    ]);
    expect([single, together, assessed]).toEqual([[], [], 1]);
  });
  it('says nothing of a rig that is within', () => {
    expect(rightOf(remedies(changed(tiltDeck(), legs, '8,000 lb')))).toMatchObject({ isWithin: true, assessed: 0 });
  });
  it('moves a machine that stands too far forward, and says who does it', () => {
    const { single } = rightOf(remedies(changed(changed(tiltDeck(), legs, '8,000 lb'), 'cargo.0.front', '100 in')));
    expect(single[0]?.steps).toEqual([
      { who: 'driver', says: 'move excavator 19.75 in rearward: its front face 119.75 in behind the coupler' },
    ]);
    // By hand: tongue = 520 + 9,000 (204 - front - 60) / 204 <= 1,600 gives front >= 119.52 in.
    expect(204 - 60 - (1080 * 204) / 9000).toBeCloseTo(119.52, 2);
  });
  it('does not move a piece over another', () => {
    const bucket = { name: 'bucket', weight: '600 lb', front: '90 in', balancePoint: '18 in', length: '36 in' };
    const spec = changedAll(changed(tiltDeck(), legs, '9,000 lb'), { 'cargo.1': bucket, 'cargo.0.front': '132 in' });
    for (const { changes } of all(rightOf(remedies(spec)))) {
      const front = (changes['cargo.0.front'] as { readonly text: string } | undefined)?.text ?? '132 in';
      const its = (changes['cargo.1.front'] as { readonly text: string } | undefined)?.text ?? '90 in';
      expect(Number.parseFloat(its) + 36).toBeLessThanOrEqual(Number.parseFloat(front));
    }
  });
  it('reads a part off its load, and never touches a label', () => {
    const weak = changedAll(changed(tiltDeck(), legs, '8,000 lb'), {
      'trailer.coupler.tongue': '1,000 lb',
      'trailer.coupler.gross': '10,000 lb',
    });
    const { single } = rightOf(remedies(weak));
    expect(single.map(({ steps }) => steps[0]?.says)).toContain(
      'fit another coupler rated for at least 14,000 lb gross and 1,500 lb tongue',
    );
  });
  it('prints at most three', () => {
    const text = remediesText(rightOf(remedies(changed(tiltDeck(), 'cargo.0.front', '100 in'))));
    expect(text).toContain('anyhow (driver): set legs under the tail');
    expect(text).toContain('driver: move excavator 19.75 in rearward');
    expect(text.split('\n').filter((line) => line.length > 80)).toEqual([]);
  });
  it('refuses what cannot be read', () => expect(leftOf(remedies({ trailer: {} })).tag).toBe('UndecodableSpec'));
});
