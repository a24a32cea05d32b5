/** Pairs of rating and weight that must not compile. */
import { expect, it } from 'vitest';
import { capacity, checkLoad, checkPart, rating, weight } from '../../src/ratings/index.js';
import { foot, kg, lb } from '../../src/units/index.js';

/** Never called: the compiler reads it, nobody runs it. */
export function mustNotCompile(): void {
  // @ts-expect-error an axle rating does not limit the gross weight
  checkLoad(rating('GAWR', lb(5200)), weight('gross', lb(5000)));
  // @ts-expect-error nor the gross rating an axle load
  checkLoad(rating('GVWR', lb(14000)), weight('axle load', lb(5000)));
  // @ts-expect-error a coupler's gross rating does not limit the tongue load
  checkLoad(rating('coupler gross', lb(14000)), weight('tongue', lb(1500)));
  // @ts-expect-error a tire bears its share of the axle, not the axle
  checkLoad(rating('tire', lb(2540)), weight('axle load', lb(5000)));
  // @ts-expect-error the combined rating limits the combination, not the trailer
  checkLoad(rating('GCWR', lb(30000)), weight('gross', lb(14000)));
  // @ts-expect-error a weight is not a rating
  checkLoad(weight('gross', lb(14000)), rating('GVWR', lb(14000)));
  // @ts-expect-error a bare figure is not a weight of a kind
  checkLoad(rating('GVWR', lb(14000)), lb(12400));
  // @ts-expect-error ratings are in pounds
  rating('GVWR', kg(6350));
  // @ts-expect-error weights are in pounds
  weight('gross', foot(20));
  // @ts-expect-error no such rating
  rating('payload', lb(1));
  // @ts-expect-error no such weight
  weight('weight', lb(1));
  // @ts-expect-error tires must bear the GAWR; the gross rating is not theirs
  checkPart(capacity('tires', lb(5080)), rating('GVWR', lb(14000)));
  // @ts-expect-error a coupler is no part of an axle system
  capacity('coupler', lb(1));
}

it('and the legal pairs do compile', () => {
  expect(checkLoad(rating('GAWR', lb(5200)), weight('axle load', lb(5000))).verdict).toBe('within');
  expect(checkPart(capacity('tires', lb(5080)), rating('GAWR', lb(5200))).verdict).toBe('over');
});
