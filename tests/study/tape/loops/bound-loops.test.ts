/** The loops that watch bounds: a row is found when it is outside an end of any column, and both ends are inside. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { outsideFour, outsideTwo } from '../../../../src/study/tape/loops/bound-loops.js';

const rows = 5;
const figure = fc.constantFrom(-2, -1, 0, 1, 2, Number.NaN);
const watched = fc.record({
  column: fc.array(figure, { minLength: rows, maxLength: rows }),
  low: fc.constantFrom(-1, 0, -Infinity),
  high: fc.constantFrom(0, 1, Infinity),
});
const isInside = ({ column, low, high }: { column: number[]; low: number; high: number }, row: number): boolean =>
  low <= (column[row] as number) && (column[row] as number) <= high;

it('finds the rows that one of two or of four columns is outside on; a figure that is none is outside', () => {
  fc.assert(
    fc.property(watched, watched, watched, watched, fc.integer({ min: 0, max: rows }), (a, b, c, d, count) => {
      const [x, y, z, u] = [a, b, c, d].map(({ column }) => Float64Array.from(column)) as [
        Float64Array,
        Float64Array,
        Float64Array,
        Float64Array,
      ];
      const outside = (...bounds: readonly (typeof a)[]): readonly number[] =>
        Array.from({ length: count }, (_, row) => row).filter((row) => !bounds.every((bound) => isInside(bound, row)));
      const [two, four]: [number[], number[]] = [[], []];
      outsideTwo(x, y, a.low, a.high, b.low, b.high, count, (row) => two.push(row));
      outsideFour(x, y, z, u, a.low, a.high, b.low, b.high, c.low, c.high, d.low, d.high, count, (row) =>
        four.push(row),
      );
      expect(two).toEqual(outside(a, b));
      expect(four).toEqual(outside(a, b, c, d));
    }),
    { numRuns: 1000 },
  );
});
