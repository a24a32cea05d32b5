/** Pressure for a load. */
import { describe, expect, it } from 'vitest';
import { pressureForLoad } from '../../../src/tires/index.js';
import { kg, lb, show } from '../../../src/units/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';

const tags = ({ notes }: { notes: readonly { tag: string }[] }): string[] => notes.map(({ tag }) => tag);

describe('pressureForLoad', () => {
  it('rounds up to the next printed step, at a tie not further', () => {
    for (const [load, pressure] of [
      [lb(2270), '55 psi'],
      [lb('2270.01'), '60 psi'],
      [lb(2380), '60 psi'],
      [lb('2380.01'), '65 psi'],
      [kg(1000), '55 psi'],
      [lb(5), '15 psi'],
    ] as const) {
      expect(show(rightOf(pressureForLoad('ST225/75R15 LRD', load, 'single')).pressure.value)).toBe(pressure);
    }
  });
  it('tells what loadAtPressure tells: prints that differ, letters to be careful with', () => {
    const found = rightOf(pressureForLoad('ST205/75R14 LRD', lb(2000), 'single'));
    expect([show(found.pressure.value), tags(found)]).toEqual(['65 psi', ['TablesDisagree']]);
    const unstated = rightOf(pressureForLoad('5.30x12 LRC', lb(500), 'single'));
    expect(tags(unstated)).toContain('ConstructionUnstated');
  });
  it('is not tabulated above the last row of the tire', () => {
    expect(leftOf(pressureForLoad('ST225/75R15 LRD', lb(2541), 'single'))).toMatchObject({
      tag: 'NotTabulated',
      nearest: ['2,380 lb at 60 psi', '2,540 lb at 65 psi'],
    });
    expect(leftOf(pressureForLoad('ST225/75R15 LRD', lb(-1), 'single'))).toMatchObject({ tag: 'NotPositive' });
  });
});
