/** Are the printed rows those of this tire, or of a stronger one? */
import { isLeft } from 'fp-ts/lib/Either.js';
import { type Decision, type Derived, decide } from '../../trace/index.js';
import { type PressureStep, pressureSteps } from './pressure-steps.js';
import type { TireRating } from './tire.js';
import { inService } from './tire-load-rating.js';

export interface RowsOfTire {
  /** The printed rows, least pressure first; none where none is printed. */
  readonly steps: readonly PressureStep[];
  /** The last row lies below the rated pressure and gives the whole rating already, or more. */
  readonly areOfAStrongerTire: boolean;
  readonly decisions: readonly Decision[];
}

/** The rows printed for a tire, held against its rating and the pressure of that rating. */
export function againstRows({ tire, service, designation, rating }: TireRating, rated: Derived<'psi'>): RowsOfTire {
  const printed = pressureSteps(designation, service.fitment, tire.table);
  const last = isLeft(printed) ? undefined : printed.right.steps.at(-1);
  if (isLeft(printed) || last === undefined) return { steps: [], areOfAStrongerTire: false, decisions: [] };
  const { steps } = printed.right;
  const ends = decide(rated, '>', last.pressure);
  if (!ends.holds) return { steps, areOfAStrongerTire: false, decisions: [ends] };
  const whole = decide(inService(designation, service, last.load), '>=', rating);
  return { steps, areOfAStrongerTire: whole.holds, decisions: [ends, whole] };
}
