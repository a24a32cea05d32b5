/** Cells of a table as text: figures in plain digits, and text that no spreadsheet takes for a formula. */

import { harmless } from '../../units/internal.js';

/** A text cell: quoted when it must be, and with an apostrophe in front where a spreadsheet would run it. */
export function textCell(text: string, separator: string): string {
  const safe = harmless(text);
  return safe.includes(separator) || /["\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/** Digits without an exponent. */
function plainDigits(x: number): string {
  const text = String(x);
  return text.includes('e') ? x.toFixed(12).replace(/\.?0+$/, '') : text;
}

/** The cells of one column of figures. A figure repeated in consecutive rows is formatted once. */
export function figureCells(decimalComma: boolean): (x: number) => string {
  let last = Number.NaN;
  let text = '';
  return (x) => {
    if (x !== last) {
      last = x;
      text = decimalComma ? plainDigits(x).replace('.', ',') : plainDigits(x);
    }
    return text;
  };
}

/** The cells of one column of names: each name is written once. */
export function nameCells(nameOf: (index: number) => string, separator: string): (index: number) => string {
  const known = new Map<number, string>();
  return (index) => {
    const found = known.get(index);
    if (found !== undefined) return found;
    const made = textCell(nameOf(index), separator);
    known.set(index, made);
    return made;
  };
}
