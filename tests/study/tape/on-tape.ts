import { expect } from 'vitest';
import { enoughColumns, isVaried, runBlock, tapeOf } from '../../../src/study/tape/tape.js';
import { constant, type Derived, decimalReading, given, type Node, readNode } from '../../../src/trace/index.js';
import { ratio, type Unit } from '../../../src/units/index.js';

export type Figures = Readonly<Record<string, readonly number[]>>;
export type R = Derived<'ratio'>;

/** What the tape gives for each output, row by row. */
export function onTape(outputs: readonly Node[], inputs: Figures): readonly (readonly number[])[] {
  const paths = Object.keys(inputs);
  const rows = Object.values(inputs)[0]?.length ?? 0;
  const tape = tapeOf(outputs, paths);
  const columns = enoughColumns([], tape, rows);
  for (const [k, path] of paths.entries()) columns[k]?.set(inputs[path] as readonly number[]);
  runBlock(tape, columns, rows);
  for (const [k, path] of paths.entries())
    expect([...(columns[k] as Float64Array)], `the input ${path} is left as it was`).toEqual(inputs[path]);
  return tape.outputs.map((at) =>
    Array.from({ length: rows }, (_, i) =>
      isVaried(at) ? ((columns[at.column] as Float64Array)[i] as number) : at.value,
    ),
  );
}

/** What the decimals give. */
export function inDecimals(outputs: readonly Node[], inputs: Figures): readonly (readonly number[])[] {
  const rows = Object.values(inputs)[0]?.length ?? 0;
  const read = Array.from({ length: rows }, (_, i) => {
    const memo = new Map<Node, ReturnType<typeof decimalReading.leaf>>();
    return outputs.map((node) =>
      readNode(node, decimalReading, memo, (leaf) => {
        const column = leaf.kind === 'given' && leaf.path !== undefined ? inputs[leaf.path] : undefined;
        return column === undefined ? undefined : ratio(column[i] as number).value;
      }).toNumber(),
    );
  });
  return outputs.map((_, k) => read.map((row) => row[k] as number));
}

export function expectSame(outputs: readonly Derived<Unit>[], inputs: Figures): void {
  const nodes = outputs.map(({ why }) => why);
  const [tape, exact] = [onTape(nodes, inputs), inDecimals(nodes, inputs)];
  for (const [k, column] of tape.entries())
    column.forEach((x, i) => {
      const y = exact[k]?.[i] as number;
      expect(Math.abs(x - y), `${outputs[k]?.why.symbol ?? k}, row ${i}: ${x} for ${y}`).toBeLessThanOrEqual(
        1e-9 * Math.max(1, Math.abs(y)),
      );
    });
}

export const input = (path: string, value = 1): R => given(path, ratio(value), 'stated', path);
export const x = input('x', 3);
export const y = input('y', 5);
export const fixed = constant(ratio('2.5'));
export const rows = { x: [1, 0.25, 7.125, 300, 0.001], y: [2, 7.125, 0.5, 299, 12] };
