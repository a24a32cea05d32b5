/**
 * The loops of a tape. Each reads a few columns and writes a few: what is fetched once is used for all that hangs on it.
 *
 * The numbers are arguments of the loops: a loop that reads them from around it takes almost twice as long.
 */

type Column = Float64Array;

/** `times x column + plus`: an argument of a nonlinear step. */
export interface Scaled {
  readonly column: number;
  readonly times: number;
  readonly plus: number;
}

/** A result that hangs linearly on the columns of its group. */
export interface Target {
  readonly column: number;
  readonly times: readonly number[];
  readonly plus: number;
}

export type Columns = readonly Float64Array[];
export type Run = (columns: Columns, rows: number) => void;

const at = (columns: Columns, column: number): Column => columns[column] as Column;

function oneFromOne(x: Column, y: Column, a: number, b: number, rows: number): void {
  for (let i = 0; i < rows; i += 1) y[i] = a * (x[i] as number) + b;
}

function twoFromOne(x: Column, y: Column, z: Column, a: number, b: number, c: number, d: number, rows: number): void {
  for (let i = 0; i < rows; i += 1) {
    const v = x[i] as number;
    y[i] = a * v + b;
    z[i] = c * v + d;
  }
}

function fourFromOne(
  x: Column,
  y: Column,
  z: Column,
  u: Column,
  w: Column,
  a: number,
  b: number,
  c: number,
  d: number,
  e: number,
  f: number,
  g: number,
  h: number,
  rows: number,
): void {
  for (let i = 0; i < rows; i += 1) {
    const v = x[i] as number;
    y[i] = a * v + b;
    z[i] = c * v + d;
    u[i] = e * v + f;
    w[i] = g * v + h;
  }
}

function oneFromTwo(x: Column, v: Column, y: Column, a: number, b: number, c: number, rows: number): void {
  for (let i = 0; i < rows; i += 1) y[i] = a * (x[i] as number) + b * (v[i] as number) + c;
}

function threeFromTwo(
  x: Column,
  v: Column,
  y: Column,
  z: Column,
  u: Column,
  a: number,
  b: number,
  c: number,
  d: number,
  e: number,
  f: number,
  g: number,
  h: number,
  k: number,
  rows: number,
): void {
  for (let i = 0; i < rows; i += 1) {
    const p = x[i] as number;
    const q = v[i] as number;
    y[i] = a * p + b * q + c;
    z[i] = d * p + e * q + f;
    u[i] = g * p + h * q + k;
  }
}

function more(x: Column, y: Column, a: number, rows: number): void {
  for (let i = 0; i < rows; i += 1) y[i] = (y[i] as number) + a * (x[i] as number);
}

/** The columns and numbers of a target, in the order in which the loops take them. */
const factor = ({ times }: Target, k: number): number => times[k] as number;

function fromOne(s: number, targets: readonly Target[]): Run {
  const [p, q, r, t] = targets;
  const a = p as Target;
  if (r !== undefined && t !== undefined && q !== undefined) {
    return (c, rows) =>
      fourFromOne(
        at(c, s),
        at(c, a.column),
        at(c, q.column),
        at(c, r.column),
        at(c, t.column),
        factor(a, 0),
        a.plus,
        factor(q, 0),
        q.plus,
        factor(r, 0),
        r.plus,
        factor(t, 0),
        t.plus,
        rows,
      );
  }
  if (q !== undefined)
    return (c, rows) =>
      twoFromOne(at(c, s), at(c, a.column), at(c, q.column), factor(a, 0), a.plus, factor(q, 0), q.plus, rows);
  return (c, rows) => oneFromOne(at(c, s), at(c, a.column), factor(a, 0), a.plus, rows);
}

function fromTwo(s: number, t: number, targets: readonly Target[]): Run {
  const [p, q, r] = targets;
  const a = p as Target;
  if (q === undefined || r === undefined)
    return (c, rows) => oneFromTwo(at(c, s), at(c, t), at(c, a.column), factor(a, 0), factor(a, 1), a.plus, rows);
  return (c, rows) =>
    threeFromTwo(
      at(c, s),
      at(c, t),
      at(c, a.column),
      at(c, q.column),
      at(c, r.column),
      factor(a, 0),
      factor(a, 1),
      a.plus,
      factor(q, 0),
      factor(q, 1),
      q.plus,
      factor(r, 0),
      factor(r, 1),
      r.plus,
      rows,
    );
}

const fromMany =
  (sources: readonly number[], target: Target): Run =>
  (columns, rows) => {
    const y = at(columns, target.column);
    y.fill(target.plus, 0, rows);
    sources.forEach((source, k) => more(at(columns, source), y, factor(target, k), rows));
  };

/** How many targets one loop takes on: from one column four or two, from two columns three. */
const takes = (sources: number, left: number): number =>
  sources === 1 ? (left >= 4 ? 4 : left >= 2 ? 2 : 1) : sources === 2 && left >= 3 ? 3 : 1;

/** Every target that hangs on the same columns. */
export function linearRuns(sources: readonly number[], targets: readonly Target[]): readonly Run[] {
  const runs: Run[] = [];
  for (let i = 0; i < targets.length; ) {
    const take = takes(sources.length, targets.length - i);
    const some = targets.slice(i, i + take);
    const [s, t] = sources as readonly [number, number];
    runs.push(
      sources.length === 1
        ? fromOne(s, some)
        : sources.length === 2
          ? fromTwo(s, t, some)
          : fromMany(sources, some[0] as Target),
    );
    i += take;
  }
  return runs;
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
