/** Loads of one tire that say different things, and notes on them. */
import { type Note, note } from '../../ratings/index.js';
import { type Decision, type Derived, decide } from '../../trace/index.js';
import { collected } from '../../units/internal.js';
import type { TireRating } from './tire.js';

export type From = TireRating['from'];

/** A load, and the pounds that are printed for it: of an index, where kilograms govern, the two differ. */
export interface Found {
  readonly from: From;
  readonly load: Derived<'lb'>;
  readonly printed: Derived<'lb'>;
}

/** Two loads are one figure when they print the same pounds, or, of an index, when they are the same kilograms. */
function sameFigure(one: Found, other: Found): readonly Decision[] {
  const printed = decide(one.printed, '=', other.printed);
  const ofIndex = one.from === 'index' || other.from === 'index';
  return printed.holds || !ofIndex ? [printed] : [printed, decide(one.load, '=', other.load)];
}

/** Notes for every figure that differs from the governing one, and the decisions of these comparisons. */
export function disagreements(governs: Found, others: readonly Found[]): { notes: Note[]; decisions: Decision[] } {
  const title = { molded: 'Molded', index: 'Index', table: 'Table' } as const;
  const compared = others.map((other) => ({ other, asked: sameFigure(governs, other) }));
  const notes = compared
    .filter(({ asked }) => !asked.some(({ holds }) => holds))
    .map(({ other }) =>
      note(
        `${title[governs.from]}DiffersFrom${title[other.from]}`,
        `the ${governs.from} load governs; the ${other.from} load is another figure`,
        [governs.printed, other.printed],
      ),
    );
  return { notes, decisions: collected(compared, ({ asked }) => asked) };
}
