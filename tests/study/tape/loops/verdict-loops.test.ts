/** The loops that judge rows, against the words of their comments, row by row; figures on the edges of the bands are asked by name. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Share } from '../../../../src/study/tape/loops/columns.js';
import { below, judgeFour, verdicts } from '../../../../src/study/tape/loops/verdict-loops.js';

/** A band so wide that it is met often: 1/8, and two of it around the limit. */
const band = 0.125;
const rows = 6;
/** Eighths around one: 0.75 and 1.25 are the ends of what is too near to the limit. */
const eighths = fc.array(
  fc.integer({ min: -4, max: 14 }).map((n) => n / 8),
  { minLength: rows, maxLength: rows },
);

interface Judged {
  readonly holds: readonly number[];
  readonly nearLimit: readonly number[];
  readonly nearTie: readonly number[];
}

/** What is asked of the greatest and the second greatest share of each row. */
function expected(pairs: readonly (readonly [number, number])[], held: number): Judged {
  const where = (is: (most: number, second: number) => boolean): readonly number[] =>
    pairs.flatMap(([most, second], row) => (is(most, second) ? [row] : []));
  return {
    holds: pairs.map(([most]) => (most > 1.25 ? 0 : held)),
    nearLimit: where((most) => most > 0.75 && most <= 1.25),
    nearTie: where((most, second) => most - second <= Math.abs(most) / 8),
  };
}

function told(
  judge: (holds: Uint8Array, nearLimit: (row: number) => void, nearTie: (row: number) => void) => void,
): Judged {
  const [nearLimit, nearTie]: [number[], number[]] = [[], []];
  const holds = new Uint8Array(rows).fill(5);
  judge(
    holds,
    (row) => nearLimit.push(row),
    (row) => nearTie.push(row),
  );
  return { holds: [...holds], nearLimit, nearTie };
}

describe('rows are judged by their greatest share', () => {
  it('of four columns, each times a number plus a number', () => {
    const line = fc.record({ column: eighths, times: fc.constantFrom(1, -1, 2), plus: fc.constantFrom(0, 1, 0.25) });
    fc.assert(
      fc.property(line, line, line, line, fc.constantFrom(0, 1), (a, b, c, d, held) => {
        const whose = new Uint16Array(rows);
        const share = (each: typeof a): Share => ({ ...each, column: Float64Array.from(each.column) });
        const four = [share(a), share(b), share(c), share(d)] as const;
        const found = told((holds, limit, tie) => judgeFour(four, whose, holds, held, band, rows, limit, tie));
        const used = Array.from({ length: rows }, (_, i) =>
          [a, b, c, d].map(({ column, times, plus }) => times * (column[i] as number) + plus),
        );
        const pairs = used.map((all) => {
          const [most, second] = [...all].sort((x, y) => y - x);
          return [most as number, second as number] as const;
        });
        expect(found).toEqual(expected(pairs, held));
        expect([...whose]).toEqual(used.map((all, i) => all.indexOf((pairs[i] as readonly [number, number])[0])));
      }),
      { numRuns: 1000 },
    );
  });
  it('of the greatest and the second greatest', () => {
    fc.assert(
      fc.property(eighths, eighths, fc.constantFrom(0, 1), (one, other, held) => {
        const pairs = one.map((x, i) => [Math.max(x, other[i] as number), Math.min(x, other[i] as number)] as const);
        const [most, second] = [0, 1].map((k) => Float64Array.from(pairs, (pair) => pair[k] as number)) as [
          Float64Array,
          Float64Array,
        ];
        expect(told((holds, limit, tie) => verdicts(most, second, holds, held, band, rows, limit, tie))).toEqual(
          expected(pairs, held),
        );
      }),
      { numRuns: 500 },
    );
  });
  it('by a reserve: over below the band around zero, asked within it, left alone above', () => {
    const near: number[] = [];
    const holds = new Uint8Array(8).fill(1);
    below(Float64Array.of(3, 2.001, 2, 0, -2, -2.001, -3, -9), 2, holds, 7, (row) => near.push(row));
    expect([...holds]).toEqual([1, 1, 1, 1, 1, 0, 0, 1]);
    expect(near).toEqual([2, 3, 4]);
  });
  it('and no row beyond those asked', () => {
    const column = Float64Array.of(2, 2, 2);
    const [whose, holds] = [Uint16Array.of(7, 7, 7), Uint8Array.of(7, 7, 7)];
    const seen: number[] = [];
    const see = (row: number): void => void seen.push(row);
    const one = { column: Float64Array.of(1, 1, 1), times: 1, plus: 0 };
    judgeFour([one, one, one, one], whose, holds, 1, band, 2, see, see);
    verdicts(column, column, holds, 1, band, 2, see, see);
    expect([whose[2], holds[2], Math.max(...seen)]).toEqual([7, 7, 1]);
  });
});
