/** Figures in sentences for people, as of an error: those of few digits as they are, others rounded by name as a report prints them. */
import { Decimal } from './decimal.js';
import { compareFigures } from './order.js';
import type { Quantity } from './quantity.js';
import { type RoundingMode, roundToStep } from './rounding.js';
import { show, showBrief, showNumber, showUnit } from './show.js';
import type { Unit } from './unit-list.js';

/** What a person writes has no more digits than this; what is worked out has up to 34. */
const mostDigits = 7;

const digitsOf = (value: Decimal): number => value.toFixed().replace(/^-?0*\.?0*|\./g, '').length;

/** Two decimals, four below one as in the working; fewer where the whole part is long. */
function placesOf(size: Decimal): number {
  if (size.lt(1)) return 4;
  return Math.min(2, Math.max(0, mostDigits - size.toFixed(0, Decimal.ROUND_DOWN).length));
}

/**
 * A figure in a sentence: every digit where it has at most seven, otherwise rounded as a report prints it. A capacity or the most that
 * may be is rounded down, a load or the least that is needed up, the rest to the nearest.
 * A third of 10,000 lb is `3,333.33 lb` down and `3,333.34 lb` up.
 */
export function showInWords(q: Quantity<Unit>, mode: RoundingMode = 'nearest'): string {
  if (digitsOf(q.value) <= mostDigits) return show(q);
  const step = new Decimal(10).pow(-placesOf(q.value.abs()));
  return `${showNumber(roundToStep(q.value, step, mode))} ${showUnit(q.unit)}`.trimEnd();
}

/** Two figures of which the first is too large beside the second: that one rounded up, the other down, so that they never read alike; equal ones do. */
export function showCrossed(large: Quantity<Unit>, small: Quantity<Unit>): readonly [large: string, small: string] {
  if (large.unit === small.unit && compareFigures(large, small) === 0) return [showInWords(large), showInWords(small)];
  return [showInWords(large, 'up'), showInWords(small, 'down')];
}

/** As brief as `showBrief`, with as many more places as it takes not to read like another text. */
export function showApart(q: Quantity<Unit>, other: string): string {
  for (let places = 2; places < 34; places += 1) {
    const text = showBrief(q, places);
    if (text !== other) return text;
  }
  return show(q);
}
