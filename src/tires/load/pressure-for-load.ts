/** Which cold pressure does a load need, by the printed tables? */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import type { Note } from '../../ratings/index.js';
import { type Decision, type Derived, decide, type Known } from '../../trace/index.js';
import { showInWords } from '../../units/internal.js';
import type { Designation } from '../designation/designation.js';
import type { TiresError } from '../errors.js';
import { inPounds } from './known-figures.js';
import { disagreement } from './pressure-steps.js';
import { begin, outside, printedTables, type TableChoice } from './printed-steps.js';
import type { Fitment } from './published-rows.js';

export interface PressureForLoad {
  readonly pressure: Derived<'psi'>;
  /** What the row carries: at or above the load asked for. */
  readonly carries: Derived<'lb'>;
  readonly tables: readonly string[];
  readonly notes: readonly Note[];
  readonly decisions: readonly Decision[];
}

/**
 * What cold pressure does this load need, by the printed tables?
 *
 * The lowest printed pressure whose load is not below the load asked for: the next printed step up. Nothing above the last
 * row. A load below the first row needs the first row, as no lower pressure is printed.
 *
 * @param designation size with load range, from the sidewall
 * @param load on one tire, in lb or kg, from a scale or an axle load shared by its tires
 * @param fitment single, or dual for twin wheels on one hub
 * @returns psi, what that row carries, notes, decisions; Left `UnreadableDesignation`, `NotPositive`, `NotTabulated` (with the
 * last row), `NoDualRating`
 * @example pressureForLoad('ST225/75R15 LRD', lb(2400), 'single') // Right: 65 psi; 60 psi carries 2,380
 * @source load and inflation tables ST-1 to TR-2 of the list of sources, grade B and C
 */
export function pressureForLoad(
  designation: string | Designation,
  load: Known<'lb' | 'kg'>,
  fitment: Fitment,
  choice: TableChoice = {},
): Either<TiresError, PressureForLoad> {
  const begun = begin(designation, fitment, choice);
  if (isLeft(begun)) return begun;
  const asked = inPounds('tire load', load);
  if (isLeft(asked)) return asked;
  const {
    d,
    found: { steps, notes },
  } = begun.right;
  const carried = steps.map((step) => decide(asked.right, '<=', step.load));
  const first = carried.findIndex(({ holds }) => holds);
  const step = steps[first];
  if (step === undefined) return left(outside(d, showInWords(asked.right.value, 'up'), steps.slice(-2)));
  return right({
    pressure: step.pressure,
    carries: step.load,
    tables: printedTables(step),
    notes: [...notes, ...disagreement(step, fitment)],
    decisions: carried.slice(0, first + 1),
  });
}
