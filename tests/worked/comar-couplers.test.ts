/** Coupler classes and hitch test forces: Md. COMAR 11.13.08.04 (classes) and 11.13.08.10 (strengths, test forces), current to 2024-12-27. */
import { describe, expect, it } from 'vitest';
import { couplerClass, hitchTestForces } from '../../src/towing/index.js';
import { lb } from '../../src/units/index.js';
import { plain, rightOf } from '../helpers/either.js';

describe('COMAR 11.13.08.04: class by gross weight', () => {
  it.each([
    [2000, 1],
    [2001, 2],
    [3500, 2],
    [3501, 3],
    [5000, 3],
    [5001, 4],
    [10000, 4],
  ])('%i lb is class %i', (gross, asked) => {
    expect(Number(rightOf(couplerClass(lb(gross))).couplerClass)).toBe(asked);
  });
});

describe('COMAR 11.13.08.10', () => {
  it('class 4 at 10,000 lb: 30,000 along, 10,000 across, 13,000 up, 14,000 down (factors 3.0, 1.0, 1.3, 1.4)', () => {
    const { tension, compression, transverse, verticalTension, verticalCompression } = rightOf(couplerClass(lb(10000)));
    expect([tension, compression, transverse, verticalTension, verticalCompression].map(plain)).toEqual([
      30000, 30000, 10000, 13000, 14000,
    ]);
  });
  it('weight-carrying hitch at 5,000 lb: steps 1, 2 and 4', () => {
    const { forces } = rightOf(hitchTestForces(lb(5000), 'weight carrying'));
    const at = (step: string, component: string): readonly number[] =>
      forces.filter((force) => force.step === step && force.component === component).map(({ force }) => plain(force));
    expect([
      at('1', 'vertical'),
      at('1', 'longitudinal'),
      at('2', 'longitudinal'),
      at('2', 'vertical'),
      at('4', 'transverse'),
    ]).toEqual([[2830], [2830], [2680], [750], [1500]]);
  });
});
