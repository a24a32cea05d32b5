/** One weight read in two ways must agree within what the scale can account for. */
import { type Either, left, right } from 'fp-ts/lib/Either.js';
import {
  constant,
  type Decision,
  type Derived,
  decide,
  fromMemory,
  fromTable,
  greatestOf,
  leastOf,
  minus,
  product,
  result,
} from '../../trace/index.js';
import { lb, ratio, toWire } from '../../units/index.js';
import type { TicketsDoNotClose } from '../errors.js';

/**
 * What one platform of a truck scale rounds to: 20 lb, from memory. An argument where tickets are read, never a silent
 * default; use the division printed on the ticket or on the scale's plate.
 */
export const scaleDivision: Derived<'lb'> = fromTable('scale division', lb(20), {
  table: 'truck scales',
  key: 'one platform',
  source: fromMemory('division of a truck scale platform'),
});

/** Two readings of one weight, how far apart they are and how far they may be. */
export interface Closure {
  readonly what: string;
  readonly first: Derived<'lb'>;
  readonly second: Derived<'lb'>;
  readonly gap: Derived<'lb'>;
  readonly allowed: Derived<'lb'>;
}

/** What rounding alone can put between two sums of this many readings: half a division for each reading. */
export const roundingOf = (symbol: string, readings: number, division: Derived<'lb'>): Derived<'lb'> =>
  product(symbol, division, constant(ratio(readings / 2)));

/** Compares two readings of one weight. Left `TicketsDoNotClose` with the numbers when the gap is more than rounding explains. */
export function closed(
  what: string,
  first: Derived<'lb'>,
  second: Derived<'lb'>,
  readings: number,
  division: Derived<'lb'>,
): Either<TicketsDoNotClose, { readonly closure: Closure; readonly decisions: readonly Decision[] }> {
  const gap = result(`gap, ${what}`, minus(greatestOf([first, second]), leastOf([first, second])));
  const allowed = roundingOf(`allowed, ${what}`, readings, division);
  const within = decide(gap, '<=', allowed);
  if (within.holds) return right({ closure: { what, first, second, gap, allowed }, decisions: [within] });
  return left({
    chapter: 'towing',
    tag: 'TicketsDoNotClose',
    what,
    first: toWire(first.value),
    second: toWire(second.value),
    gap: toWire(gap.value),
    allowed: toWire(allowed.value),
  });
}
