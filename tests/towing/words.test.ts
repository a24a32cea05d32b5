/** Every error of the chapter says what was found and what it must be. */
import { describe, expect, it } from 'vitest';
import { describeError, type TrailerError } from '../../src/errors.js';
import { hitchedAxleLoads, type TowingError, towChecks } from '../../src/towing/index.js';
import { given } from '../../src/trace/index.js';
import { inch, lb, toWire } from '../../src/units/index.js';
import { leftOf } from '../helpers/either.js';

const chapter = 'towing';
const every: { readonly [Tag in TowingError['tag']]: Extract<TowingError, { tag: Tag }> } = {
  NotAboveZero: { chapter, tag: 'NotAboveZero', what: 'wheelbase', found: toWire(inch(0)) },
  BelowZero: { chapter, tag: 'BelowZero', what: 'front axle', found: toWire(lb(-1)) },
  NotAShare: { chapter, tag: 'NotAShare', what: 'tongue share', found: toWire(lb(2)) },
  HitchContradicts: {
    chapter,
    tag: 'HitchContradicts',
    hitch: 'ball behind',
    overhang: toWire(inch(-4)),
    needed: 'a ball behind',
  },
  BarsNeedBallBehind: { chapter, tag: 'BarsNeedBallBehind', overhang: toWire(inch(-4)) },
  NothingToRestore: { chapter, tag: 'NothingToRestore', offFront: toWire(lb(0)) },
  TongueAboveGross: { chapter, tag: 'TongueAboveGross', tongue: toWire(lb(2)), gross: toWire(lb(1)) },
  JackBehindAxles: { chapter, tag: 'JackBehindAxles', jackBehindBall: toWire(inch(9)), axlesAt: toWire(inch(8)) },
  ReadingBelowTare: { chapter, tag: 'ReadingBelowTare', reading: toWire(lb(1)), tare: toWire(lb(2)) },
  TicketsDoNotClose: {
    chapter,
    tag: 'TicketsDoNotClose',
    what: 'the rig',
    first: toWire(lb(2)),
    second: toWire(lb(1)),
    gap: toWire(lb(1)),
    allowed: toWire(lb(0)),
  },
  TicketsCannotTell: { chapter, tag: 'TicketsCannotTell', asked: 'the tongue load', passes: [], needed: 'a pass' },
  NothingLimits: { chapter, tag: 'NothingLimits', missing: ['GCWR', 'ball gross'] },
};

describe('the words of towing errors', () => {
  it('carry the figures', () => {
    const lines = Object.values(every).map((error: TrailerError) => describeError(error));
    expect(lines).toMatchInlineSnapshot(`
      [
        "wheelbase is 0 in; it must be greater than zero",
        "front axle is -1 lb; it must be zero or more",
        "tongue share is 2 lb; it must be above 0 % and at most 100 %",
        "the overhang is -4 in; a ball behind the rear axle needs a ball behind",
        "the overhang of a weight distributing hitch is -4 in; it must be zero or more: the ball behind the rear axle",
        "what the tongue takes off the front axle is 0 lb; it must be greater than zero for a share of it to be restored",
        "the tongue load is 2 lb; it must be at most the gross weight, 1 lb",
        "the place of the jack is 9 in behind the ball; it must be ahead of the axles, 8 in behind it",
        "the reading with the tongue on the lever is 1 lb; it must be at least that of the beam alone, 2 lb",
        "the difference between the rig (2 lb and 1 lb) is 1 lb; it must be at most 0 lb; weigh again",
        "the tongue load cannot be told without a ticket; it takes a pass",
        "nothing limits the trailer; give one or more of GCWR, ball gross",
      ]
    `);
  });
  it('say where in a spec the figure stands', () => {
    const wheelbase = given('wheelbase', inch(0), 'stated', 'towVehicle.wheelbase');
    const error = leftOf(
      hitchedAxleLoads({
        hitch: 'ball behind',
        front: lb(1),
        rear: lb(1),
        tongue: lb(1),
        overhang: inch(1),
        wheelbase,
      }),
    );
    expect(describeError(error)).toBe('towVehicle.wheelbase: wheelbase is 0 in; it must be greater than zero');
    const gcwr = given('GCWR', lb(0), 'label', 'towVehicle.gcwr');
    expect(leftOf(towChecks({ hitch: 'ball behind', front: lb(1), rear: lb(1), gcwr }, { gross: lb(1) })).path).toBe(
      'towVehicle.gcwr',
    );
  });
});
