/** One factor at a time: bars by hand, and the rows that assess confirms. */

import { describe, expect, it } from 'vitest';
import { alternatives, levels, range, type Study } from '../../../src/study/index.js';
import { rightOf } from '../../helpers/either.js';
import { oneAtATime, type StudyPlan, study } from '../../helpers/untyped.js';
import { tiltDeck, wrongRows } from '../compared.js';

const made = (vary: StudyPlan['vary'], design: StudyPlan['design'], more: Partial<StudyPlan> = {}): Study =>
  rightOf(study({ base: tiltDeck, vary, design, ...more }));

describe('one factor at a time', () => {
  const vary = {
    'cargo.0.front': levels('110 in', '130 in'),
    'cargo.0.weight': range('8,550 lb', '9,450 lb', 3),
    coupler: alternatives({ other: { 'trailer.coupler.tongue': '2,500 lb' } }),
  };
  it('gives bars, longest first, by hand', () => {
    const { base, bars } = rightOf(oneAtATime({ base: tiltDeck, vary }, 'tongue load'));
    // Tongue: 520 + 9000 (1 - 182 / 204) at the spec's own values; 20 in of travel move 9000 x 20 / 204.
    expect(base).toBeCloseTo(520 + 9000 * (1 - 182 / 204), 9);
    expect(bars.map(({ factor }) => factor)).toEqual(['cargo.0.front', 'cargo.0.weight', 'coupler']);
    expect(bars[0]?.swing).toBeCloseTo((9000 * 20) / 204, 9);
    expect(bars[1]?.swing).toBeCloseTo(900 * (1 - 182 / 204), 9);
    expect(bars[2]?.swing).toBe(0);
  });
  it('visits the spec as it stands and each level, as assess does', () => {
    const s = made(vary, { kind: 'one at a time' });
    expect(s.count).toBe(1 + 1 + 2 + 3);
    expect(wrongRows(s).wrong).toEqual([]);
    expect([...s.rows()][0]).toMatchObject({
      choices: { coupler: 'as specified' },
      inputs: { 'cargo.0.front': 122, 'cargo.0.weight': 9000 },
    });
  });
  it('says which figures there are when asked for another', () => {
    expect(oneAtATime({ base: tiltDeck, vary }, 'tong load')).toMatchObject({
      _tag: 'Left',
      left: { tag: 'UnknownPath', nearest: expect.arrayContaining(['tongue load']) as unknown },
    });
  });
});
