/** Figures in any unit, converted to the unit of the calculation. */
import { describe, expect, it } from 'vitest';
import { inFeet, inInches, inPounds } from '../../src/trace/index.js';
import { foot, inch, kg, lb, metre, mm, show, tonne } from '../../src/units/index.js';
import { expectReplays } from '../helpers/working.js';

describe('figures in pounds and inches', () => {
  it('are themselves, or a recorded conversion', () => {
    expect(
      [inPounds('w', lb(9200)), inPounds('w', kg('453.59237')), inPounds('w', tonne('0.45359237'))].map(
        ({ value, why }) => [show(value), why.kind],
      ),
    ).toEqual([
      ['9,200 lb', 'given'],
      ['1,000 lb', 'computed'],
      ['1,000 lb', 'computed'],
    ]);
    expect(
      [
        inInches('x', inch(171)),
        inInches('x', mm(2540)),
        inInches('x', foot('16.5')),
        inInches('x', metre('2.54')),
      ].map(({ value }) => show(value)),
    ).toEqual(['171 in', '100 in', '198 in', '100 in']);
    expect(show(inFeet('x', inch(240)).value)).toBe('20 ft');
    expect(inPounds('GVWR', lb(14000), 'label').why.basis).toBe('label');
    expectReplays(inPounds('w', kg(1150)), inInches('x', mm(1234)), inFeet('x', mm(1234)));
  });
});
