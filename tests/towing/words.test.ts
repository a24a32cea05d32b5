/** Every error of the chapter says what was asked, what was found and what would be needed. */
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
        "asked wheelbase; found 0 in; needed a figure greater than zero",
        "asked front axle; found -1 lb; needed a figure of zero or more",
        "asked tongue share; found 2 lb; needed a share above 0 % and not above 100 %",
        "asked a ball behind the rear axle; found an overhang of -4 in; needed a ball behind",
        "asked a weight distributing hitch; found an overhang of -4 in; needed a ball behind the rear axle",
        "asked a fraction of the front axle load restored; found 0 lb taken off the front axle by the tongue; needed a tongue that takes load off the front axle",
        "asked a trailer on its tongue and axles; found a tongue load of 2 lb on a gross weight of 1 lb; needed a tongue load not above the gross weight",
        "asked the load at the jack; found a jack 9 in behind the ball, axles 8 in behind it; needed a jack ahead of the axles",
        "asked the tongue on a lever; found a reading of 1 lb, beam alone 2 lb; needed a reading not below that of the beam alone",
        "asked the rig; found 2 lb and 1 lb, 1 lb apart; needed a difference of at most 0 lb: weigh again",
        "asked the tongue load; found no ticket; needed a pass",
        "asked the largest trailer; found no limit; needed one or more of GCWR, ball gross",
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
    expect(describeError(error)).toBe(
      'towVehicle.wheelbase: asked wheelbase; found 0 in; needed a figure greater than zero',
    );
    const gcwr = given('GCWR', lb(0), 'label', 'towVehicle.gcwr');
    expect(leftOf(towChecks({ hitch: 'ball behind', front: lb(1), rear: lb(1), gcwr }, { gross: lb(1) })).path).toBe(
      'towVehicle.gcwr',
    );
  });
});
