/** Whether tiedowns are enough, how many, and which size. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { TrailerError } from '../../../src/errors.js';
import {
  howManyTiedowns,
  type TiedArticle,
  tiedownCount,
  tiedowns,
  whichTiedownSize,
} from '../../../src/load/index.js';
import { nodesOf } from '../../../src/trace/index.js';
import { convert, foot, inch, lb, show } from '../../../src/units/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';
import { workingsIn } from '../../helpers/specs.js';

const article = (weight: number, section: TiedArticle['section'] = 'general', length = 12): TiedArticle => ({
  weight: lb(weight),
  length: foot(length),
  blockedForward: false,
  section,
});
const chain = (n: number, wll: number) => Array.from({ length: n }, () => ({ wll: lb(wll), runs: 'direct' as const }));

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
  it('the size that serves is named with its gear, and a chain with its grade', () => {
    const named = (gear: Parameters<typeof whichTiedownSize>[3]): unknown => {
      const found = rightOf(whichTiedownSize(article(10000, 'heavy equipment'), 4, 'direct', gear));
      return nodesOf(workingsIn(found).map(({ why }) => why)).find(({ kind }) => kind === 'looked up');
    };
    expect(named({ part: 'chain', grade: '70' })).toMatchObject({
      symbol: expect.stringMatching(/ in grade 70 chain$/),
    });
    expect(named({ part: 'webbing' })).toMatchObject({ symbol: expect.stringMatching(/ in webbing$/) });
  });
  it('a size that serves comes with the caution of the rule, and with what the count says', () => {
    const { notes } = rightOf(whichTiedownSize(article(10000, 'heavy equipment'), 4, 'direct', { part: 'webbing' }));
    const { notes: ofCount } = rightOf(tiedowns(article(10000, 'heavy equipment'), chain(4, 4700)));
    expect(notes.map(({ tag }) => tag)).toEqual(expect.arrayContaining(ofCount.map(({ tag }) => tag)));
  });
  it('the tiedowns count from one in the working', () => {
    const found = rightOf(tiedowns(article(10000, 'heavy equipment'), chain(4, 4700)));
    const names = nodesOf(workingsIn(found).map(({ why }) => why)).map(({ symbol }) => symbol);
    for (const i of [1, 2, 3, 4]) expect(names).toContain(`counted for tiedown ${i}`);
    expect(names).not.toContain('counted for tiedown 0');
  });
  it('names the tiedown of no strength, counted from one', () => {
    const [good, none] = [...chain(1, 4700), ...chain(1, 0)];
    if (good === undefined || none === undefined) throw new Error('no tiedowns');
    expect(leftOf(tiedowns(article(10), [good, none]))).toMatchObject({ what: 'working load limit of tiedown 2' });
  });
  it('how many comes with what the count says, and whom it binds', () => {
    const { notes } = rightOf(howManyTiedowns(article(10000, 'heavy equipment'), { wll: lb(4700), runs: 'direct' }));
    expect(notes.map(({ tag }) => tag)).toEqual(['BothSectionsAtTenThousand', 'LowerAndLock', 'CommercialCarriers']);
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
