/** Lines that must not compile: ratings and weights that may not meet when a machine is loaded. */
import { describe, expect, it } from 'vitest';
import { placementWindow, rampAngle, rampCapacity, type TrailerForPlacing } from '../../src/load/index.js';
import { checkLoad, rating, weight } from '../../src/ratings/index.js';
import { degree, inch, lb } from '../../src/units/index.js';
import { machine, r1 } from '../load/reference-case.js';

describe('what does not compile', () => {
  it('a ramp rating by axle does not meet the machine weight, nor the other way round', () => {
    // @ts-expect-error a pair rated by axle load limits an axle load
    expect(checkLoad(rating('ramp pair, axle', lb(3500)), weight('machine weight', lb(6000))).verdict).toBe('over');
    // @ts-expect-error a pair rated by machine weight limits the whole machine
    expect(checkLoad(rating('ramp pair, machine', lb(6000)), weight('machine axle load', lb(3600))).verdict).toBe('within');
  });
  it('a GVWR is no ramp rating, a gross rating no tongue limit', () => {
    // @ts-expect-error a GVWR limits the trailer, not the machine on its ramps
    expect(() => rampCapacity(rating('GVWR', lb(14000)), { weight: lb(6000), axleLoads: 'unknown' })).not.toThrow();
    // @ts-expect-error the gross rating of a receiver does not limit the tongue load
    const wrong: TrailerForPlacing = { ...r1, tongueLimits: [rating('receiver gross', lb(12000))] };
    expect(placementWindow(wrong, machine)._tag).toBe('Right');
  });
  it('an angle is no length', () => {
    // @ts-expect-error degrees are not a ramp length
    const ask = (): unknown => rampAngle(inch(34), degree(20));
    expect(ask).toBeTypeOf('function');
  });
});
