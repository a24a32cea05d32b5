/** Which loop runs which linear forms: as many results as possible in one pass over the columns they share. */
import { at, type Run } from './columns.js';
import { fourFromOne, more, oneFromOne, oneFromTwo, threeFromTwo, twoFromOne, twoFromTwo } from './linear-loops.js';

/** A linear combination of the columns of its group. */
export interface Target {
  readonly column: number;
  readonly times: readonly number[];
  readonly plus: number;
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
  if (q !== undefined && r === undefined)
    return (c, rows) =>
      twoFromTwo(
        at(c, s),
        at(c, t),
        at(c, a.column),
        at(c, q.column),
        factor(a, 0),
        factor(a, 1),
        a.plus,
        factor(q, 0),
        factor(q, 1),
        q.plus,
        rows,
      );
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
    for (const [k, source] of sources.entries()) more(at(columns, source), y, factor(target, k), rows);
  };

/** How many targets one loop takes on: from one column four or two, from two columns up to three. */
function takes(sources: number, left: number): number {
  if (sources === 1 && left >= 4) return 4;
  if (sources === 1 && left >= 2) return 2;
  return sources === 2 ? Math.min(3, left) : 1;
}

/** The runs for all targets of the same columns. */
export function linearRuns(sources: readonly number[], targets: readonly Target[]): readonly Run[] {
  const runs: Run[] = [];
  for (let i = 0; i < targets.length; ) {
    const take = takes(sources.length, targets.length - i);
    const some = targets.slice(i, i + take);
    const [s, t] = sources as readonly [number, number];
    if (sources.length === 1) runs.push(fromOne(s, some));
    else if (sources.length === 2) runs.push(fromTwo(s, t, some));
    else runs.push(fromMany(sources, some[0] as Target));
    i += take;
  }
  return runs;
}

/** A target and the columns it is made of. */
export interface Placed {
  readonly sources: readonly number[];
  readonly target: Target;
}

/** The runs for targets of any columns: those of the same columns run together. */
export function runsBySources(placed: readonly Placed[]): readonly Run[] {
  const groups = new Map<string, { readonly sources: readonly number[]; readonly targets: Target[] }>();
  for (const { sources, target } of placed) {
    const key = sources.join();
    const group = groups.get(key) ?? { sources, targets: [] };
    group.targets.push(target);
    groups.set(key, group);
  }
  return [...groups.values()].flatMap(({ sources, targets }) => linearRuns(sources, targets));
}
