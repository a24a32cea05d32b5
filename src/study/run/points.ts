/** The exact figures and the spec behind each row of a planned design. */
import type { Decimal } from '../../units/index.js';
import { exactly } from '../plan/exact-numbers.js';
import type { PlannedDesign } from '../plan/planned.js';
import type { ReadPlan } from '../plan/read-plan.js';
import { changed } from '../plan/spec-paths.js';

export interface Points {
  /** The varied figures of a row, by path. */
  readonly figuresAt: (row: number) => ReadonlyMap<string, Decimal>;
  /** The spec of a row: its alternative with the varied figures put in, each keeping what it rests on. */
  readonly specAt: (row: number) => unknown;
  /** The same, one object as long as no other row is asked. */
  readonly keptSpecAt: (row: number) => unknown;
}

/** The most levels of one figure that are kept as decimals. */
const mostKept = 10_000;

/** The same decimal for the same level, as long as there are not too many: who asks again may compare by identity. */
function keptLevels(levelAt: (level: number) => Decimal): (level: number) => Decimal {
  const kept = new Map<number, Decimal>();
  return (level) => {
    const known = kept.get(level);
    if (known !== undefined) return known;
    if (kept.size >= mostKept) kept.clear();
    const made = levelAt(level);
    kept.set(level, made);
    return made;
  };
}

export function pointsOf({ factors, choices, specOf }: ReadPlan, planned: PlannedDesign): Points {
  const levels = factors.map(({ levelAt }) => keptLevels(levelAt));
  const figureAt = (row: number, k: number): Decimal => {
    const level = planned.levelAt(row, k);
    const at = levels[k];
    return level >= 0 && at !== undefined ? at(level) : exactly(planned.valueAt(row, k));
  };
  const specAt = (row: number): unknown =>
    changed(
      specOf(choices.map((_, i) => planned.choiceAt(row, i))),
      Object.fromEntries(
        factors.map(({ path, unit, basis }, k) => [path, { value: figureAt(row, k).toFixed(), unit, basis }]),
      ),
    );
  let last: { readonly row: number; readonly spec: unknown } | undefined;
  return {
    figuresAt: (row) => new Map(factors.map(({ path }, k) => [path, figureAt(row, k)])),
    specAt,
    keptSpecAt: (row) => {
      if (last?.row !== row) last = { row, spec: specAt(row) };
      return last.spec;
    },
  };
}
