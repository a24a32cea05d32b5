/** The language does not say how exact its sine is: so the running engine is asked, against decimals of 60 digits. */
import { expect, it } from 'vitest';
import {
  arcSineOf,
  arcTangentOf,
  boundOfArcSine,
  boundOfArcTangent,
  boundOfSine,
  boundOfTangent,
  cosineOf,
  sineOf,
  tangentOf,
} from '../../src/units/doubles.js';
import { exactly, sixtyReading } from './sixty-digits.js';

const angles = [
  0, 1e-9, 0.1, 1, 7.5, 10, 14.9, 15, 29.999, 30, 44, 45, 45.5, 59, 60, 75, 80, 89, 89.9, 90, 120, 180, 270, 359,
];
const ratios = [0, 1e-12, 0.001, 0.1, 0.25, 0.3, 0.5, 0.6, 0.7, 0.75, 0.9, 0.99, 0.9999];
const slopes = [...ratios, 1, 1.5, 2, 5, 57, 1000, 1e9];

const functions = [
  ['sine', angles, sineOf, boundOfSine],
  ['cosine', angles, cosineOf, boundOfSine],
  ['tangent', angles.filter((a) => a % 180 !== 90), tangentOf, boundOfTangent],
  ['arcSine', ratios, arcSineOf, boundOfArcSine],
  ['arcTangent', slopes, arcTangentOf, boundOfArcTangent],
] as const;

it.each(functions)('the %s of this engine is within its bound', (name, inputs, reckon, boundAfter) => {
  for (const size of inputs)
    for (const input of [size, -size, size * 0.987654321]) {
      const off = sixtyReading[name](exactly(input))
        .minus(exactly(reckon(input)))
        .abs()
        .toNumber();
      expect(off, `${name} of ${input}`).toBeLessThanOrEqual(boundAfter(input, 0, reckon(input)));
    }
});

it.each(['sin', 'cos', 'tan', 'asin', 'atan'] as const)('its %s alone uses a tenth of what is allowed', (name) => {
  for (const input of [...ratios, ...slopes, 2.5, 3.1].filter((x) => name !== 'asin' || x <= 1)) {
    const exact = exactly(input)[name]();
    const off = exactly(Math[name](input)).minus(exact).abs();
    expect(off.toNumber(), `${name} of ${input}`).toBeLessThanOrEqual(1e-14 * Math.abs(exact.toNumber()));
  }
});
