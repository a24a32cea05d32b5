/** Load at a pressure and pressure for a load, from printed rows only. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import type { Note } from '../../ratings/index.js';
import { type Decision, type Derived, decide, type Known } from '../../trace/index.js';
import { showCrossed, showInWords } from '../../units/internal.js';
import type { Designation } from '../designation/designation.js';
import type { TiresError } from '../errors.js';
import { inPsi } from './known-figures.js';
import { disagreement, type PressureStep } from './pressure-steps.js';
import { begin, outside, printedTables, type TableChoice } from './printed-steps.js';
import type { Fitment } from './published-rows.js';

export interface LoadAtPressure {
  readonly load: Derived<'lb'>;
  /** The printed pressure of the row: at or below the one asked for. */
  readonly row: Derived<'psi'>;
  readonly tables: readonly string[];
  readonly notes: readonly Note[];
  readonly decisions: readonly Decision[];
}

/**
 * What may one tire carry at this pressure, by the printed tables?
 *
 * The load of the printed row whose pressure is the highest not above the pressure asked for. No interpolation, no pressure
 * outside the printed rows, none above the pressure of the tire's own load range. Where tables print different loads for
 * one pressure the lower governs, unless a table is named. The molded maximum of the tire limits it too.
 *
 * @param designation size with load range, from the sidewall
 * @param pressure cold, in psi or kPa (converted exactly: 550 kPa is 79.77 psi, so give psi where the sidewall prints psi)
 * @param fitment single, or dual for twin wheels on one hub: lb a tire
 * @returns lb, row used, notes, decisions; Left `UnreadableDesignation`, `NotPositive`, `NotTabulated`, `NoDualRating`,
 * `PressureAboveRated`
 * @example loadAtPressure('ST225/75R15 LRD', psi(62), 'single') // Right: 2,380 lb, the row of 60 psi
 * @source load and inflation tables ST-1 to TR-2 of the list of sources, grade B and C
 */
export function loadAtPressure(
  designation: string | Designation,
  pressure: Known<'psi' | 'kPa'>,
  fitment: Fitment,
  choice: TableChoice = {},
): Either<TiresError, LoadAtPressure> {
  const begun = begin(designation, fitment, choice);
  if (isLeft(begun)) return begun;
  const asked = inPsi('cold pressure', pressure);
  if (isLeft(asked)) return asked;
  const {
    d,
    found: { steps, capped, notes },
  } = begun.right;
  const text = showInWords(asked.right.value);
  const top = steps.at(-1) as PressureStep;
  const withinTop = decide(asked.right, '<=', top.pressure);
  if (!withinTop.holds) {
    const [above, rated] = showCrossed(asked.right.value, top.pressure.value);
    return left(
      capped ? { chapter: 'tires', tag: 'PressureAboveRated', asked: above, rated } : outside(d, above, [top]),
    );
  }
  const reached = steps.map((step) => decide(step.pressure, '<=', asked.right));
  const last = reached.filter(({ holds }) => holds).length - 1;
  const [step, next] = [steps[last], steps[last + 1]];
  if (step === undefined) return left(outside(d, text, [steps[0]]));
  const below = next === undefined ? withinTop : decide(asked.right, '<', next.pressure);
  return right({
    load: step.load,
    row: step.pressure,
    tables: printedTables(step),
    notes: [...notes, ...disagreement(step, fitment)],
    decisions: [reached[last] as Decision, below],
  });
}
