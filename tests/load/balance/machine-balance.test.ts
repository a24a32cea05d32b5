import { describe, expect, it } from 'vitest';
import { machineBalance } from '../../../src/load/index.js';
import { inch, lb, show } from '../../../src/units/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';
import { expectReplays } from '../../helpers/working.js';

const scaled = { frontAxle: lb(3600), rearAxle: lb(2400), wheelbase: inch(50), frontFaceToAxle: inch(30) };

describe('machineBalance', () => {
  it('2,400 of 6,000 lb on the rear axle: 20 in behind the front axle', () => {
    const answer = rightOf(machineBalance(scaled));
    expect([show(answer.weight.value), show(answer.behindFrontAxle.value), show(answer.balancePoint.value)]).toEqual([
      '6,000 lb',
      '20 in',
      '50 in',
    ]);
    expectReplays(answer.weight, answer.behindFrontAxle, answer.balancePoint);
  });
  it('refuses a machine of no weight or no wheelbase', () => {
    expect(leftOf(machineBalance({ ...scaled, frontAxle: lb(0), rearAxle: lb(0) })).tag).toBe('OutsideItsRange');
    expect(leftOf(machineBalance({ ...scaled, wheelbase: inch(0) })).tag).toBe('OutsideItsRange');
    expect(leftOf(machineBalance({ ...scaled, rearAxle: lb(-1) })).tag).toBe('OutsideItsRange');
  });
});
