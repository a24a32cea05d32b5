/** How steep a ramp is, how long it must be, and the friction the machine needs on it. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { TrailerError } from '../../../src/errors.js';
import { frictionNeeded, rampAngle, rampLength } from '../../../src/load/index.js';
import { compare, degree, foot, inch, lb, mm, showBrief, showWire } from '../../../src/units/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';

describe('ramp angle and length', () => {
  it('refuses a ramp shorter than the deck is high, with both figures', () => {
    const error = leftOf(rampAngle(inch(34), inch(30)));
    expect(error.tag === 'RampTooShort' && [showWire(error.height), showWire(error.length)]).toEqual([
      '34 in',
      '30 in',
    ]);
  });
  it('stands a ramp as long as the deck is high straight up', () => {
    expect(showBrief(rightOf(rampAngle(inch(34), inch(34))).angle.value)).toBe('90 deg');
  });
  it('refuses a deck below the ground, whichever is asked', () => {
    expect(leftOf(rampLength(inch(-1), degree(15)))).toMatchObject({ what: 'deck height' });
    expect(leftOf(rampAngle(inch(-1), inch(96)))).toMatchObject({ what: 'deck height' });
  });
  it('takes any unit', () => {
    expect(showBrief(rightOf(rampAngle(mm('863.6'), foot(8))).angle.value)).toBe('20.74 deg');
  });
  it('angle and length undo each other', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 61, max: 240 }), (h, l) => {
        const { angle } = rightOf(rampAngle(inch(h), inch(l)));
        expect(
          rightOf(rampLength(inch(h), angle))
            .length.value.value.minus(l)
            .abs()
            .lt('1e-25'),
        ).toBe(true);
      }),
    );
  });
  it('rises with the height and falls with the length', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 62, max: 240 }), (h, l) => {
        const at = (height: number, length: number) => rightOf(rampAngle(inch(height), inch(length))).angle.value;
        expect(compare(at(h + 1, l), at(h, l))).toBe(1);
        expect(compare(at(h, l + 1), at(h, l))).toBe(-1);
      }),
    );
  });
  it.each([
    ['no length', () => rampAngle(inch(34), inch(0)), 'OutsideItsRange'],
    ['a negative height', () => rampAngle(inch(-1), inch(10)), 'OutsideItsRange'],
    ['a flat ramp to a high deck', () => rampLength(inch(34), degree(0)), 'OutsideItsRange'],
    ['more than upright', () => rampLength(inch(34), degree(91)), 'OutsideItsRange'],
    ['an upright climb', () => frictionNeeded(lb(9200), degree(90)), 'OutsideItsRange'],
    ['a negative weight', () => frictionNeeded(lb(-1), degree(10)), 'OutsideItsRange'],
  ] as const)('refuses %s', (_, ask, tag) => {
    expect(leftOf<TrailerError, unknown>(ask()).tag).toBe(tag);
  });
});
