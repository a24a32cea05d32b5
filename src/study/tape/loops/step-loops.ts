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

const lesser: Pair = (x, z, y, a, b, c, d, rows) => {
  for (let i = 0; i < rows; i += 1) {
    const p = a * (x[i] as number) + b;
    const q = c * (z[i] as number) + d;
    if (p < q) y[i] = p;
    else y[i] = q;
  }
};
const greater: Pair = (x, z, y, a, b, c, d, rows) => {
  for (let i = 0; i < rows; i += 1) {
    const p = a * (x[i] as number) + b;
    const q = c * (z[i] as number) + d;
    if (p > q) y[i] = p;
    else y[i] = q;
  }
};

/** Two at a time, though the target is fetched again for each: a chain of comparisons in one loop takes twice as long. */
const extremeRun =
  (loop: Pair) =>
  ([first, second, ...others]: readonly Scaled[], target: number): Run => {
    if (first === undefined) throw new RangeError('at least one argument varies');
    const soFar: Scaled = { column: target, times: 1, plus: 0 };
    const runs = [pairRun(loop)(first, second ?? first, target)];
    for (const part of others) runs.push(pairRun(loop)(soFar, part, target));
    return (columns, rows) => {
      for (const run of runs) run(columns, rows);
    };
  };

/** The least and the greatest of scaled columns; a number is one that a column is taken no times for. */
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
