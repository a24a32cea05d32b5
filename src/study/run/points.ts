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
}

export function pointsOf({ factors, choices, specOf }: ReadPlan, planned: PlannedDesign): Points {
  const figureAt = (row: number, k: number): Decimal => {
    const level = planned.levelAt(row, k);
    const factor = factors[k];
    return level >= 0 && factor !== undefined ? factor.levelAt(level) : exactly(planned.valueAt(row, k));
  };
  return {
    figuresAt: (row) => new Map(factors.map(({ path }, k) => [path, figureAt(row, k)])),
    specAt: (row) =>
      changed(
        specOf(choices.map((_, i) => planned.choiceAt(row, i))),
        Object.fromEntries(
          factors.map(({ path, unit, basis }, k) => [path, { value: figureAt(row, k).toFixed(), unit, basis }]),
        ),
      ),
  };
}
