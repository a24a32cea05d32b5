/** Lines of the towing chapter that must not compile. */
import { expect, it } from 'vitest';
import { checkLoad, rating, weight } from '../../src/ratings/index.js';
import type { HitchPlace, TowVehicle } from '../../src/towing/index.js';
import { hitchedAxleLoads, leverScale, tongueByDifference } from '../../src/towing/index.js';
import { foot, inch, lb } from '../../src/units/index.js';

const neverRun = (): void => {
  // @ts-expect-error the bound for an unknown overhang is for a ball behind the axle, not for a gooseneck
  const place: HitchPlace = { hitch: 'gooseneck', overhang: 'unknown' };
  // @ts-expect-error a measured overhang needs the wheelbase
  const short: HitchPlace = { hitch: 'ball behind', overhang: inch(52) };
  // @ts-expect-error the kind of hitch is not a default
  const vehicle: TowVehicle = { gcwr: lb(11000) };
  // @ts-expect-error a length is not a weight
  tongueByDifference(inch(2890), lb(2650));
  // @ts-expect-error a weight is not a length
  leverScale({ reading: lb(1), beamTare: lb(1), pipeToTongue: lb(1), tongueToScale: foot(1), tongueRestsAt: 'coupler' });
  // @ts-expect-error where the tongue rests on the beam is not a default
  leverScale({ reading: lb(1), beamTare: lb(1), pipeToTongue: foot(1), tongueToScale: foot(1) });
  // @ts-expect-error a GCWR does not meet the trailer's gross weight
  checkLoad(rating('GCWR', lb(11000)), weight('gross', lb(12000)));
  // @ts-expect-error the tongue is not a default
  hitchedAxleLoads({ hitch: 'ball behind', overhang: 'unknown', front: lb(1), rear: lb(1) });
  void [place, short, vehicle];
};

it('is read by the type check, not run', () => {
  expect(typeof neverRun).toBe('function');
});
