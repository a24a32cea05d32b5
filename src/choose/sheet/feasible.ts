/** Can some linear relations all hold while figures stay between their ends? Elimination of one unknown after another. */

/** `sum of factor x unknown <= atMost`. */
export interface Row {
  readonly factors: ReadonlyMap<string, number>;
  readonly atMost: number;
}

const tiny = 1e-9;

/** Two rows of opposite sign in one unknown, added so that it falls out. */
function joined(up: Row, down: Row, unknown: string): Row {
  const [a, b] = [up.factors.get(unknown) as number, -(down.factors.get(unknown) as number)];
  const factors = new Map<string, number>();
  for (const [row, weight] of [
    [up, 1 / a],
    [down, 1 / b],
  ] as const)
    for (const [name, factor] of row.factors) {
      if (name === unknown) continue;
      const sum = (factors.get(name) ?? 0) + factor * weight;
      if (Math.abs(sum) < tiny) factors.delete(name);
      else factors.set(name, sum);
    }
  return { factors, atMost: up.atMost / a + down.atMost / b };
}

/** The unknown whose elimination makes the fewest rows. */
function next(rows: readonly Row[]): string | undefined {
  const counts = new Map<string, { up: number; down: number }>();
  for (const { factors } of rows)
    for (const [name, factor] of factors) {
      const count = counts.get(name) ?? { up: 0, down: 0 };
      if (factor > 0) count.up += 1;
      else count.down += 1;
      counts.set(name, count);
    }
  return [...counts].sort(([, a], [, b]) => a.up * a.down - b.up * b.down)[0]?.[0];
}

const impossible = ({ factors, atMost }: Row): boolean => factors.size === 0 && atMost < -tiny;

/** Whether all rows can hold together. Complete: it says no only where no figures do. */
export function feasible(all: readonly Row[]): boolean {
  let rows = all;
  for (;;) {
    if (rows.some(impossible)) return false;
    const unknown = next(rows);
    if (unknown === undefined) return true;
    const up = rows.filter(({ factors }) => (factors.get(unknown) ?? 0) > 0);
    const down = rows.filter(({ factors }) => (factors.get(unknown) ?? 0) < 0);
    const rest = rows.filter(({ factors }) => !factors.has(unknown) && factors.size > 0);
    rows = [...rest, ...up.flatMap((one) => down.map((other) => joined(one, other, unknown)))];
  }
}
