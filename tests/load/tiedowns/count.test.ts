/** How many tiedowns each section asks for. */
import { describe, expect, it } from 'vitest';
import { type TiedArticle, tiedownCount, tiedowns } from '../../../src/load/index.js';
import { foot, lb, show } from '../../../src/units/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';
import { expectReplays } from '../../helpers/working.js';

const tags = (notes: readonly { tag: string }[]): string[] => notes.map(({ tag }) => tag);
const article = (weight: number, section: TiedArticle['section'] = 'general', length = 12): TiedArticle => ({
  weight: lb(weight),
  length: foot(length),
  blockedForward: false,
  section,
});
const chain = (n: number, wll: number) => Array.from({ length: n }, () => ({ wll: lb(wll), runs: 'direct' as const }));

describe('sections', () => {
  it.each([
    [30, ['4'], '4'],
    ['30.01', ['4', '5'], '5'],
    [40, ['4', '5'], '5'],
    ['40.01', ['4', '6'], '6'],
  ])('a heavy machine of %s ft: by both texts %s, and %s governs', (length, minimums, governing) => {
    const long = { ...article(20000, 'heavy equipment'), length: foot(length) };
    const found = rightOf(tiedownCount(long));
    expect(found.readings.map(({ minimum }) => show(minimum.value))).toEqual(minimums);
    expect(show(found.governing.minimum.value)).toBe(governing);
    expect(tags(found.notes).includes('TwoCountsForLongMachine')).toBe(minimums.length > 1);
    expectReplays(...found.readings.map(({ minimum }) => minimum));
    // Four are enough by the section on heavy equipment, and too few by length: the answer keeps both apart.
    const four = rightOf(tiedowns(long, chain(4, 6600)));
    expect(four.verdict).toBe(minimums.length > 1 ? 'readings differ' : 'enough');
    expect(four.counts.filter(({ governs }) => governs).map(({ verdict }) => verdict)).toEqual([
      minimums.length > 1 ? 'too few' : 'enough',
    ]);
    expect(rightOf(tiedowns(long, chain(Number(governing), 6600))).verdict).toBe('enough');
  });
  it('a long machine blocked forward takes one for each 10 ft, where that is more than four', () => {
    const blocked = (feet: number): TiedArticle => ({
      ...article(20000, 'heavy equipment', feet),
      blockedForward: true,
    });
    expect([40, 41].map((feet) => show(rightOf(tiedownCount(blocked(feet))).governing.minimum.value))).toEqual([
      '4',
      '5',
    ]);
  });
  it('heavy equipment takes four up to 30 ft; below 10,000 lb that is a choice', () => {
    expect(show(rightOf(tiedownCount(article(10000, 'heavy equipment'))).readings[0]?.minimum.value ?? lb(0))).toBe(
      '4',
    );
    expect(tags(rightOf(tiedownCount(article(10001, 'heavy equipment'))).notes)).toEqual(['LowerAndLock']);
    expect(tags(rightOf(tiedownCount(article(9999, 'heavy equipment'))).notes)).toEqual([
      'LowerAndLock',
      'SectionByChoice',
    ]);
  });
  it('at exactly 10,000 lb says that both sections apply', () => {
    expect(tags(rightOf(tiedownCount(article(10000, 'heavy equipment'))).notes)).toEqual([
      'BothSectionsAtTenThousand',
      'LowerAndLock',
    ]);
    expect(tags(rightOf(tiedownCount(article(10000, 'light vehicle'))).notes)).toContain('BothSectionsAtTenThousand');
    expect(tags(rightOf(tiedownCount(article(9999, 'light vehicle'))).notes)).toEqual([]);
  });
  it('the general section warns from 10,000 lb on that the heavy-equipment section may bind', () => {
    expect(tags(rightOf(tiedownCount(article(9999))).notes)).toEqual([]);
    expect(tags(rightOf(tiedownCount(article(10000))).notes)).toEqual(['HeavySectionMayBind']);
  });
  it('shows both readings for a light vehicle, and lets them differ', () => {
    const two = rightOf(tiedowns(article(4000, 'light vehicle'), chain(2, 4700)));
    expect(two.counts.map(({ reading, verdict }) => [reading, verdict])).toEqual([
      ['two in all, front and rear restrained', 'enough'],
      ['two at each end', 'too few'],
    ]);
    expect(two.verdict).toBe('readings differ');
    expect(two.counts.map(({ governs }) => governs)).toEqual([false, true]);
    expect(rightOf(tiedowns(article(4000, 'light vehicle'), chain(4, 4700))).verdict).toBe('enough');
    expect(rightOf(tiedowns(article(4000, 'light vehicle'), chain(1, 4700))).verdict).toBe('not enough');
  });
  it('refuses the light-vehicle section above 10,000 lb', () => {
    expect(leftOf(tiedownCount(article(10001, 'light vehicle'))).tag).toBe('SectionNotForThisWeight');
  });
});
