/** What a bare figure of a tire or a wheel is taken to rest on: what is molded or stamped on its label, what a gauge says on its word. */
import { describe, expect, it } from 'vitest';
import {
  checkRimPressure,
  checkRimWidth,
  estimateBetweenRows,
  estimateLoadAtPressure,
  estimatePMetricLoad,
  placard,
  pressureForLoad,
  revolutionsPerMile,
  tireGeometry,
  tireLoadRating,
} from '../../src/tires/index.js';
import { inch, kPa, lb, psi, ratio } from '../../src/units/index.js';
import { basesIn } from '../helpers/bases.js';
import { rightOf } from '../helpers/either.js';

const twins = { single: lb(2830), dual: lb(2470), pressure: psi(80) };

describe('bare figures of tires', () => {
  it.each([
    [
      'molded loads and pressure',
      () => tireLoadRating({ designation: 'ST225/75R15 LRE', molded: twins }, { fitment: 'dual', on: 'trailer' }),
      { 'molded load, single': 'label', 'molded load, dual': 'label', 'molded pressure': 'label' },
    ],
    [
      'an estimate by another exponent',
      () => estimateLoadAtPressure('ST225/75R15', { load: lb(2540), pressure: psi(65) }, psi(50), ratio('0.9')),
      { 'load-pressure exponent': 'estimated' },
    ],
    [
      'the formula of passenger tires',
      () => estimatePMetricLoad('P235/75R15', kPa(240)),
      { 'aspect in percent': 'label', 'section width': 'label', rim: 'label', 'formula factor': 'estimated' },
    ],
    [
      'an estimate between rows',
      () => estimateBetweenRows('ST225/75R15 LRD', psi(62), 'single'),
      { 'straight line between the rows': 'estimated', 'cold pressure': 'stated' },
    ],
    [
      'a load and the pressure it needs',
      () => pressureForLoad('ST225/75R15 LRD', lb(2400), 'single'),
      { 'tire load': 'stated' },
    ],
    [
      'the size of a tire',
      () => tireGeometry('ST225/75R15'),
      { 'section width': 'label', 'rim diameter': 'label', 'aspect in percent': 'label' },
    ],
    ['a published diameter', () => revolutionsPerMile(inch('31.7')), { 'published diameter': 'published' }],
    [
      'a wheel and its pressure',
      () => checkRimPressure(psi(80), psi(65)),
      { 'greatest pressure of the wheel': 'label', 'cold pressure': 'stated' },
    ],
    [
      'a placard',
      () =>
        placard({
          gvwr: lb(7000),
          unloaded: lb(2450),
          tires: [{ where: 'axle 1', designation: 'ST205/75R15 LRD', coldPressure: psi(65) }],
        }),
      { GVWR: 'label', 'unloaded weight': 'stated', 'cold pressure': 'stated' },
    ],
  ] as const)('%s', (_, ask, wanted) => {
    expect(basesIn(rightOf<unknown, unknown>(ask()))).toMatchObject(wanted);
  });
  it('the widths of a wheel', () => {
    expect(basesIn(checkRimWidth(inch(6), { least: inch(6), greatest: inch(7) }))).toEqual({
      'rim width': 'label',
      'least rim width': 'label',
      'greatest rim width': 'label',
    });
  });
});
