/** Load at the ball while the machine is on the ramps. */
import { describe, expect, it } from 'vitest';
import { tailLift } from '../../../src/load/index.js';
import { inch, lb, show, showBrief } from '../../../src/units/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';
import { expectReplays } from '../../helpers/working.js';

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
  it('a deck that ends over the axles or ahead of them takes nothing off the ball, and legs nothing', () => {
    const at = (deckRear: number) => rightOf(tailLift({ ...r1, deckRear: inch(deckRear) }));
    expect([at(190), at(171)].map(({ ball, legs, verdict }) => [show(ball.value), show(legs.value), verdict])).toEqual([
      ['480 lb', '0 lb', 'presses on the ball'],
      ['1,400 lb', '0 lb', 'presses on the ball'],
    ]);
  });
  it('a light machine is held by the truck, a lighter one needs nothing', () => {
    expect(rightOf(tailLift({ ...r1, machineWeight: lb(3000) })).verdict).toBe('held by the truck');
    const light = rightOf(tailLift({ ...r1, machineWeight: lb(500) }));
    expect([light.verdict, show(light.legs.value)]).toEqual(['presses on the ball', '0 lb']);
  });
  it('at the edge it presses with nothing, and is held by the last pound of the truck; the note comes with the pull', () => {
    // Edge 95 in behind the axles, half of 190: the ball has 480 - P/2. The truck holds 3,180 x 160/212 = 2,400 lb.
    const edge = { ...r1, deckRear: inch(285), truck: { ...r1.truck, rearAxle: lb(3180) } };
    const at = (pounds: number): [string, boolean] => {
      const { verdict, notes } = rightOf(tailLift({ ...edge, machineWeight: lb(pounds) }));
      return [verdict, notes.some(({ tag }) => tag === 'BallPulledUp')];
    };
    expect([at(960), at(961), at(5760), at(5761)]).toEqual([
      ['presses on the ball', false],
      ['held by the truck', true],
      ['held by the truck', true],
      ['lifts the truck', true],
    ]);
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
  it('a ball over the rear axle is held by that axle alone', () => {
    const over = rightOf(tailLift({ ...r1, truck: { ...r1.truck, overhang: inch(0), frontAxle: lb(4300) } }));
    expect([show(over.truckHolds!.value), over.notes.map(({ tag }) => tag)]).toEqual([
      '3,100 lb',
      ['Chock', 'BallPulledUp'],
    ]);
  });
  it('refuses a ball ahead of the front axle and axles at the coupler', () => {
    expect(leftOf(tailLift({ ...r1, truck: { ...r1.truck, overhang: inch(-160) } })).tag).toBe('OutsideItsRange');
    expect(leftOf(tailLift({ ...r1, axlesAt: inch(0) })).tag).toBe('OutsideItsRange');
  });
});
