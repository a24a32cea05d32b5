/** How many tiedowns each section asks for. */
import { describe, expect, it } from 'vitest';
import { type TiedArticle, tiedownCount, tiedowns } from '../../../src/load/index.js';
import { foot, lb, show } from '../../../src/units/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';

const tags = (notes: readonly { tag: string }[]): string[] => notes.map(({ tag }) => tag);
const article = (weight: number, section: TiedArticle['section'] = 'general', length = 12): TiedArticle => ({
  weight: lb(weight),
  length: foot(length),
  blockedForward: false,
  section,
});
const chain = (n: number, wll: number) => Array.from({ length: n }, () => ({ wll: lb(wll), runs: 'direct' as const }));

describe('sections', () => {
  it('heavy equipment takes four, whatever its length; below 10,000 lb that is a choice', () => {
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
    expect(tags(rightOf(tiedownCount(article(10000, 'heavy equipment'))).notes)).toContain('BothSectionsAtTenThousand');
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
    expect(rightOf(tiedowns(article(4000, 'light vehicle'), chain(4, 4700))).verdict).toBe('enough');
    expect(rightOf(tiedowns(article(4000, 'light vehicle'), chain(1, 4700))).verdict).toBe('not enough');
  });
  it('refuses the light-vehicle section above 10,000 lb', () => {
    expect(leftOf(tiedownCount(article(10001, 'light vehicle'))).tag).toBe('SectionNotForThisWeight');
  });
});
