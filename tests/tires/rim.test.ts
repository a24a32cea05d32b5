/** Rims: pressure and width. */
import { describe, expect, it } from 'vitest';
import { checkRimPressure, checkRimWidth } from '../../src/tires/index.js';
import { inch, mm, psi, show } from '../../src/units/index.js';
import { leftOf, rightOf } from '../helpers/either.js';
import { expectReplays } from '../helpers/working.js';

describe('rims', () => {
  it('checks pressure, within at a tie', () => {
    const [over, tie] = [rightOf(checkRimPressure(psi(80), psi(65))), rightOf(checkRimPressure(psi(65), psi(65)))];
    expectReplays(over.reserve, tie.reserve);
    expect([over.verdict, show(over.reserve.value), tie.verdict]).toEqual(['over', '-15 psi', 'within']);
    expect(leftOf(checkRimPressure(psi(80), psi(0)))).toMatchObject({ tag: 'NotPositive' });
  });
  it('checks the width both ways, in any unit of length', () => {
    const verdicts = (width: Parameters<typeof checkRimWidth>[0]): string[] =>
      Object.values(checkRimWidth(width, { least: inch(6), greatest: inch(7) })).map(({ verdict }) => verdict);
    expect([verdicts(inch(6)), verdicts(inch(7)), verdicts(inch(5)), verdicts(mm('203.2'))]).toEqual([
      ['within', 'within'],
      ['within', 'within'],
      ['over', 'within'],
      ['within', 'over'],
    ]);
    expectReplays(
      ...Object.values(checkRimWidth(mm(165), { least: inch(6), greatest: inch(7) })).map(({ reserve }) => reserve),
    );
  });
});
