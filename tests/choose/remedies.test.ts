/** Every proposal puts its rig right, and no smaller change of the same lever does. */

import { describe, expect, it } from 'vitest';
import type { Remedies } from '../../src/choose/index.js';
import { remediesText } from '../../src/print/index.js';
import { changed as changedAll } from '../../src/study/index.js';
import { leftOf, rightOf } from '../helpers/either.js';
import { changed, tiltDeck } from '../helpers/specs.js';
import { remedies } from '../helpers/untyped.js';
import { proveRemedies, proveSmallest } from '../proofs/remedies.js';

const all = ({ single, together }: Remedies) => [...single, ...together];

describe('remedies of failing rigs', () => {
  it('puts every rig right that it has a proposal for, within its count of assessments', () => {
    const { figures, against } = proveRemedies(8, 31);
    expect(against).toEqual([]);
    expect(figures['put right']).toBeGreaterThan(4);
    expect(figures['changes together']).toBeGreaterThan(0);
  }, 300_000);
  it(
    'finds no smaller move or unloading on the grid of its steps',
    () => expect(proveSmallest(2, 32, 8).against).toEqual([]),
    300_000,
  );
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
  it('asks for legs and for tiedowns together, each with what it settles', () => {
    const tiedown = { chain: { size: '3/8', grade: '70' }, runs: 'direct' };
    const { anyhow, anyhowChanges } = rightOf(remedies(changed(tiltDeck(), 'cargo.0.tiedowns', [tiedown, tiedown])));
    expect(anyhow.map(({ who, says }) => `${who}: ${says.split(',')[0]}`)).toEqual([
      'driver: set legs under the tail before loading',
      'yard: tie excavator down with 2 more of the last kind: 4 in all',
    ]);
    expect(Object.keys(anyhowChanges)).toEqual([legs, 'cargo.0.tiedowns']);
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
