/** The front against the definition, row by row. */
import { describe, expect, it } from 'vitest';
import { type Goal, levels, pareto, type Row, range, study } from '../../../src/study/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';
import { tiltDeck } from '../compared.js';

const made = rightOf(
  study({
    base: tiltDeck as never,
    vary: { 'cargo.0.weight': range('6,000 lb', '10,000 lb', 17), 'cargo.0.front': range('100 in', '140 in', 21) },
    design: { kind: 'grid' },
  }),
);
const goals: readonly Goal[] = [
  { of: 'cargo.0.weight', want: 'most' },
  { of: 'tongue load', want: 'least' },
  { of: 'tightest reserve', want: 'most' },
];
const score = (row: Row): readonly number[] =>
  row.answered
    ? [
        row.inputs['cargo.0.weight'] as number,
        -(row.figures['tongue load'] as number),
        row.figures['tightest reserve'] as number,
      ].map((x) => Number(x.toPrecision(9)))
    : [];

describe('rows that no other beats', () => {
  it('are those of the definition', () => {
    const rows = [...made.rows()].filter((row) => row.answered && row.verdict !== 'over');
    const beaten = (row: Row): boolean =>
      rows.some((other) => {
        const [a, b] = [score(other), score(row)];
        return a.every((x, k) => x >= (b[k] as number)) && a.some((x, k) => x > (b[k] as number));
      });
    const expected = rows.filter((row) => !beaten(row)).map(({ row }) => row);
    const front = rightOf(pareto(made, goals, ['attention', 'within']));
    expect(front.map(({ row }) => row)).toEqual(expected);
    expect(front.length).toBeGreaterThan(3);
    expect(front.length).toBeLessThan(rows.length);
  });
  it('are among those within, if nothing else is said', () => {
    expect(rightOf(pareto(made, goals)).every((row) => row.answered && row.verdict === 'within')).toBe(true);
  });
  it('are all of those that are equal, and none that is as good and worse in one', () => {
    const rows = (...weights: readonly string[]) =>
      rightOf(
        pareto(
          rightOf(
            study({
              base: tiltDeck as never,
              vary: { 'cargo.0.weight': levels(...weights), 'trailer.gvwr': levels('14,000 lb', '13,000 lb') },
              design: { kind: 'grid' },
            }),
          ),
          [
            { of: 'cargo.0.weight', want: 'most' },
            { of: 'trailer.gvwr', want: 'least' },
          ],
          ['attention', 'within'],
        ),
      ).map(({ row }) => row);
    // The rows by weight, then by GVWR: of each weight the lower GVWR is wanted.
    expect(rows('8,000 lb', '8,000 lb')).toEqual([1, 3]);
    expect(rows('7,000 lb', '8,000 lb', '6,000 lb', '8,000 lb')).toEqual([3, 7]);
  });
  it('are asked by known goals', () => {
    expect(leftOf(pareto(made, [])).tag).toBe('UnusableVariation');
    expect(leftOf(pareto(made, [{ of: 'price', want: 'least' }]))).toMatchObject({ tag: 'UnknownPath', path: 'price' });
  });
});
