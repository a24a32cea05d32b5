import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { TrailerError } from '../../src/errors.js';
import {
  crestClearance,
  crestsOf,
  edgeRise,
  frictionNeeded,
  rampAngle,
  rampCapacity,
  rampLength,
  rampSpacing,
  tailLift,
} from '../../src/load/index.js';
import { rating } from '../../src/ratings/index.js';
import { given } from '../../src/trace/index.js';
import { compare, degree, foot, inch, lb, mm, show, showBrief } from '../../src/units/index.js';
import { leftOf, rightOf } from '../helpers/either.js';
import { expectReplays } from '../helpers/working.js';

describe('ramp angle and length', () => {
  it('refuses a ramp shorter than the deck is high, with both figures', () => {
    const error = leftOf(rampAngle(inch(34), inch(30)));
    expect(error.tag === 'RampTooShort' && [show(error.height), show(error.length)]).toEqual(['34 in', '30 in']);
  });
  it('stands a ramp as long as the deck is high straight up', () => {
    expect(showBrief(rightOf(rampAngle(inch(34), inch(34))).angle.value)).toBe('90 deg');
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
    ['an edge of 90 degrees', () => crestClearance(inch(100), belly, turn(90)), 'OutsideItsRange'],
    ['a side of no length', () => edgeRise(inch(0), inch(10), degree(10)), 'OutsideItsRange'],
  ] as const)('refuses %s', (_, ask, tag) => {
    expect(leftOf<TrailerError, unknown>(ask()).tag).toBe(tag);
  });
});

describe('crestsOf', () => {
  const turns = (of: ReturnType<typeof crestsOf>): string[] =>
    rightOf(of).crests.map(({ name, turns: angle }) => `${name} ${show(angle.value)}`);
  it('a straight deck has one edge, a dovetail two', () => {
    expect(turns(crestsOf(degree(20), 'straight deck', inch(50)))).toEqual(['deck edge 20 deg']);
    expect(turns(crestsOf(degree(20), { angle: degree(8), length: inch(60) }, inch(50)))).toEqual([
      'deck to dovetail 8 deg',
      'dovetail to ramp 12 deg',
    ]);
  });
  it('a wheelbase longer than the dovetail gets the edge that stands above both', () => {
    const long = crestsOf(degree(20), { angle: degree(8), length: inch(48) }, inch(80));
    expect(turns(long)[2]).toBe('both edges at once 20 deg');
    expect(rightOf(long).notes[0]?.tag).toBe('StraddlesDovetail');
  });
  it('checks both edges of a dovetail', () => {
    const { crests } = rightOf(crestsOf(degree(24), { angle: degree(6), length: inch(60) }, inch(50)));
    const answer = rightOf(
      crestClearance(inch(50), [{ name: 'belly', behindFrontAxle: inch(25), height: inch(3) }], crests),
    );
    expect(answer.checks.map(({ crest, verdict }) => [crest, verdict])).toEqual([
      ['deck to dovetail', 'clears'],
      ['dovetail to ramp', 'touches'],
    ]);
  });
  it('refuses a dovetail steeper than the ramp', () => {
    expect(leftOf(crestsOf(degree(10), { angle: degree(12), length: inch(60) }, inch(50))).tag).toBe('OutsideItsRange');
  });
});

describe('rampSpacing', () => {
  const ramps = { rampWidth: inch(18), margin: inch(1), closest: inch(40), widest: inch(56) };
  it('fits every axle at once, and the slots', () => {
    const both = rightOf(
      rampSpacing(
        [
          { name: 'front axle', gauge: inch(54), tireWidth: inch(12) },
          { name: 'rear axle', gauge: inch(50), tireWidth: inch(14) },
        ],
        ramps,
      ),
    );
    // front 50 to 58, rear 48 to 52, slots 40 to 56
    expect([show(both.lower.at.value), show(both.upper.at.value), both.empty]).toEqual(['50 in', '52 in', false]);
    expect(both.upper.setBy.map(({ name }) => name)).toEqual(['rear axle']);
  });
  it('answers when no setting serves, with both sides named', () => {
    const none = rightOf(rampSpacing([{ name: 'front axle', gauge: inch(66), tireWidth: inch(12) }], ramps));
    expect(none.empty).toBe(true);
    expect(none.notes.at(-1)?.says).toBe(
      'No setting serves: front axle asks for 62 in or wider, widest setting for 56 in or closer.',
    );
  });
  it('answers when a tire is wider than the ramp', () => {
    const wide = rightOf(rampSpacing([{ name: 'front axle', gauge: inch(54), tireWidth: inch(17) }], ramps));
    expect([wide.empty, wide.notes[0]?.tag]).toEqual([true, 'TireWiderThanRamp']);
  });
  it('refuses slots the wrong way round and no axles', () => {
    expect(
      leftOf(
        rampSpacing([{ name: 'front axle', gauge: inch(54), tireWidth: inch(12) }], { ...ramps, closest: inch(60) }),
      ).tag,
    ).toBe('OutsideItsRange');
    expect(leftOf(rampSpacing([], ramps)).tag).toBe('NothingGiven');
  });
});

