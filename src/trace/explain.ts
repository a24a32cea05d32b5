/** The working in words and numbers: symbol = formula = numbers = result, source; each shared step once. */
import { inReaderUnits, type ReaderUnits, type Unit } from '../units/index.js';
import { wrapText } from '../units/internal.js';
import { byFigure, byName, figure, formula } from './formula.js';
import type { Derived, Node, Operation } from './node.js';
import { nodesOf } from './replay.js';
import { citation } from './source.js';

/** How a working is to be written. */
export interface ExplainOptions {
  /** Feet, inches and pounds as they were computed (`us`, the default), or millimetres, kilograms and kilopascals. */
  readonly units?: ReaderUnits | undefined;
}

/** One step of a working, as data: any format can be written from it. */
export interface WorkingLine {
  /** The kind of line: an input, an intermediate step, or a figure that was asked for. */
  readonly group: 'given' | 'step' | 'answer';
  /** The node itself, for those who write it in another notation. */
  readonly node: Node;
  /** The unit of the result. */
  readonly unit: Unit;
  /** What was done; absent for an input. */
  readonly operation?: Operation;
  readonly symbol: string;
  /** Absent for an input. */
  readonly formula?: string;
  /** Absent for an input, and where it would only repeat the formula or the result. */
  readonly numbers?: string;
  readonly result: string;
  /** The source of a step or a table figure, or the basis of an input and its path. */
  readonly from?: string;
}

function inputLine(
  node: Exclude<Node, { kind: 'computed' }>,
  group: WorkingLine['group'],
  units: ReaderUnits,
): WorkingLine | undefined {
  const line = { group, node, unit: inReaderUnits(node.value, units).unit, result: figure(node, units) };
  switch (node.kind) {
    case 'given':
      return {
        ...line,
        symbol: node.symbol,
        from: node.path === undefined ? node.basis : `${node.basis}, ${node.path}`,
      };
    case 'looked up':
      return { ...line, symbol: node.symbol, from: `${node.table}, ${node.key}: ${citation(node.source)}` };
    case 'constant':
      return node.symbol === undefined
        ? undefined
        : { ...line, symbol: node.symbol, ...(node.source && { from: citation(node.source) }) };
  }
}

/** The lines of one or more workings, inputs before the steps that use them. @example workingLines([grossWeight.why]).length // 3 */
export function workingLines(roots: readonly Node[], { units = 'us' }: ExplainOptions = {}): readonly WorkingLine[] {
  const lines: WorkingLine[] = [];
  const last = new Set(roots);
  for (const node of nodesOf(roots)) {
    if (node.kind !== 'computed') {
      const line = inputLine(node, last.has(node) ? 'answer' : 'given', units);
      if (line !== undefined) lines.push(line);
    } else if (node.symbol !== undefined || last.has(node)) {
      const numbers = formula(node, byFigure(units));
      const result = figure(node, units);
      const written = formula(node, byName(units));
      lines.push({
        group: last.has(node) ? 'answer' : 'step',
        node,
        unit: inReaderUnits(node.value, units).unit,
        operation: node.operation,
        symbol: node.symbol ?? 'result',
        formula: written,
        result,
        ...(numbers !== result && numbers !== written && { numbers }),
        ...(node.source && { from: citation(node.source) }),
      });
    }
  }
  return lines;
}

/** Figures, or figures and behind them how they are to be written. */
type Explained = readonly Derived<Unit>[] | readonly [...figures: readonly Derived<Unit>[], options: ExplainOptions];

const isFigure = (each: Derived<Unit> | ExplainOptions): each is Derived<Unit> => 'why' in each;

/**
 * How did this figure come about?
 *
 * Figures are printed in the units that were computed in; for `{ units: 'metric' }` each is converted for print alone, to two
 * decimals, and a step that only converted units for the calculation reads as the figure itself. Steps of a rounding keep their unit.
 *
 * @param figures one or more figures of an answer; behind them, where it is wanted, `{ units: 'metric' }`
 * @returns text of at most 80 columns: one block a step, inputs with what they rest on, sources in brackets
 * @example explain(grossWeight, { units: 'metric' }).includes('kg') // true
 */
export function explain(...figures: Explained): string {
  const told: readonly (Derived<Unit> | ExplainOptions)[] = figures;
  const derived = told.filter(isFigure);
  const options = told.find((each): each is ExplainOptions => !isFigure(each));
  return workingLines(
    derived.map(({ why }) => why),
    options,
  )
    .map(({ symbol, formula: written, numbers, result, from }) => {
      const tail = from === undefined ? '' : `  [${from}]`;
      if (written === undefined) return wrapText(`${symbol} = ${result}${tail}`, 80, '    ');
      const parts = [
        `${symbol}`,
        `  = ${written}`,
        ...(numbers === undefined ? [] : [`  = ${numbers}`]),
        `  = ${result}${tail}`,
      ];
      return parts.map((part) => wrapText(part, 80, '    ')).join('\n');
    })
    .join('\n');
}
