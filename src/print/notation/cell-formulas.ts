/** Every operation of a working as a spreadsheet writes it. */
import type { Reading } from '../../trace/index.js';

/** A place in the workbook. */
export interface Place {
  readonly sheet: string;
  /** From 0. */
  readonly row: number;
  readonly column: number;
}

/** How a spreadsheet writes a reference and separates two arguments. */
export interface Dialect {
  readonly at: (place: Place, from: string) => string;
  readonly separator: string;
}

/** A formula, written when the dialect is known. */
export type Formula = (dialect: Dialect) => string;

export const call =
  (name: string, ...args: readonly Formula[]): Formula =>
  (dialect) =>
    `${name}(${args.map((arg) => arg(dialect)).join(dialect.separator)})`;
export const join =
  (sign: string, ...parts: readonly Formula[]): Formula =>
  (dialect) =>
    `(${parts.map((part) => part(dialect)).join(sign)})`;
export const fixed =
  (text: string): Formula =>
  () =>
    text;

/** A double very close to a whole number of steps counts as that number, as the library's own decimals do. */
export const hair = '0.000000001';
const roundings = {
  down: (steps: Formula): Formula => call('INT', join('+', steps, fixed(hair))),
  up: (steps: Formula): Formula => join('*', fixed('-1'), call('INT', join('-', fixed(hair), steps))),
  nearest: (steps: Formula): Formula => call('ROUND', steps, fixed('0')),
  'nearest-down': (steps: Formula): Formula =>
    join('*', fixed('-1'), call('SIGN', steps), call('INT', join('-', fixed('0.5'), call('ABS', steps)))),
};

/** The one meaning of every operation, written for a spreadsheet. */
export const formulas: Reading<Formula> = {
  leaf: (value) => fixed(value.isNegative() ? `(${value.toFixed()})` : value.toFixed()),
  sum: (terms) => join('+', ...terms),
  difference: (a, b) => join('-', a, b),
  product: (a, b) => join('*', a, b),
  quotient: (a, b) => join('/', a, b),
  least: (terms) => call('MIN', ...terms),
  greatest: (terms) => call('MAX', ...terms),
  convert: (a, { times, over }) => join('/', join('*', a, fixed(times.toFixed())), fixed(over.toFixed())),
  round: (a, step, mode) => join('*', roundings[mode](join('/', a, fixed(step.toFixed()))), fixed(step.toFixed())),
  squareRoot: (a) => call('SQRT', a),
  power: (a, b) => call('POWER', a, b),
  sine: (a) => call('SIN', call('RADIANS', a)),
  cosine: (a) => call('COS', call('RADIANS', a)),
  tangent: (a) => call('TAN', call('RADIANS', a)),
  arcSine: (a) => call('DEGREES', call('ASIN', a)),
  arcTangent: (a) => call('DEGREES', call('ATAN', a)),
};
