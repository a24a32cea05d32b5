/** Braking of a combination by the published table: rows that agree with themselves, and the force for a weight. */
import { describe, expect, it } from 'vitest';
import { assess } from '../../src/assessment/index.js';
import { brakePerformance } from '../../src/axles/data/brake-performance.js';
import { brakingAsked, brakingCheck, deceleration, stoppingDistance } from '../../src/axles/index.js';
import { report } from '../../src/print/index.js';
import { lb, lbf, mph, quantity, show } from '../../src/units/index.js';
import { leftOf, plain, rightOf } from '../helpers/either.js';
import { tiltDeck } from '../helpers/specs.js';
import { expectReplays } from '../helpers/working.js';

const truck = { towAxles: 2, trailerGvwr: lb(14000), weight: lb(20000) };

describe('49 CFR 393.52(d), table, from memory (verify)', () => {
  it('prints a deceleration that is its share of gravity, to the foot, and distances no shorter than braking alone', () => {
    for (const { forcePercent, deceleration: printed, serviceFt, emergencyFt } of brakePerformance.rows) {
      const slowed = rightOf(deceleration(lbf(Number(forcePercent) * 100), lb(10000)));
      expect(Math.round(plain(slowed))).toBe(Number(printed));
      const bare = plain(rightOf(stoppingDistance(mph(20), quantity(printed, 'ft/s2'))));
      // Row B(1) prints 25 ft where 17 ft/s2 alone takes 25.3 ft: the row is in whole feet.
      expect(Math.floor(bare)).toBeLessThanOrEqual(Number(serviceFt));
      expect(Number(serviceFt)).toBeLessThan(Number(emergencyFt));
    }
  });
  it('has a row for two axles with a trailer of 3,000 lb GVWR or less, the line included', () => {
    const clause = (towAxles: number, gvwr: number) =>
      rightOf(brakingAsked({ towAxles, trailerGvwr: lb(gvwr), weight: lb(9000) })).row.clause;
    expect([clause(2, 3000), clause(2, 3001), clause(3, 3000)]).toEqual(['B(2)', 'B(3)', 'B(3)']);
  });
  it('asks 43.5 % of both: 8,700 lbf of 20,000 lb, an exact tie within', () => {
    const { force, verdict, reserve } = rightOf(brakingCheck(lbf(8700), truck));
    expect([show(force.value), verdict, plain(reserve)]).toEqual(['8,700 lbf', 'within', 0]);
    expect(rightOf(brakingCheck(lbf(8699), truck)).verdict).toBe('short');
    expectReplays(reserve);
    expect(leftOf(brakingCheck(lbf(0), truck)).tag).toBe('OutsideItsRange');
    expect(leftOf(brakingAsked({ ...truck, weight: lb(0) })).tag).toBe('OutsideItsRange');
  });
  it('is told in the answer of the example: 43.5 % of 21,510 lb is 9,357 lbf', () => {
    const answer = rightOf(assess(tiltDeck()));
    expect(plain(answer.tow.combination!)).toBe(21510);
    expect(plain(answer.brakes.asked!.force)).toBeCloseTo(9356.85, 8);
    expect(report(answer)).toMatch(/braking force asked of both \.+ +9,356\.9 lbf +43.5 % of weight/);
    const { tow: _tow, ...alone } = tiltDeck();
    expect(rightOf(assess(alone as never)).brakes.asked).toBeUndefined();
  });
});
