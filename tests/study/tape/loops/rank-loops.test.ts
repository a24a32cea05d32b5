/** The loops that rank shares used, against a sorted list of each row; small whole figures, so that many shares are equal. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { rank } from '../../../../src/study/tape/loops/rank-loops.js';

const rows = 7;
const small = fc.integer({ min: -3, max: 3 });
const share = fc.record({ figures: fc.array(small, { minLength: rows, maxLength: rows }), times: small, plus: small });

it('finds the greatest, the second greatest and the first that is the greatest, of none to ten shares', () => {
  fc.assert(
    fc.property(fc.array(share, { maxLength: 10 }), (shares) => {
      const [most, second, whose] = [new Float64Array(rows), new Float64Array(rows), new Uint16Array(rows).fill(9)];
      const ranked = shares.map(({ figures, ...line }) => ({ ...line, column: Float64Array.from(figures) }));
      rank(ranked, most, second, whose, rows);
      for (let i = 0; i < rows; i += 1) {
        const used = shares.map(({ figures, times, plus }) => times * (figures[i] as number) + plus);
        const [first = -Infinity, next = -Infinity] = [...used].sort((a, b) => b - a);
        expect([most[i], second[i], whose[i]]).toEqual([first + 0, next + 0, Math.max(0, used.indexOf(first))]);
      }
    }),
    { numRuns: 500 },
  );
});

it('leaves the rows beyond those asked as they are', () => {
  const column = Float64Array.of(1, 2, 3);
  const [most, second, whose] = [Float64Array.of(7, 7, 7), Float64Array.of(7, 7, 7), Uint16Array.of(7, 7, 7)];
  for (const count of [1, 4]) {
    rank(
      Array.from({ length: count }, () => ({ column, times: 2, plus: 1 })),
      most,
      second,
      whose,
      2,
    );
    expect([...most]).toEqual([3, 5, 7]);
    expect(second[2]).toBe(7);
    expect([...whose]).toEqual([0, 0, 7]);
  }
});
