/** One operation of a tape as a loop over columns. A step's target column is never one of its arguments' unless the loop allows it. */
import { applyRounding } from './float-rounding.js';
import type { Computed } from '../trace/index.js';

/** A figure on the tape: a column of rows, or a number that is the same for all. */
export type Operand = { readonly column: number } | { readonly value: number };

export const isVaried = (operand: Operand): operand is { readonly column: number } => 'column' in operand;

export interface Step {
  readonly run: (columns: readonly Float64Array[], rows: number) => void;
}

type Columns = readonly Float64Array[];
type Run = Step['run'];

const at = (columns: Columns, column: number): Float64Array => columns[column] as Float64Array;

function sumStep(args: readonly Operand[], target: number): Run {
  const varied = args.filter(isVaried).map(({ column }) => column);
  let fixed = 0;
  for (const arg of args) if (!isVaried(arg)) fixed += arg.value;
  const [a = 0, b, c, d] = varied;
  if (b === undefined) return (columns, rows) => { const x = at(columns, a); const y = at(columns, target); for (let i = 0; i < rows; i += 1) y[i] = (x[i] as number) + fixed; };
  const rest = varied.slice(2);
  if (c === undefined) return (columns, rows) => { const x = at(columns, a); const z = at(columns, b); const y = at(columns, target); for (let i = 0; i < rows; i += 1) y[i] = (x[i] as number) + (z[i] as number) + fixed; };
  if (d === undefined) {
    return (columns, rows) => {
      const x = at(columns, a); const z = at(columns, b); const w = at(columns, c); const y = at(columns, target);
      for (let i = 0; i < rows; i += 1) y[i] = (x[i] as number) + (z[i] as number) + (w[i] as number) + fixed;
    };
  }
  return (columns, rows) => {
    const x = at(columns, a); const z = at(columns, b); const y = at(columns, target);
    for (let i = 0; i < rows; i += 1) y[i] = (x[i] as number) + (z[i] as number) + fixed;
    for (const more of rest) { const w = at(columns, more); for (let i = 0; i < rows; i += 1) y[i] = (y[i] as number) + (w[i] as number); }
  };
}

function extremeStep(args: readonly Operand[], target: number, least: boolean): Run {
  const varied = args.filter(isVaried).map(({ column }) => column);
  let fixed = least ? Number.POSITIVE_INFINITY : Number.NEGATIVE_INFINITY;
  for (const arg of args) if (!isVaried(arg)) fixed = least ? Math.min(fixed, arg.value) : Math.max(fixed, arg.value);
  return (columns, rows) => {
    const y = at(columns, target);
    for (let i = 0; i < rows; i += 1) {
      let best = fixed;
      for (let k = 0; k < varied.length; k += 1) {
        const next = at(columns, varied[k] as number)[i] as number;
        if (least ? next < best : next > best) best = next;
      }
      y[i] = best;
    }
  };
}

/** A loop for each of: column with column, column with number, number with column. */
function binaryStep(a: Operand, b: Operand, target: number, columnColumn: (x: Float64Array, z: Float64Array, y: Float64Array, rows: number) => void, columnNumber: (x: Float64Array, z: number, y: Float64Array, rows: number) => void, numberColumn: (x: number, z: Float64Array, y: Float64Array, rows: number) => void): Run {
  if (isVaried(a) && isVaried(b)) return (columns, rows) => columnColumn(at(columns, a.column), at(columns, b.column), at(columns, target), rows);
  if (isVaried(a) && !isVaried(b)) return (columns, rows) => columnNumber(at(columns, a.column), b.value, at(columns, target), rows);
  if (!isVaried(a) && isVaried(b)) return (columns, rows) => numberColumn(a.value, at(columns, b.column), at(columns, target), rows);
  throw new RangeError('a step without a varied figure belongs to the folded part');
}

const n = (x: number | undefined): number => x as number;

const differenceStep = (a: Operand, b: Operand, target: number): Run => binaryStep(a, b, target,
  (x, z, y, rows) => { for (let i = 0; i < rows; i += 1) y[i] = n(x[i]) - n(z[i]); },
  (x, z, y, rows) => { for (let i = 0; i < rows; i += 1) y[i] = n(x[i]) - z; },
  (x, z, y, rows) => { for (let i = 0; i < rows; i += 1) y[i] = x - n(z[i]); });

const productStep = (a: Operand, b: Operand, target: number): Run => binaryStep(a, b, target,
  (x, z, y, rows) => { for (let i = 0; i < rows; i += 1) y[i] = n(x[i]) * n(z[i]); },
  (x, z, y, rows) => { for (let i = 0; i < rows; i += 1) y[i] = n(x[i]) * z; },
  (x, z, y, rows) => { for (let i = 0; i < rows; i += 1) y[i] = x * n(z[i]); });

const quotientStep = (a: Operand, b: Operand, target: number): Run => binaryStep(a, b, target,
  (x, z, y, rows) => { for (let i = 0; i < rows; i += 1) y[i] = n(x[i]) / n(z[i]); },
  (x, z, y, rows) => { for (let i = 0; i < rows; i += 1) y[i] = n(x[i]) / z; },
  (x, z, y, rows) => { for (let i = 0; i < rows; i += 1) y[i] = x / n(z[i]); });

const powerStep = (a: Operand, b: Operand, target: number): Run => binaryStep(a, b, target,
  (x, z, y, rows) => { for (let i = 0; i < rows; i += 1) y[i] = n(x[i]) ** n(z[i]); },
  (x, z, y, rows) => { for (let i = 0; i < rows; i += 1) y[i] = n(x[i]) ** z; },
  (x, z, y, rows) => { for (let i = 0; i < rows; i += 1) y[i] = x ** n(z[i]); });

function unaryStep(a: Operand, target: number, f: (x: number) => number): Run {
  if (!isVaried(a)) throw new RangeError('a step without a varied figure belongs to the folded part');
  return (columns, rows) => { const x = at(columns, a.column); const y = at(columns, target); for (let i = 0; i < rows; i += 1) y[i] = f(n(x[i])); };
}

const degree = Math.PI / 180;

function runOf(node: Computed, args: readonly Operand[], target: number): Run {
  const [a, b] = args as readonly [Operand, Operand];
  switch (node.operation) {
    case 'sum': return sumStep(args, target);
    case 'least': return extremeStep(args, target, true);
    case 'greatest': return extremeStep(args, target, false);
    case 'difference': return differenceStep(a, b, target);
    case 'product': return productStep(a, b, target);
    case 'quotient': return quotientStep(a, b, target);
    case 'power': return powerStep(a, b, target);
    case 'relabel': return productStep(a, { value: 1 }, target);
    case 'convert': {
      const { times, over } = node.factor as NonNullable<Computed['factor']>;
      return productStep(a, { value: times.div(over).toNumber() }, target);
    }
    case 'round': {
      const { mode, step } = node.rounding as NonNullable<Computed['rounding']>;
      const size = step.toNumber();
      return unaryStep(a, target, (x) => applyRounding(x, size, mode));
    }
    case 'squareRoot': return unaryStep(a, target, Math.sqrt);
    case 'sine': return unaryStep(a, target, (x) => Math.sin(x * degree));
    case 'tangent': return unaryStep(a, target, (x) => Math.tan(x * degree));
    case 'arcSine': return unaryStep(a, target, (x) => Math.asin(x) / degree);
    case 'arcTangent': return unaryStep(a, target, (x) => Math.atan(x) / degree);
  }
}

/** The loop of one recorded step. */
export const stepOf = (node: Computed, args: readonly Operand[], target: number): Step => ({ run: runOf(node, args, target) });
