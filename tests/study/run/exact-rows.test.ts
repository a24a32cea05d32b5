/** Trailers of round numbers are exactly at their limits: those rows are decided with exact decimals, and none is wrong. */

import { describe, expect, it } from 'vitest';
import { alternatives, levels, range } from '../../../src/study/index.js';
import { rightOf } from '../../helpers/either.js';
import { type StudyPlan, study } from '../../helpers/untyped.js';
import { decidedExactly, tiltDeck, wrongRows } from '../compared.js';

const grid = (vary: StudyPlan['vary'], base: unknown = tiltDeck) =>
  rightOf(study({ base, vary, design: { kind: 'grid' } }));

/** A single tire axle at 200 in and cargo behind it: every load is a round figure, and many are the limit itself. */
const roundNumbers = {
  trailer: {
    hitch: 'ball',
    gvwr: '10,000 lb',
    curb: { weight: '2,500 lb', tongue: '500 lb' },
    coupler: { gross: '10,000 lb', tongue: '1,500 lb' },
    axles: [
      { at: '200 in', gawr: '5,000 lb', beam: '5,000 lb' },
      { at: '240 in', gawr: '5,000 lb', beam: '5,200 lb' },
    ],
    sharing: 'equalised',
  },
  cargo: [{ name: 'machine', weight: '7,500 lb', at: '176 in' }],
};

describe('rows that stand exactly on a limit', () => {
  it('gross on the label, in lb and in kg', () => {
    const made = grid({
      'cargo.0.weight': levels('10,349.999999 lb', '10,350 lb', '10,350.000001 lb', '10,350.0000000001 lb'),
    });
    expect([...made.rows()].map((row) => row.answered && row.verdict !== 'over')).toEqual([true, true, false, false]);
    expect(decidedExactly(made)).toBeGreaterThanOrEqual(3);
    expect(wrongRows(made).wrong).toEqual([]);
    const label = {
      ...tiltDeck,
      trailer: { ...tiltDeck.trailer, gvwr: '6,500 kg', curb: { weight: '1,500 kg', tongue: '200 kg' } },
      cargo: [{ ...tiltDeck.cargo[0], weight: '5,000 kg' }],
    };
    const metric = grid({ 'cargo.0.weight': levels('4,999.999999 kg', '5,000 kg', '5,000.000001 kg') }, label);
    expect(wrongRows(metric).wrong).toEqual([]);
    expect(
      [...metric.rows()].map((row) => row.answered && (row.figures['left: gross against GVWR'] as number) < 1e-9),
    ).toEqual([false, true, true]);
  });

  it('thousands of them over weights, places and ratings: all as assess says', () => {
    const made = grid(
      {
        'trailer.gvwr': range('9,000 lb', '10,500 lb', 4),
        'trailer.axles.0.gawr': levels('4,000 lb', '4,500 lb', '5,000 lb'),
        'trailer.coupler.tongue': levels('1,000 lb', '1,250 lb', '1,500 lb'),
        'cargo.0.weight': range('5,500 lb', '8,250 lb', 12),
        'cargo.0.at': levels('165 in', '176 in', '187 in', '198 in', '209 in', '220 in'),
      },
      roundNumbers,
    );
    const { compared, answered, wrong } = wrongRows(made);
    expect({ compared, wrong: wrong.slice(0, 5) }).toEqual({ compared: 2592, wrong: [] });
    expect(answered).toBe(2592);
    expect(decidedExactly(made)).toBeGreaterThan(300);
  });

  it('counts each row once, however many of its limits are near', () => {
    const made = grid({ 'cargo.0.weight': levels('7,500 lb') }, roundNumbers);
    expect(decidedExactly(made)).toBeLessThanOrEqual(made.count);
    expect(wrongRows(made).wrong).toEqual([]);
  });
});

describe('checks that tie', () => {
  it('by structure: equal checks of equal figures are named together', () => {
    const same = { ...tiltDeck, trailer: { ...tiltDeck.trailer, coupler: { gross: '14,000 lb', tongue: '2,000 lb' } } };
    const made = grid({ 'cargo.0.weight': range('9,000 lb', '11,000 lb', 5) }, same);
    expect(wrongRows(made).wrong).toEqual([]);
    expect([...made.rows()].map((row) => row.answered && row.governs)).toContain(
      'gross against GVWR = gross against coupler gross',
    );
  });

  it('by chance: where two shares cross at one figure', () => {
    // At 10,000 lb gross and a 1,000 lb tongue the label (10,000) and the coupler (1,000) are both used up; below, both alike.
    const made = grid(
      {
        'trailer.gvwr': levels('9,999 lb', '10,000 lb', '10,001 lb'),
        'trailer.coupler.tongue': levels('999 lb', '1,000 lb', '1,001 lb'),
      },
      {
        ...roundNumbers,
        trailer: { ...roundNumbers.trailer, curb: { weight: '2,000 lb', tongue: '200 lb' } },
        cargo: [{ name: 'machine', weight: '8,000 lb', at: '198 in' }],
      },
    );
    const governs = [...made.rows()].map((row) => (row.answered ? row.governs : ''));
    expect(governs.filter((name) => name.includes(' = ')).length).toBeGreaterThan(0);
    expect(wrongRows(made).wrong).toEqual([]);
  });

  it('in an alternative that checks more than the others', () => {
    const made = grid({
      label: alternatives({ as: {}, equal: { 'trailer.coupler.gross': '14,000 lb' } }),
      'cargo.0.front': range('110 in', '130 in', 9),
    });
    expect(wrongRows(made).wrong).toEqual([]);
  });
});
