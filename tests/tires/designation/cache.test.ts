/** What is kept of designations and tables never shows in an answer. */
import { describe, expect, it } from 'vitest';
import { type Designation, readTireDesignation, tireLoadRating } from '../../../src/tires/index.js';
import { rightOf as answer } from '../../helpers/either.js';

const service = { fitment: 'single', on: 'trailer' } as const;
const pounds = (designation: string | Designation): string =>
  answer(tireLoadRating({ designation }, service)).rating.value.value.toFixed();

describe('designations that are kept', () => {
  it('answer the same at the first, the second and the thousandth question', () => {
    const first = pounds('ST225/75R15 LRD');
    for (let i = 0; i < 1000; i += 1) pounds(`ST225/75R15 ${i % 150}/${i % 150}M LR${'CDE'.charAt(i % 3)}`);
    expect(pounds('ST225/75R15 LRD')).toBe(first);
    expect(first).toBe('2540');
  });

  it("are not those that readTireDesignation hands out: each of them is the caller's own", () => {
    const [one, two] = [answer(readTireDesignation('ST225/75R15 LRD')), answer(readTireDesignation('ST225/75R15 LRD'))];
    expect(one).toEqual(two);
    expect(one).not.toBe(two);
    expect(Object.isFrozen(one)).toBe(false);
  });

  it('cannot be changed through an answer', () => {
    const { designation } = answer(tireLoadRating({ designation: 'ST225/75R15 LRD' }, service));
    expect(() => {
      (designation as { prefix: string }).prefix = 'LT';
    }).toThrow(TypeError);
    expect(() => {
      (designation.size as { construction: string }).construction = 'D';
    }).toThrow(TypeError);
  });

  it("are asked anew when they are somebody's own and have changed", () => {
    const own = answer(readTireDesignation('ST225/75R15 LRD')) as {
      -readonly [K in keyof Designation]: Designation[K];
    };
    expect(pounds(own)).toBe('2540');
    own.range = answer(readTireDesignation('ST225/75R15 LRE')).range;
    expect(pounds(own)).toBe('2830');
  });
});
