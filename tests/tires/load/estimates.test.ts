/** An estimate of a load between published pressures. */
import { describe, expect, it } from 'vitest';
import { estimateLoadAtPressure } from '../../../src/tires/index.js';
import { lb, psi } from '../../../src/units/index.js';
import { rightOf } from '../../helpers/either.js';

const tags = ({ notes }: { notes: readonly { tag: string }[] }): string[] => notes.map(({ tag }) => tag);

describe('an estimate', () => {
  it('says that it is untested below the lowest tabulated pressure, 15 psi, and not at it', () => {
    const at = (pressure: number | string): string[] =>
      tags(rightOf(estimateLoadAtPressure('ST225/75R15', { load: lb(2540), pressure: psi(65) }, psi(pressure))));
    expect([at(15), at('15.5'), at('14.9')]).toEqual([['Estimate'], ['Estimate'], ['Estimate', 'BelowTables']]);
  });
});
