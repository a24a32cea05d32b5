/** Whether a machine clears the edge between ramp and deck. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { TrailerError } from '../../../src/errors.js';
import { crestClearance, edgeRise } from '../../../src/load/index.js';
import { given } from '../../../src/trace/index.js';
import { compare, degree, inch } from '../../../src/units/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';
import { expectReplays } from '../../helpers/working.js';

describe('crestClearance', () => {
  const turn = (digits: number) => [{ name: 'deck edge', turns: given('ramp angle', degree(digits)) }];
  const belly = [{ name: 'belly', behindFrontAxle: inch(50), height: inch(12) }];
  it('clears below the breakover angle and touches above it', () => {
    expect(rightOf(crestClearance(inch(100), belly, turn(26))).verdict).toBe('clears');
    const hangs = rightOf(crestClearance(inch(100), belly, turn(27)));
    expect(hangs.verdict).toBe('touches');
    expect(hangs.notes[0]?.tag).toBe('HangsUp');
    expectReplays(...hangs.checks.flatMap(({ rise, clearance }) => [rise, clearance]));
  });
  it('zero clearance touches', () => {
    expect(
      rightOf(crestClearance(inch(100), [{ name: 'belly', behindFrontAxle: inch(50), height: inch(0) }], turn(0)))
        .verdict,
    ).toBe('touches');
  });
  it('the rise below a point agrees with the rise by the sides, and with the sharpest edge', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 40, max: 150 }),
        fc.integer({ min: 10, max: 90 }),
        fc.integer({ min: 2, max: 40 }),
        (base, share, turns) => {
          const p = (base * share) / 100;
          const answer = rightOf(
            crestClearance(inch(base), [{ name: 'belly', behindFrontAxle: inch(p), height: inch(1) }], turn(turns)),
          );
          const h = answer.checks[0]?.rise.value.value.toNumber() ?? 0;
          const sides = rightOf(edgeRise(inch(Math.hypot(p, h)), inch(Math.hypot(base - p, h)), degree(turns)));
          expect(sides.rise.value.value.toNumber()).toBeCloseTo(h, 9);
          const touching = rightOf(
            crestClearance(inch(base), [{ name: 'belly', behindFrontAxle: inch(p), height: inch(h) }], turn(turns)),
          );
          expect(touching.sharpest.value.value.toNumber()).toBeCloseTo(turns, 9);
        },
      ),
    );
  });
  it('a point off the middle needs less height than one in the middle', () => {
    const at = (p: number) =>
      rightOf(crestClearance(inch(100), [{ name: 'belly', behindFrontAxle: inch(p), height: inch(12) }], turn(20)))
        .least.value;
    expect(compare(at(20), at(50))).toBe(1);
  });
  it.each([
    ['no low point', () => crestClearance(inch(100), [], turn(20)), 'NothingGiven'],
    ['no edge', () => crestClearance(inch(100), belly, []), 'NothingGiven'],
    ['no wheelbase', () => crestClearance(inch(0), belly, turn(20)), 'OutsideItsRange'],
    [
      'a low point at the axle',
      () => crestClearance(inch(100), [{ name: 'hitch', behindFrontAxle: inch(100), height: inch(9) }], turn(20)),
      'OutsideItsRange',
    ],
    [
      'a low point below the ground',
      () => crestClearance(inch(100), [{ name: 'hitch', behindFrontAxle: inch(50), height: inch(-1) }], turn(20)),
      'OutsideItsRange',
    ],
    ['an edge of 90 degrees', () => crestClearance(inch(100), belly, turn(90)), 'OutsideItsRange'],
    ['a side of no length', () => edgeRise(inch(0), inch(10), degree(10)), 'OutsideItsRange'],
  ] as const)('refuses %s', (_, ask, tag) => {
    expect(leftOf<TrailerError, unknown>(ask()).tag).toBe(tag);
  });
});
