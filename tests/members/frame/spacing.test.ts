/** How a spacing becomes a number of pieces. All trailers are invented. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CountRule, frameWeight } from '../../../src/members/index.js';
import { inch } from '../../../src/units/index.js';
import { leftOf, plain, rightOf } from '../../helpers/either.js';
import { cross } from '../../helpers/spaced-line.js';
import { expectReplays } from '../../helpers/working.js';

describe('count rules', () => {
  const rules: readonly CountRule[] = [
    'first at the start',
    'first at the start, last at the end',
    'none at either end',
  ];
  /** The places written out one by one, in whole inches. */
  function places(spacing: number, over: number, rule: CountRule): number[] {
    const inside: number[] = [];
    for (
      let x = rule === 'none at either end' ? spacing : 0;
      rule === 'first at the start' ? x <= over : x < over;
      x += spacing
    )
      inside.push(x);
    return rule === 'first at the start, last at the end' ? [...inside, over] : inside;
  }
  it('agree with the places written out one by one', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 48 }),
        fc.integer({ min: 1, max: 480 }),
        fc.constantFrom(...rules),
        (spacing, over, rule) => {
          const at = places(spacing, over, rule);
          const read = frameWeight([{ ...cross, spacing: inch(spacing), over: inch(over), from: inch(100), rule }]);
          if (at.length === 0) {
            expect(leftOf(read).tag).toBe('OutsideItsRange');
            return;
          }
          const [line] = rightOf(read).lines;
          expect(plain(line!.count!)).toBe(at.length);
          expect(plain(line!.at)).toBeCloseTo(100 + at.reduce((a, b) => a + b, 0) / at.length, 9);
          expectReplays(line!.weight, line!.at);
        },
      ),
      { numRuns: 100 },
    );
  });
  it('16 in over 18 ft: 14, 15 and 13 pieces', () => {
    expect(rules.map((rule) => plain(rightOf(frameWeight([{ ...cross, rule }])).lines[0]!.count!))).toEqual([
      14, 15, 13,
    ]);
  });
});
