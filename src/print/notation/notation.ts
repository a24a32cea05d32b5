/** What a notation is: how it writes names, figures, operations and the words of a formula. */
import type { Computed, Node } from '../../trace/index.js';
import { showBrief, showUnit, type Unit } from '../../units/index.js';

/** How one notation writes names, figures and operations. All text that comes in has been escaped by the notation itself. */
export interface Notation {
  readonly name: (symbol: string) => string;
  readonly figure: (digits: string, unit: string) => string;
  readonly brackets: (inside: string) => string;
  readonly sum: (terms: readonly string[]) => string;
  readonly difference: (a: string, b: string) => string;
  readonly product: (a: string, b: string) => string;
  /** A quotient written with a bar needs no brackets above and below it. */
  readonly quotient: (a: string, b: string) => string;
  readonly bar: boolean;
  /** `least`, `greatest`, `sin`, `arctan`: a word and what it is taken of. */
  readonly called: (word: string, of: readonly string[]) => string;
  readonly root: (a: string) => string;
  readonly power: (a: string, b: string) => string;
  /** Something said behind a figure in words: `rounded up to steps of 1 lb`, `in inches`. */
  readonly remarked: (a: string, words: string) => string;
}

/** Digits and unit of a figure as it is read: two decimals, four below one. */
export function digitsAndUnit({ value }: Node): readonly [digits: string, unit: string] {
  const unit = showUnit(value.unit);
  const text = showBrief(value, value.value.abs().lt(1) ? 4 : 2);
  return [unit === '' ? text : text.slice(0, -unit.length - 1), unit];
}

/** What a rounding does, in words. */
export function roundingInWords({ rounding, value }: Computed): string {
  const step = `${rounding?.step.toFixed()} ${showUnit(value.unit)}`.trimEnd();
  switch (rounding?.mode) {
    case 'nearest':
      return `rounded to the nearest ${step}`;
    case 'nearest-down':
      return `rounded to the nearest ${step}, halves down`;
    default:
      return `rounded ${rounding?.mode} to steps of ${step}`;
  }
}

const unitsInWords: Partial<Record<Unit, string>> = { in: 'inches', ft: 'feet', lb: 'pounds', kg: 'kilograms' };
export const unitInWords = (unit: Unit): string => unitsInWords[unit] ?? showUnit(unit);
