/** Plain plate: every printed row from its own columns, and the refusals. */
import { describe, expect, it } from 'vitest';
import { plateWeights } from '../../../src/members/data/plate-weights.js';
import { aluminiumDensity, plateWeight, steelDensity, steelDensityByPlate } from '../../../src/members/index.js';
import { inch, lbPerFt3, mm } from '../../../src/units/index.js';
import { leftOf, plain, rightOf } from '../../helpers/either.js';
import { expectReplays } from '../../helpers/working.js';

describe('plate', () => {
  it.each([...plateWeights.rows])(
    '$nominal in weighs as printed at 490 lb/ft3 and at 40.8 lb/ft2 per inch',
    ({ thickness, weight, weightAt40_8 }) => {
      const at490 = rightOf(plateWeight(inch(thickness), steelDensity));
      expect(Math.abs(plain(at490) - Number(weight))).toBeLessThan(0.00051);
      expect(plain(rightOf(plateWeight(inch(thickness), steelDensityByPlate)))).toBeCloseTo(Number(weightAt40_8), 9);
      expectReplays(at490);
    },
  );
  it('weighs rubber by its maker and aluminium by its density', () => {
    expect(plain(rightOf(plateWeight(inch('0.5'), lbPerFt3(72))))).toBeCloseTo(3, 12);
    expect(plain(rightOf(plateWeight(mm('3.175'), aluminiumDensity)))).toBeCloseTo(1.764, 9);
  });
  it('refuses no thickness and no density', () => {
    expect(leftOf(plateWeight(inch(0), steelDensity))).toMatchObject({ tag: 'OutsideItsRange', what: 'thickness' });
    expect(leftOf(plateWeight(inch(1), lbPerFt3(-1)))).toMatchObject({ tag: 'OutsideItsRange', what: 'density' });
  });
});
