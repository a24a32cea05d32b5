/** Tiedown cases, each with its source. Rules: 49 CFR 393.106(d), .108, .110, .128, .130. */
import { describe, expect, it } from 'vitest';
import {
  type Attachment,
  howManyTiedowns,
  type TiedArticle,
  tiedownCount,
  tiedowns,
  tiedownWll,
  whichTiedownSize,
} from '../../src/load/index.js';
import { foot, lb, show } from '../../src/units/index.js';
import { rightOf } from '../helpers/either.js';
import { expectReplays } from '../helpers/working.js';

const article = (
  weight: number,
  length: number | string = 8,
  section: TiedArticle['section'] = 'general',
  blockedForward = false,
): TiedArticle => ({ weight: lb(weight), length: foot(length), blockedForward, section });
const set = (runs: Attachment, ...limits: number[]) => limits.map((wll) => ({ wll: lb(wll), runs }));

describe('aggregate working load limit', () => {
  it('30,000 lb needs 15,000 (trade magazine)', () => {
    expect(show(rightOf(tiedowns(article(30000), [])).needed.value)).toBe('15,000 lb');
  });
  it('1,000 lb needs 500 (393.106(d) applied)', () => {
    expect(show(rightOf(tiedowns(article(1000), [])).needed.value)).toBe('500 lb');
  });
  it.each([
    ['four 5/16 grade 70 direct on 8,000 lb', 8000, set('direct', 4700, 4700, 4700, 4700), '9,400 lb', 'enough'],
    [
      'four 1/4 grade 43 direct on 12,000 lb: the number suffices, the strength does not',
      12000,
      set('direct', 2600, 2600, 2600, 2600),
      '5,200 lb',
      'short',
    ],
    ['two 1 3/4 in straps over the top of 3,000 lb', 3000, set('other side', 1750, 1750), '3,500 lb', 'enough'],
  ] as const)('%s (393.106(d), 393.108; derived)', (_, weight, fitted, counted, strength) => {
    const answer = rightOf(tiedowns(article(weight), fitted));
    expect([show(answer.counted.value), answer.strength]).toEqual([counted, strength]);
    expectReplays(answer.needed, answer.counted, answer.reserve);
  });
  it('four 5/16 grade 70 direct are enough for 18,800 lb and not for a pound more (derived)', () => {
    const fitted = set('direct', 4700, 4700, 4700, 4700);
    expect(rightOf(tiedowns(article(18800, 14, 'heavy equipment'), fitted)).verdict).toBe('enough');
    expect(rightOf(tiedowns(article(18801, 14, 'heavy equipment'), fitted)).verdict).toBe('not enough');
  });
  it('the weakest part is the tiedown: chain 6,600, binder 5,400, anchor 5,000 (393.108(a); derived)', () => {
    const whole = rightOf(
      tiedownWll([
        { part: 'chain', size: '3/8', grade: '70' },
        { part: 'other', name: 'binder', marked: lb(5400) },
        { part: 'other', name: 'anchor', marked: lb(5000) },
      ]),
    );
    expect([show(whole.wll.value), whole.weakest]).toEqual(['5,000 lb', ['anchor']]);
    expectReplays(whole.wll);
  });
});

describe('half-load rule: 20,000 lb on 3/8 grade 70 chain (equipment-rental safety article; chain value 393.108)', () => {
  const load = article(20000, 18, 'heavy equipment');
  it('needs 10,000: three count 9,900 and fail, four count 13,200 and pass', () => {
    const three = rightOf(tiedowns(load, set('direct', 6600, 6600, 6600)));
    const four = rightOf(tiedowns(load, set('direct', 6600, 6600, 6600, 6600)));
    expect([show(three.needed.value), show(three.counted.value), three.strength]).toEqual([
      '10,000 lb',
      '9,900 lb',
      'short',
    ]);
    expect([show(four.counted.value), four.verdict]).toEqual(['13,200 lb', 'enough']);
  });
  it('the common mistake counts them in full and stops at two', () => {
    const wrong = rightOf(howManyTiedowns(load, { wll: lb(6600), runs: 'other side' }));
    const ours = rightOf(howManyTiedowns(load, { wll: lb(6600), runs: 'direct' }));
    expect([show(wrong.byStrength.value), show(ours.byStrength.value)]).toEqual(['2', '4']);
    expectReplays(ours.byStrength, ...ours.readings.map(({ number }) => number));
  });
  it('as four, 3/8 grade 70 is the smallest: 5/16 counts 9,400', () => {
    const which = rightOf(whichTiedownSize(load, 4, 'direct', { part: 'chain', grade: '70' }));
    expect(which.sizes.map(({ size, strength }) => `${size} ${strength}`)).toEqual([
      '1/4 short',
      '5/16 short',
      '3/8 enough',
      '7/16 enough',
      '1/2 enough',
      '5/8 enough',
    ]);
    expect(which.smallest !== 'none in the table' && which.smallest.size).toBe('3/8');
    expect(which.verdict).toBe('enough');
    expectReplays(...which.sizes.map(({ counted }) => counted));
  });
});

describe('minimum number (393.110 as copied from the agency page; web copies, to be verified)', () => {
  it.each([
    ['5', 1100, false, '1', 'published'],
    ['5', 1101, false, '2', 'derived'],
    ['5.1', 500, false, '2', 'derived'],
    ['10', 5000, false, '2', 'derived'],
    ['12', 2000, false, '3', 'web example agrees'],
    ['20', 2000, false, '3', 'derived'],
    ['20.1', 2000, false, '4', 'derived'],
    ['22', 2000, true, '3', 'derived'],
    ['9', 20000, true, '1', 'derived'],
  ])('%s ft, %i lb, blocked %s: %s (%s)', (length, weight, blocked, minimum) => {
    const count = rightOf(tiedownCount(article(weight, length, 'general', blocked)));
    expect(count.readings.map((reading) => show(reading.minimum.value))).toEqual([minimum]);
    expectReplays(...count.readings.map((reading) => reading.minimum));
  });
});
