/** Small questions by hand: rollover index, winch pull, departure angle, tail height, least tongue share, weight ratio, bent blank, deflection limit, brake torque. */
import { describe, expect, it } from 'vitest';
import { brakeTorquePerWheel, deceleration } from '../../src/axles/index.js';
import {
  departureAngle,
  frictionNeeded,
  leastTongueShare,
  rolloverIndex,
  tailHeight,
  winchPull,
} from '../../src/load/index.js';
import { blankWidth, deflectionLimit } from '../../src/members/index.js';
import { trailerToVehicleRatio } from '../../src/towing/index.js';
import { degree, gravity, inch, lb, lbf, ratio } from '../../src/units/index.js';
import { leftOf, plain, rightOf } from '../helpers/either.js';
import { expectReplays } from '../helpers/working.js';

describe('small questions', () => {
  it('rollover index: a tilt table tips at the angle whose tangent it is (statics)', () => {
    const index = rightOf(rolloverIndex(inch(90), inch(52)));
    expect(plain(index)).toBeCloseTo(45 / 52, 15);
    expectReplays(index);
    expect(leftOf(rolloverIndex(inch(90), inch(0))).tag).toBe('OutsideItsRange');
  });
  it('winch pull: without rolling resistance it is what pulls the machine down the ramp', () => {
    const free = rightOf(winchPull(lb(4000), degree(15), ratio(0)));
    expect(plain(free)).toBeCloseTo(plain(rightOf(frictionNeeded(lb(4000), degree(15))).pull), 10);
    const rolling = rightOf(winchPull(lb(4000), degree(15), ratio('0.1')));
    expect(plain(rolling)).toBeCloseTo(4000 * (Math.sin(Math.PI / 12) + 0.1 * Math.cos(Math.PI / 12)), 8);
    expectReplays(rolling);
    expect(leftOf(winchPull(lb(4000), degree(90), ratio('0.1'))).tag).toBe('OutsideItsRange');
  });
  it('departure angle: the 3-4-5 triangle', () => {
    expect(plain(rightOf(departureAngle(inch(3), inch(4))))).toBeCloseTo((Math.atan(0.75) * 180) / Math.PI, 12);
    expect(leftOf(departureAngle(inch(3), inch(0))).tag).toBe('OutsideItsRange');
  });
  it('tail height: nothing is left at the departure angle, and falling ground gives more', () => {
    const steepest = rightOf(departureAngle(inch(16), inch(81)));
    const tail = rightOf(tailHeight(inch(16), inch(81), steepest));
    expect(plain(tail)).toBeCloseTo(0, 12);
    expectReplays(tail);
    expect(plain(rightOf(tailHeight(inch(16), inch(81), degree(-45))))).toBeCloseTo(97, 12);
    expect(leftOf(tailHeight(inch(16), inch(81), degree(46))).tag).toBe('OutsideItsRange');
  });
  it('least tongue share: with it on the tongue the axles carry what they are rated for; none where they carry all', () => {
    const share = rightOf(leastTongueShare(lb(12000), lb(10400)));
    expect(12000 * (1 - plain(share))).toBeCloseTo(10400, 10);
    expectReplays(share);
    expect(plain(rightOf(leastTongueShare(lb(12000), lb(14000))))).toBe(0);
    expect(leftOf(leastTongueShare(lb(0), lb(1))).tag).toBe('OutsideItsRange');
  });
  it('weight ratio', () => {
    expect(plain(rightOf(trailerToVehicleRatio(lb(12650), lb(8800))))).toBe(1.4375);
    expect(leftOf(trailerToVehicleRatio(lb(12650), lb(0))).tag).toBe('OutsideItsRange');
  });
  it('bent blank: with k of a half and no radius each bend adds a quarter circle of half the thickness', () => {
    const channel = {
      web: inch(8),
      flange: inch(3),
      thickness: inch('0.25'),
      insideRadius: inch(0),
      neutral: ratio('0.5'),
    };
    const width = rightOf(blankWidth(channel));
    expect(plain(width)).toBeCloseTo(7.5 + 5.5 + 2 * (Math.PI / 2) * 0.125, 12);
    expectReplays(width);
    expect(leftOf(blankWidth({ ...channel, flange: inch('0.2') })).tag).toBe('OutsideItsRange');
  });
  it('deflection limit: L/360 of 120 in is a third of an inch; a tie is within; up counts as down', () => {
    const at = (deflection: string) => rightOf(deflectionLimit(inch(deflection), inch(120), 240)).verdict;
    expect([at('0.5'), at('0.51'), at('-0.51'), at('-0.5')]).toEqual(['within', 'over', 'over', 'within']);
    expect(plain(rightOf(deflectionLimit(inch(0), inch(120), 360)).limit)).toBeCloseTo(1 / 3, 15);
    expect(leftOf(deflectionLimit(inch(0), inch(120), 0)).tag).toBe('OutsideItsRange');
  });
  it('brake torque: four wheels of it slow the weight as wanted', () => {
    const torque = rightOf(brakeTorquePerWheel(lb(12000), gravity('0.4'), inch(15), 4));
    expect(plain(torque)).toBe(18000);
    const force = lbf((plain(torque) * 4) / 15);
    expect(plain(rightOf(deceleration(force, lb(12000))))).toBeCloseTo(0.4 * 32.174048556, 8);
    expect(leftOf(brakeTorquePerWheel(lb(12000), gravity('0.4'), inch(15), 0)).tag).toBe('OutsideItsRange');
  });
});
