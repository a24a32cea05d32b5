/** A run in numbers: every row counted once, by its verdict or by the reason why it has none. */
import { expect, it } from 'vitest';
import type { Chunk } from '../../../src/study/run/buffers.js';
import { summaryText, Tally } from '../../../src/study/run/summary.js';

const chunk = (start: number, verdict: readonly number[], reasons: readonly number[], rows = verdict.length): Chunk =>
  ({
    start,
    rows,
    verdict: Uint8Array.from(verdict),
    reasons: Uint16Array.from(reasons),
    reasonNames: ['', 'no GVWR', 'no tires', 'no tongue'],
  }) as unknown as Chunk;

it('of no chunk is nothing', () => {
  const { summary } = new Tally();
  expect(summary).toEqual({
    rows: 0,
    answered: 0,
    verdicts: { over: 0, attention: 0, within: 0, unchecked: 0 },
    unanswered: [],
  });
  expect(summaryText(summary)).toBe('0 rows');
});

it('counts verdicts, and reasons with their first rows, the most frequent first and of two alike the earlier', () => {
  const tally = new Tally();
  tally.add(chunk(0, [0, 1, 2, 2, 3, 0, 0], [0, 0, 0, 0, 0, 2, 1]));
  // The last place belongs to no row.
  tally.add(chunk(7, [2, 2, 0, 0, 2], [3, 0, 2, 1, 0], 4));
  const { summary } = tally;
  expect(summary).toEqual({
    rows: 11,
    answered: 6,
    verdicts: { over: 1, attention: 1, within: 3, unchecked: 1 },
    unanswered: [
      { reason: 'no tires', rows: 2, first: 5 },
      { reason: 'no GVWR', rows: 2, first: 6 },
      { reason: 'no tongue', rows: 1, first: 7 },
    ],
  });
  expect(summaryText(summary)).toBe(
    [
      '11 rows: 1 over, 1 attention, 3 within, 1 unchecked, 5 without an answer',
      '  no tires: 2, the first is row 5',
      '  no GVWR: 2, the first is row 6',
      '  no tongue: 1, the first is row 7',
    ].join('\n'),
  );
});
