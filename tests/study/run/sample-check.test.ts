/** The check before a study is handed over: a tape that differs from `assess` in anything is a defect, and says in what. */
import { left, right } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import type { Chunk } from '../../../src/study/run/buffers.js';
import { missingFigure, type WholeRow } from '../../../src/study/run/rows-by-assess.js';
import type { Runner } from '../../../src/study/run/runner.js';
import { checkSample, sampledRows } from '../../../src/study/run/sample-check.js';

const assessed: WholeRow = { figures: [1400, 0.5], verdict: 'over', attention: ['Tiedowns'], governs: 'ball' };
const chunk: Chunk = {
  start: 0,
  rows: 1,
  choices: [],
  inputs: [],
  exactRows: 0,
  figures: [Float64Array.of(1400), Float64Array.of(0.5)],
  verdict: Uint8Array.of(0),
  attention: Uint32Array.of(1),
  attentionNames: ['Tiedowns', 'HangsUp'],
  governs: Uint16Array.of(1),
  governNames: ['axle 1', 'ball'],
  reasons: Uint16Array.of(0),
  reasonNames: ['', 'MissingFact: GVWR'],
};
/** What is found where the tape gives this and `assess` that. */
const found = (tape: object, outcome: unknown = right(assessed)) => {
  const runner = { run: () => [{ ...chunk, ...tape }], assessed: () => outcome } as unknown as Runner;
  return checkSample(runner, ['tongue load', 'share'], 1);
};

describe('a sampled row', () => {
  it('passes where all agrees, rounding of doubles aside', () => {
    expect(found({})).toBeUndefined();
    expect(found({ figures: [Float64Array.of(1400 * (1 + 1e-12)), Float64Array.of(0.5)] })).toBeUndefined();
    expect(found({ reasons: Uint16Array.of(1) }, left(missingFigure('GVWR')))).toBeUndefined();
  });
  it.each([
    ['a figure', { figures: [Float64Array.of(1400), Float64Array.of(0.5001)] }, 'share', '0.5001', '0.5'],
    [
      'a figure that is none',
      { figures: [Float64Array.of(Number.NaN), Float64Array.of(0.5)] },
      'tongue load',
      'NaN',
      '1400',
    ],
    ['a figure that is not there', { figures: [Float64Array.of(1400)] }, 'share', 'undefined', '0.5'],
    ['the verdict', { verdict: Uint8Array.of(2) }, 'verdict', 'within', 'over'],
    ['more attention', { attention: Uint32Array.of(3) }, 'attention', 'Tiedowns + HangsUp', 'Tiedowns'],
    ['other attention', { attention: Uint32Array.of(2) }, 'attention', 'HangsUp', 'Tiedowns'],
    ['what governs', { governs: Uint16Array.of(0) }, 'governs', 'axle 1', 'ball'],
    ['no answer', { reasons: Uint16Array.of(1) }, 'answer', 'MissingFact: GVWR', 'answered'],
  ] as const)('is a defect in %s', (_, tape, column, said, exact) => {
    expect(found(tape)).toMatchObject({ tag: 'TapeMismatch', row: 0, column, tape: said, exact });
  });
  it('may differ by a thousand-millionth of the figure, or of one', () => {
    const differs = (exact: number, by: number): boolean =>
      found(
        { figures: [Float64Array.of(1400), Float64Array.of(exact + by)] },
        right({ ...assessed, figures: [1400, exact] }),
      ) !== undefined;
    expect([differs(0.5, 0.9e-9), differs(0.5, 1.1e-9), differs(-0.5, -1.1e-9)]).toEqual([false, true, true]);
    expect([differs(5000, 4.9e-6), differs(5000, 5.1e-6), differs(-5000, -5.1e-6)]).toEqual([false, true, true]);
  });
  it('is a defect where the tape answers and `assess` does not', () => {
    expect(found({}, left(missingFigure('GVWR')))).toMatchObject({ column: 'answer', tape: 'answered' });
  });
});

it('every row of a small study is sampled; of a large one at most 24, none twice', () => {
  expect(sampledRows(24)).toEqual(Array.from({ length: 24 }, (_, row) => row));
  for (const count of [25, 1000, 1_000_000]) {
    const rows = sampledRows(count);
    expect(new Set(rows).size).toBe(Math.min(24, Math.ceil(count / 100)));
    expect(Math.max(...rows)).toBeLessThan(count);
  }
});
