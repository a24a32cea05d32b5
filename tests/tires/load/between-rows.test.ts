/** The estimate between two printed rows: given with the safe row, named an estimate, never above the next row. */
import { describe, expect, it } from 'vitest';
import { estimateBetweenRows, inflationTables, loadAtPressure, tireLoadAsRun } from '../../../src/tires/index.js';
import { psi, show } from '../../../src/units/index.js';
import { leftOf, plain, rightOf } from '../../helpers/either.js';
import { expectReplays } from '../../helpers/working.js';

describe('between the rows of 60 and 65 psi of ST225/75R15 (ST-2: 2,380 and 2,540 lb)', () => {
  it('62 psi: 2,380 + 160 x 2/5 = 2,444 lb, beside the printed 2,380', () => {
    const found = rightOf(estimateBetweenRows('ST225/75R15 LRD', psi(62), 'single'));
    expect([show(found.estimate.value), show(found.safe.load.value), show(found.safe.row.value)]).toEqual([
      '2,444 lb',
      '2,380 lb',
      '60 psi',
    ]);
    expect(found.notes[0]).toMatchObject({ tag: 'EstimateBetweenRows' });
    expect(found.estimate.why.basis).toBe('estimated');
    expectReplays(found.estimate);
  });
  it('is the row itself at a printed pressure', () => {
    expect(plain(rightOf(estimateBetweenRows('ST225/75R15 LRD', psi(60), 'single')).estimate)).toBe(2380);
    expect(plain(rightOf(estimateBetweenRows('ST225/75R15 LRD', psi(65), 'single')).estimate)).toBe(2540);
  });
  it('answers nothing that the rows do not answer', () => {
    expect(leftOf(estimateBetweenRows('ST225/75R15 LRD', psi(66), 'single')).tag).toBe('PressureAboveRated');
    expect(leftOf(estimateBetweenRows('ST225/75R15 LRD', psi(14), 'single')).tag).toBe('NotTabulated');
  });
  it('does not enter what a tire carries as run', () => {
    const run = rightOf(
      tireLoadAsRun({ designation: 'ST225/75R15 LRD' }, { fitment: 'single', on: 'trailer' }, psi(62)),
    );
    expect([plain(run.load), run.from]).toEqual([2380, 'table']);
  });
});

it('lies from the safe row to the next one, over every two neighbouring rows of a table', () => {
  let asked = 0;
  for (const { name, rows } of inflationTables)
    for (const [size, , at] of rows) {
      const pressure = psi(Number(at) + 2);
      const safe = loadAtPressure(size, pressure, 'single', { table: name });
      const found = estimateBetweenRows(size, pressure, 'single', { table: name });
      expect(found._tag, size).toBe(safe._tag);
      if (found._tag === 'Left' || safe._tag === 'Left') continue;
      asked += 1;
      expect(plain(found.right.estimate), `${size} at ${at} psi`).toBeGreaterThanOrEqual(
        Math.floor(plain(safe.right.load)),
      );
      const top = Math.max(...rows.filter((row) => row[0] === size).map((row) => Number(row[3])));
      expect(plain(found.right.estimate), `${size} at ${at} psi`).toBeLessThanOrEqual(top);
    }
  expect(asked).toBeGreaterThan(70);
});
