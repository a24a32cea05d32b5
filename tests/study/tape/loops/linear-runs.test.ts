/** Linear runs of any number of columns and targets against the sum they stand for. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { runsBySources } from '../../../../src/study/tape/loops/linear-runs.js';

const rows = 3;
const whole = fc.integer({ min: -9, max: 9 });

/** Forms over the columns 0 to 3, those of equal columns not beside each other. */
const forms = fc.array(
  fc.record({
    sources: fc.subarray([0, 1, 2, 3], { minLength: 1 }),
    times: fc.array(whole, { minLength: 4, maxLength: 4 }),
    plus: whole,
  }),
  { minLength: 1, maxLength: 14 },
);

it('writes every target once, from its own columns, and no row beyond those asked', () => {
  fc.assert(
    fc.property(forms, fc.array(whole, { minLength: 12, maxLength: 12 }), (asked, figures) => {
      const inputs = [0, 1, 2, 3].map((k) => Float64Array.from([...figures.slice(3 * k, 3 * k + 3), 99]));
      const columns = [...inputs, ...asked.map(() => new Float64Array(rows + 1).fill(77))];
      const placed = asked.map(({ sources, times, plus }, k) => ({ sources, target: { column: 4 + k, times, plus } }));
      for (const run of runsBySources(placed)) run(columns, rows);
      for (const [k, { sources, times, plus }] of asked.entries())
        expect([...(columns[4 + k] as Float64Array)].map((x) => x + 0)).toEqual([
          ...Array.from({ length: rows }, (_, row) =>
            sources.reduce((sum, source, n) => sum + (times[n] as number) * (columns[source]?.[row] as number), plus),
          ),
          77,
        ]);
      for (const [k, input] of inputs.entries()) expect([...input]).toEqual([...figures.slice(3 * k, 3 * k + 3), 99]);
    }),
    { numRuns: 500 },
  );
});

it('runs up to four targets of one column together, and up to three of two', () => {
  const runs = (sources: readonly number[], targets: number): number =>
    runsBySources(
      Array.from({ length: targets }, (_, k) => ({ sources, target: { column: 9 + k, times: [1, 1, 1], plus: 0 } })),
    ).length;
  expect([1, 2, 3, 4, 5, 6, 7, 8].map((targets) => runs([0], targets))).toEqual([1, 1, 2, 1, 2, 2, 3, 2]);
  expect([1, 2, 3, 4, 5, 6, 7].map((targets) => runs([0, 1], targets))).toEqual([1, 1, 1, 2, 2, 2, 3]);
  expect([1, 2, 3].map((targets) => runs([0, 1, 2], targets))).toEqual([1, 2, 3]);
});
