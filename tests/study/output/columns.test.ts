/** Columns put together from chunks that are used again, with rows between them that have no answer. */
import { describe, expect, it } from 'vitest';
import { columnsOf } from '../../../src/study/output/columns.js';
import type { Source } from '../../../src/study/output/rows.js';
import type { Chunk } from '../../../src/study/run/buffers.js';
import { leftOf, rightOf } from '../../helpers/either.js';

/** Row n has the input n, the figure 10 n, the choice n modulo 2; those in `refused` have a reason. */
function source(count: number, size: number, refused: readonly number[], stopsAfter = count): Source {
  const arrays = {
    choices: [new Int16Array(size)],
    inputs: [new Float64Array(size)],
    figures: [new Float64Array(size)],
    verdict: new Uint8Array(size),
    attention: new Uint32Array(size),
    governs: new Uint16Array(size),
    reasons: new Uint16Array(size),
  };
  function* chunks(from = 0, to = count): Generator<Chunk, void> {
    for (let start = from; start < Math.min(to, stopsAfter); start += size) {
      const rows = Math.min(size, to - start);
      for (let i = 0; i < rows; i += 1) {
        const n = start + i;
        (arrays.choices[0] as Int16Array)[i] = n % 2;
        (arrays.inputs[0] as Float64Array)[i] = n;
        (arrays.figures[0] as Float64Array)[i] = 10 * n;
        arrays.verdict[i] = n % 3;
        arrays.attention[i] = n % 4;
        arrays.governs[i] = n % 2;
        arrays.reasons[i] = refused.includes(n) ? 1 + (n % 2) : 0;
      }
      const names = { attentionNames: ['a', 'b'], governNames: ['x', 'y'], reasonNames: ['', 'even', 'odd'] };
      yield { start, rows, exactRows: 0, ...arrays, ...names };
    }
  }
  return {
    count,
    chunks,
    errorAt: () => undefined,
    choices: [{ name: 'build', choices: ['short', 'long'] }],
    inputs: [{ path: 'at', unit: 'in' }],
    figures: [{ name: 'gross', unit: 'lb' }],
  };
}

describe('columns', () => {
  it.each([
    ['none is refused', [], 0, 11],
    ['some are refused, across the end of a chunk', [0, 3, 4, 5, 9], 0, 11],
    ['the last ones are refused', [8, 9, 10], 0, 11],
    ['all are refused', [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10], 0, 11],
    ['a slice is asked', [3, 4, 9], 3, 10],
  ] as const)('hold the answered rows and list the others, where %s', (_, refused, from, to) => {
    const rows = Array.from({ length: to - from }, (_each, i) => from + i);
    const none = rows.filter((row) => (refused as readonly number[]).includes(row));
    const answered = rows.filter((row) => !none.includes(row));
    const table = rightOf(columnsOf(source(11, 4, refused), from, to));
    expect(table.length).toBe(answered.length);
    expect({
      row: [...table.row],
      at: [...(table.data['at'] ?? [])],
      gross: [...(table.data['gross'] ?? [])],
      build: [...(table.choices['build'] ?? [])],
      verdict: [...table.verdict],
      attention: [...table.attention],
      governs: [...table.governs],
      unanswered: [...table.unanswered.row],
      reasons: [...table.unanswered.reason].map((reason) => table.reasonNames[reason]),
    }).toEqual({
      row: answered,
      at: answered,
      gross: answered.map((n) => 10 * n),
      build: answered.map((n) => n % 2),
      verdict: answered.map((n) => n % 3),
      attention: answered.map((n) => n % 4),
      governs: answered.map((n) => n % 2),
      unanswered: none,
      reasons: none.map((n) => (n % 2 === 0 ? 'even' : 'odd')),
    });
    expect(table).toMatchObject({
      units: { at: 'in', gross: 'lb' },
      choiceNames: { build: ['short', 'long', 'as specified'] },
      verdictNames: ['over', 'attention', 'within', 'unchecked'],
      attentionNames: ['a', 'b'],
      governNames: ['x', 'y'],
    });
  });
  it('of a run that was stopped are refused with the rows that were done', () => {
    expect(leftOf(columnsOf(source(11, 4, [], 5), 0, 11))).toMatchObject({ tag: 'Aborted', afterRows: 8 });
  });
  it('of more than two thousand million bytes are refused before a row is run', () => {
    // 25 bytes a row, 8 for the input, 8 for the figure, 2 for the choice.
    const fit = Math.floor(2e9 / 43);
    const ran = { ...source(1e9, 4, []), chunks: () => expect.fail('a row was run') };
    expect(leftOf(columnsOf(ran, 7, 1e9))).toMatchObject({ tag: 'TooManyRows', count: 1e9 - 7, most: fit });
    expect(leftOf(columnsOf(ran, 0, fit + 1))).toMatchObject({ tag: 'TooManyRows', count: fit + 1 });
    expect(rightOf(columnsOf(source(11, 4, []), 9, 3)).length).toBe(0);
  });
});
