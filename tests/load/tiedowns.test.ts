import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { TrailerError } from '../../src/errors.js';
import {
  chainLimit,
  howManyTiedowns,
  type TiedArticle,
  tiedownCount,
  tiedowns,
  tiedownWll,
  unmarkedWireRope,
  webbingLimit,
  whichTiedownSize,
  wireRopeLimit,
} from '../../src/load/index.js';
import { compare, convert, foot, inch, lb, show } from '../../src/units/index.js';
import { leftOf, rightOf } from '../helpers/either.js';
import { expectReplays } from '../helpers/working.js';

const tags = (notes: readonly { tag: string }[]): string[] => notes.map(({ tag }) => tag);
const article = (weight: number, section: TiedArticle['section'] = 'general', length = 12): TiedArticle => ({
  weight: lb(weight),
  length: foot(length),
  blockedForward: false,
  section,
});
const chain = (n: number, wll: number) => Array.from({ length: n }, () => ({ wll: lb(wll), runs: 'direct' as const }));

describe('printed limits', () => {
  it('gives lb and kg as printed', () => {
    const found = rightOf(chainLimit('3/8', '70'));
    expect([show(found.lb.value), show(found.kg.value)]).toEqual(['6,600 lb', '2,990 kg']);
    expect(show(rightOf(webbingLimit('2 in')).lb.value)).toBe('2,000 lb');
    expect(show(rightOf(wireRopeLimit('3/8"')).lb.value)).toBe('3,000 lb');
    expectReplays(found.lb, found.kg);
  });
  it('keeps 5/16 grade 80 below grade 70, as printed', () => {
    expect(compare(rightOf(chainLimit('5/16', '80')).lb.value, rightOf(chainLimit('5/16', '70')).lb.value)).toBe(-1);
  });
  it('reads unmarked chain as grade 30', () => {
    expect(show(rightOf(chainLimit('3/8', 'unmarked')).lb.value)).toBe('2,650 lb');
  });
  it('names the nearest rows when a size is not printed', () => {
    expect(leftOf(chainLimit('9/32', '70'))).toMatchObject({
      tag: 'NotTabulated',
      asked: '9/32 grade 70',
      nearest: ['1/4 grade 70', '5/16 grade 70', expect.any(String)],
    });
    expect(leftOf(chainLimit('7/16', '80')).nearest[0]).toBe('7/16 grade 30');
    expect(leftOf(webbingLimit('27')).nearest[0]).toBe('4');
    expect(leftOf(wireRopeLimit('thick')).nearest).toHaveLength(3);
  });
  it('takes a quarter of the strength of unmarked wire rope', () => {
    expect(show(unmarkedWireRope(lb(12000)).value)).toBe('3,000 lb');
    expectReplays(unmarkedWireRope(lb(12000)));
  });
});

describe('tiedownWll', () => {
  it('lets a marking outrank the table, and says that they differ', () => {
    const marked = rightOf(tiedownWll([{ part: 'chain', size: '3/8', grade: '70', marked: lb(6000) }]));
    expect([show(marked.wll.value), tags(marked.notes)]).toEqual(['6,000 lb', ['MarkingDiffersFromTable']]);
    expect(rightOf(tiedownWll([{ part: 'chain', size: '3/8', grade: '70', marked: lb(6600) }])).notes).toEqual([]);
  });
  it('needs no table row for marked gear', () => {
    expect(show(rightOf(tiedownWll([{ part: 'webbing', width: '5', marked: lb(5000) }])).wll.value)).toBe('5,000 lb');
  });
  it('names every weakest part', () => {
    const tied = rightOf(
      tiedownWll([
        { part: 'webbing', width: '3' },
        { part: 'wire rope', diameter: '3/8' },
        { part: 'chain', size: '1/4', grade: 'unmarked', marked: lb(4000) },
      ]),
    );
    expect(tied.weakest).toEqual(['3 in webbing', '3/8 in wire rope']);
  });
  it('says when chain is taken as grade 30', () => {
    expect(tags(rightOf(tiedownWll([{ part: 'chain', size: '3/8', grade: 'unmarked' }])).notes)).toEqual([
      'UnmarkedChain',
    ]);
  });
  it('refuses no parts, a marking of nothing, an unprinted size', () => {
    expect(leftOf(tiedownWll([])).tag).toBe('NothingGiven');
    expect(leftOf(tiedownWll([{ part: 'other', name: 'binder', marked: lb(0) }])).tag).toBe('OutsideItsRange');
    expect(leftOf(tiedownWll([{ part: 'chain', size: '9/32', grade: '70' }])).tag).toBe('NotTabulated');
  });
});

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

describe('answers', () => {
  it('nothing fitted is not enough', () => {
    const none = rightOf(tiedowns(article(3000), []));
    expect([show(none.counted.value), none.verdict]).toEqual(['0 lb', 'not enough']);
  });
  it('a return to the same side counts half, a crossing counts full', () => {
    const counted = (runs: 'direct' | 'same side' | 'other side'): string =>
      show(rightOf(tiedowns(article(3000), [{ wll: lb(4000), runs }])).counted.value);
    expect([counted('direct'), counted('same side'), counted('other side')]).toEqual([
      '2,000 lb',
      '2,000 lb',
      '4,000 lb',
    ]);
  });
  it('says when no printed size is enough', () => {
    const none = rightOf(whichTiedownSize(article(80000, 'heavy equipment'), 4, 'direct', { part: 'webbing' }));
    expect([none.smallest, none.verdict]).toEqual(['none in the table', 'not enough']);
  });
  it('how many is the least number that is enough, and one fewer is not', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 500, max: 60000 }),
        fc.constantFrom(1300, 2000, 4700, 6600),
        fc.integer({ min: 2, max: 40 }),
        (weight, wll, length) => {
          const load = article(weight, 'general', length);
          const answer = rightOf(howManyTiedowns(load, { wll: lb(wll), runs: 'direct' }));
          const number = answer.readings[0]?.number.value.value.toNumber() ?? 0;
          expect(rightOf(tiedowns(load, chain(number, wll))).verdict).toBe('enough');
          expect(rightOf(tiedowns(load, chain(number - 1, wll))).verdict).toBe('not enough');
        },
      ),
    );
  });
  it('the unit does not matter', () => {
    fc.assert(
      fc.property(fc.integer({ min: 100, max: 30000 }), fc.integer({ min: 1, max: 40 }), (weight, length) => {
        const metric = rightOf(
          tiedownCount({
            weight: convert(lb(weight), 'kg'),
            length: convert(foot(length), 'mm'),
            blockedForward: false,
            section: 'general',
          }),
        );
        expect(show(metric.readings[0]?.minimum.value ?? lb(0))).toBe(
          show(rightOf(tiedownCount(article(weight, 'general', length))).readings[0]?.minimum.value ?? lb(0)),
        );
      }),
    );
  });
  it.each([
    ['no weight', () => tiedownCount(article(0)), 'OutsideItsRange'],
    ['no length', () => tiedownCount({ ...article(10), length: inch(0) }), 'OutsideItsRange'],
    ['a tiedown of no strength', () => tiedowns(article(10), chain(1, 0)), 'OutsideItsRange'],
    ['how many of nothing', () => howManyTiedowns(article(10), { wll: lb(0), runs: 'direct' }), 'OutsideItsRange'],
    ['half a tiedown', () => whichTiedownSize(article(10), 0.5, 'direct', { part: 'wire rope' }), 'NotAWholeCount'],
  ] as const)('refuses %s', (_, ask, tag) => {
    expect(leftOf<TrailerError, unknown>(ask()).tag).toBe(tag);
  });
});
