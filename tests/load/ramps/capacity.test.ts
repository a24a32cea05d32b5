/** Whether the ramps carry the machine, by the basis of their rating. */
import { describe, expect, it } from 'vitest';
import { rampCapacity } from '../../../src/load/index.js';
import { rating } from '../../../src/ratings/index.js';
import { lb } from '../../../src/units/index.js';
import { leftOf } from '../../helpers/either.js';

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