describe('rampCapacity', () => {
  it('cannot answer an axle rating from the machine weight alone, and never halves it', () => {
    expect(
      leftOf(rampCapacity(rating('ramp pair, axle', lb(3500)), { weight: lb(6000), axleLoads: 'unknown' })).tag,
    ).toBe('MachineAxleLoadsMissing');
  });
  it('refuses an axle heavier than its machine', () => {
    expect(
      leftOf(rampCapacity(rating('ramp pair, axle', lb(3500)), { weight: lb(3000), axleLoads: [lb(3600)] })).tag,
    ).toBe('OutsideItsRange');
  });
});

describe('tailLift', () => {
  const r1 = {
    tongue: lb(480),
    axlesAt: inch(190),
    deckRear: inch(298),
    machineWeight: lb(9200),
    truck: { rearAxle: lb(3100), wheelbase: inch(160), overhang: inch(52) },
  };
  it('reference trailer: 4,749 lb up at the ball, the truck holds 2,340, legs take 8,356', () => {
    // 480 - 9,200 x 108/190; 3,100/(1 + 52/160); 9,200 - 480 x 190/108
    const answer = rightOf(tailLift(r1));
    expect([
      showBrief(answer.ball.value, 0),
      showBrief(answer.truckHolds!.value, 0),
      showBrief(answer.legs.value, 0),
    ]).toEqual(['-4,749 lb', '2,340 lb', '8,356 lb']);
    expect(answer.verdict).toBe('lifts the truck');
    expectReplays(answer.ball, answer.truckHolds!, answer.legs);
  });
  it('with those legs the ball carries nothing: moments about the axles balance', () => {
    const { legs } = rightOf(tailLift(r1));
    expect(
      legs.value.value
        .minus(9200)
        .times(108)
        .plus(480 * 190)
        .abs()
        .lt('1e-20'),
    ).toBe(true);
  });
  it('a light machine is held by the truck, a lighter one needs nothing', () => {
    expect(rightOf(tailLift({ ...r1, machineWeight: lb(3000) })).verdict).toBe('held by the truck');
    const light = rightOf(tailLift({ ...r1, machineWeight: lb(500) }));
    expect([light.verdict, show(light.legs.value)]).toEqual(['presses on the ball', '0 lb']);
  });
  it('an uncoupled trailer is held by nothing', () => {
    const alone = rightOf(tailLift({ ...r1, machineWeight: lb(3000), truck: 'not coupled' }));
    expect([alone.verdict, show(alone.truckHolds!.value)]).toEqual(['lifts the tongue', '0 lb']);
  });
  it('of a truck that is not known only the pull on the ball is told', () => {
    const unknown = rightOf(tailLift({ ...r1, truck: 'unknown' }));
    expect([unknown.verdict, unknown.truckHolds, unknown.ball]).toEqual([
      'pulls the ball up',
      undefined,
      rightOf(tailLift(r1)).ball,
    ]);
    expect(rightOf(tailLift({ ...r1, machineWeight: lb(500), truck: 'unknown' })).verdict).toBe('presses on the ball');
  });
  it('a gooseneck is held by the axle that is emptied first, and says so when the front axle is not known', () => {
    // Moments on the truck: 3,100 x 160/150 at the rear; 700 x 160/10 at the front. With the ball 100 in ahead: 3,100 x 160/60, and 4,300 x 160/100 governs.
    const neck = (overhang: number, frontAxle?: number) =>
      rightOf(
        tailLift({
          ...r1,
          truck: {
            ...r1.truck,
            overhang: inch(overhang),
            frontAxle: frontAxle === undefined ? undefined : lb(frontAxle),
          },
        }),
      );
    expect(
      [neck(-10, 700), neck(-100, 4300), neck(-100)].map(({ truckHolds }) => showBrief(truckHolds!.value, 0)),
    ).toEqual(['3,307 lb', '6,880 lb', '8,267 lb']);
    expect(
      [neck(-10, 700), neck(-100)].map(({ notes }) => notes.some(({ tag }) => tag === 'FrontAxleNotAsked')),
    ).toEqual([false, true]);
    expect(rightOf(tailLift({ ...r1, truck: { ...r1.truck, frontAxle: lb(0) } })).truckHolds).toEqual(
      rightOf(tailLift(r1)).truckHolds,
    );
    expectReplays(neck(-10, 700).truckHolds!, neck(-100, 4300).truckHolds!);
    expect(leftOf(tailLift({ ...r1, truck: { ...r1.truck, overhang: inch(-10), frontAxle: lb(-1) } })).tag).toBe(
      'OutsideItsRange',
    );
  });
  it('a deck that ends ahead of the axles cannot lift the tongue', () => {
    const answer = rightOf(tailLift({ ...r1, deckRear: inch(180) }));
    expect([answer.verdict, show(answer.legs.value)]).toEqual(['presses on the ball', '0 lb']);
  });
  it('refuses a ball ahead of the front axle and axles at the coupler', () => {
    expect(leftOf(tailLift({ ...r1, truck: { ...r1.truck, overhang: inch(-160) } })).tag).toBe('OutsideItsRange');
    expect(leftOf(tailLift({ ...r1, axlesAt: inch(0) })).tag).toBe('OutsideItsRange');
  });
});
