/** Rows that `assess` refuses: they run on a tape like the others, whichever part refuses them, and no error is made before it is read. */

import { describe, expect, it } from 'vitest';
import { levels, range } from '../../../src/study/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';
import { changed } from '../../helpers/specs.js';
import { type StudyPlan, study } from '../../helpers/untyped.js';
import { tiltDeck, wholeDeck, wrongRows } from '../compared.js';

const grid = (base: unknown, vary: StudyPlan['vary']) => rightOf(study({ base, vary, design: { kind: 'grid' } }));

/** How many rows have each reason, and how many took a whole assessment. */
function told(made: ReturnType<typeof grid>): { readonly reasons: Record<string, number>; readonly whole: number } {
  const reasons: Record<string, number> = {};
  let whole = 0;
  for (const chunk of made.chunks()) {
    whole += chunk.exactRows;
    for (const index of chunk.reasons.subarray(0, chunk.rows)) {
      const reason = chunk.reasonNames[index] as string;
      reasons[reason] = (reasons[reason] ?? 0) + 1;
    }
  }
  return { reasons, whole };
}

describe('rows without an answer', () => {
  it('are refused on a tape, by the part and the place that assess names', () => {
    const made = grid(tiltDeck, {
      'trailer.axles.0.gawr': range('6,900 lb', '7,100 lb', 21),
      'trailer.axles.1.gawr': range('6,900 lb', '7,100 lb', 21),
      'cargo.0.weight': levels('8,000 lb', '9,000 lb'),
    });
    const { reasons, whole } = told(made);
    expect(reasons).toEqual({
      '': 11 * 11 * 2,
      'contradiction: trailer.axles.0.gawr': 10 * 21 * 2,
      'contradiction: trailer.axles.1.gawr': 11 * 10 * 2,
    });
    expect(whole).toBeLessThan(400);
    expect(wrongRows(made).wrong).toEqual([]);
  });

  it('are told where the label of the truck contradicts itself', () => {
    const labelled = changed(wholeDeck, 'rules.labelGcwr', '20,000 lb');
    const made = grid(labelled, {
      'rules.labelGcwr': range('9,000 lb', '14,000 lb', 26),
      'tow.gvwr': levels('9,900 lb', '10,000 lb', '11,500 lb'),
    });
    expect(Object.keys(told(made).reasons)).toContain('contradiction: tow.gvwr');
    const { wrong, answered, compared } = wrongRows(made);
    expect({ wrong, compared }).toEqual({ wrong: [], compared: 78 });
    expect(answered).toBeGreaterThan(0);
    expect(answered).toBeLessThan(78);
  });

  it('are told where the axles of a group do not follow each other', () => {
    const made = grid(wholeDeck, {
      'trailer.axles.0.at': levels('187 in', '210 in', '221 in', '230 in'),
      'trailer.axles.1.at': levels('200 in', '210 in', '221 in'),
      'cargo.0.weight': levels('6,000 lb', '9,000 lb'),
    });
    expect(wrongRows(made).wrong).toEqual([]);
    expect(Object.keys(told(made).reasons).length).toBeGreaterThan(1);
  });
});

describe('a spec that is refused as it stands', () => {
  const base = { ...tiltDeck, trailer: { ...tiltDeck.trailer, curb: { weight: '3,650 lb', tongue: '9,000 lb' } } };
  const over = (...texts: readonly string[]) =>
    study({ base, vary: { 'trailer.curb.tongue': levels(...texts) }, design: { kind: 'grid' } });
  it('has the rows that are answered all the same', () => {
    const made = rightOf(over('520 lb', '9,000 lb', '700 lb'));
    expect(wrongRows(made)).toEqual({ compared: 3, answered: 2, wrong: [] });
  });
  it('is refused where no row is answered: nobody knows its figures', () => {
    expect(leftOf(over('9,000 lb', '8,000 lb')).tag).toBe('UndecodableSpec');
  });
});
