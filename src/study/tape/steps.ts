/** One nonlinear operation of a tape, as the loop or loops that run it. */
import type { Computed } from '../../trace/index.js';
import { applyRounding } from './float-rounding.js';
import type { Run } from './loops/columns.js';
import {
  functionRun,
  greatestRun,
  leastRun,
  powerRun,
  productRun,
  quotientRun,
  type Scaled,
} from './loops/step-loops.js';

/** A figure on the tape: a column of rows, or a number that is the same for all. */
export type Operand = { readonly column: number } | { readonly value: number };

export const isVaried = (operand: Operand): operand is { readonly column: number } => 'column' in operand;

export interface Step {
  readonly run: Run;
}

/** An argument of a nonlinear step: a scaled column, or a number. */
export type Argument = Scaled | { readonly value: number };

const isScaled = (argument: Argument): argument is Scaled => 'column' in argument;
const degree = Math.PI / 180;

/** A constant is passed to a two-column loop as `0 * column + constant`. */
const asScaled = (argument: Argument, other: Argument): Scaled =>
  isScaled(argument) ? argument : { column: (other as Scaled).column, times: 0, plus: argument.value };

/** Of straight lines of one slope over one column the outermost, and of numbers: the others are never the least, or never the greatest. */
function outermost(args: readonly Argument[], side: 1 | -1): readonly Scaled[] {
  const varied = args.find(isScaled) as Scaled;
  const found = new Map<string, Scaled>();
  for (const line of args.map((argument) => asScaled(argument, varied))) {
    const key = line.times === 0 ? '' : `${line.column} ${line.times}`;
    const other = found.get(key);
    if (other === undefined || side * (line.plus - other.plus) > 0) found.set(key, line);
  }
  return [...found.values()];
}

/** The loops of one step. At least one argument varies. */
export function runsOf(node: Computed, args: readonly Argument[], target: number): readonly Run[] {
  const [a, b] = args as readonly [Argument, Argument];
  const alone = (f: (x: number) => number): readonly Run[] => [functionRun(a as Scaled, f, target)];
  switch (node.operation) {
    case 'product':
      return [productRun(asScaled(a, b), asScaled(b, a), target)];
    case 'quotient':
      return [quotientRun(asScaled(a, b), asScaled(b, a), target)];
    case 'power':
      return [powerRun(asScaled(a, b), asScaled(b, a), target)];
    case 'least':
      return [leastRun(outermost(args, -1), target)];
    case 'greatest':
      return [greatestRun(outermost(args, 1), target)];
    case 'round': {
      const { mode, step } = node.rounding as NonNullable<Computed['rounding']>;
      const size = step.toNumber();
      return alone((x) => applyRounding(x, size, mode));
    }
    case 'squareRoot':
      return alone(Math.sqrt);
    case 'sine':
      return alone((x) => Math.sin(x * degree));
    case 'cosine':
      return alone((x) => Math.cos(x * degree));
    case 'tangent':
      return alone((x) => Math.tan(x * degree));
    case 'arcSine':
      return alone((x) => Math.asin(x) / degree);
    case 'arcTangent':
      return alone((x) => Math.atan(x) / degree);
    case 'sum':
    case 'difference':
    case 'convert':
    case 'relabel':
      throw new RangeError('a linear step belongs to a form');
  }
}
