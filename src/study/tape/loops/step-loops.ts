/** Loops for one nonlinear step: products, quotients, powers, least and greatest, functions of one figure. */
import { at, type Column, type Run } from './columns.js';

/** `times x column + plus`: an argument of a nonlinear step. */
export interface Scaled {
  readonly column: number;
  readonly times: number;
  readonly plus: number;
}

type Pair = (x: Column, z: Column, y: Column, a: number, b: number, c: number, d: number, rows: number) => void;

const products: Pair = (x, z, y, a, b, c, d, rows) => {
  for (let i = 0; i < rows; i += 1) y[i] = (a * (x[i] as number) + b) * (c * (z[i] as number) + d);
};
const quotients: Pair = (x, z, y, a, b, c, d, rows) => {
  for (let i = 0; i < rows; i += 1) y[i] = (a * (x[i] as number) + b) / (c * (z[i] as number) + d);
};
const powers: Pair = (x, z, y, a, b, c, d, rows) => {
  for (let i = 0; i < rows; i += 1) y[i] = (a * (x[i] as number) + b) ** (c * (z[i] as number) + d);
};

const pairRun =
  (loop: Pair) =>
  (p: Scaled, q: Scaled, target: number): Run =>
  (columns, rows) =>
    loop(at(columns, p.column), at(columns, q.column), at(columns, target), p.times, p.plus, q.times, q.plus, rows);

/** `(a x + b)(c z + d)`, `(a x + b) / (c z + d)` and `(a x + b) ^ (c z + d)`. */
export const productRun = pairRun(products);
export const quotientRun = pairRun(quotients);
export const powerRun = pairRun(powers);

type Single = (x: Column, y: Column, a: number, b: number, rows: number) => void;

const lesser: Single = (x, y, a, b, rows) => {
  for (let i = 0; i < rows; i += 1) {
    const v = a * (x[i] as number) + b;
    if (v < (y[i] as number)) y[i] = v;
  }
};
const greater: Single = (x, y, a, b, rows) => {
  for (let i = 0; i < rows; i += 1) {
    const v = a * (x[i] as number) + b;
    if (v > (y[i] as number)) y[i] = v;
  }
};

const extremeRun =
  (loop: Single) =>
  (parts: readonly Scaled[], fixed: number, target: number): Run =>
  (columns, rows) => {
    const y = at(columns, target);
    y.fill(fixed, 0, rows);
    for (const { column, times, plus } of parts) loop(at(columns, column), y, times, plus, rows);
  };

/** The least and the greatest of scaled columns and a number. */
export const leastRun = extremeRun(lesser);
export const greatestRun = extremeRun(greater);

/** A function of one scaled column: roundings, roots, angles. */
export const functionRun =
  ({ column, times, plus }: Scaled, f: (x: number) => number, target: number): Run =>
  (columns, rows) => {
    const x = at(columns, column);
    const y = at(columns, target);
    for (let i = 0; i < rows; i += 1) y[i] = f(times * (x[i] as number) + plus);
  };
