/** Whether the ramps carry the machine, by the basis of their rating. */
import { describe, expect, it } from 'vitest';
import { rampCapacity } from '../../../src/load/index.js';
import { rating } from '../../../src/ratings/index.js';
import { nodesOf } from '../../../src/trace/index.js';
import { lb } from '../../../src/units/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';
import { expectReplays } from '../../helpers/working.js';

describe('rampCapacity', () => {
  it('cannot answer an axle rating from the machine weight alone, and never halves it', () => {
    expect(
      leftOf(rampCapacity(rating('ramp pair, axle', lb(3500)), { weight: lb(6000), axleLoads: 'unknown' })).tag,
    ).toBe('MachineAxleLoadsMissing');
  });
  it('holds the heaviest axle against an axle rating, the whole machine against a machine rating', () => {
    const machine = { weight: lb(6000), axleLoads: [lb(2400), lb(3600)] };
    const checks = [
      rightOf(rampCapacity(rating('ramp pair, axle', lb(3600)), machine)),
      rightOf(rampCapacity(rating('ramp pair, axle', lb(3599)), machine)),
      rightOf(rampCapacity(rating('ramp pair, machine', lb(6000)), { ...machine, axleLoads: 'unknown' })),
      rightOf(rampCapacity(rating('ramp pair, machine', lb(5999)), machine)),
    ];
    expect(checks.map(({ check }) => check.verdict)).toEqual(['within', 'over', 'within', 'over']);
    expectReplays(...checks.map(({ check }) => check.reserve));
  });
  it('names the axles from one', () => {
    const machine = { weight: lb(6000), axleLoads: [lb(2400), lb(3600)] };
    const { check } = rightOf(rampCapacity(rating('ramp pair, axle', lb(3600)), machine));
    const names = nodesOf([check.load.why]).map(({ symbol }) => symbol);
    expect(names).toEqual(expect.arrayContaining(['load of machine axle 1', 'load of machine axle 2']));
  });
  it('refuses a machine without weight', () => {
    for (const rated of [rating('ramp pair, machine', lb(3500)), rating('ramp pair, axle', lb(3500))])
      expect(leftOf(rampCapacity(rated, { weight: lb(0), axleLoads: [lb(0)] }))).toMatchObject({
        what: 'machine weight',
      });
  });
  it('refuses an axle heavier than its machine', () => {
    expect(
      leftOf(rampCapacity(rating('ramp pair, axle', lb(3500)), { weight: lb(3000), axleLoads: [lb(3600)] })).tag,
    ).toBe('OutsideItsRange');
  });
});
