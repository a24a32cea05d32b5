/** Plain text in 80 columns: headings, label-and-figure lines, tables with right-aligned figures. */
import { fold } from '../trace/index.js';
import { convert, lb, percent, type Quantity, roundCapacityDown, roundLoadUp, roundNearest, show } from '../units/index.js';

export const width = 80;

/** A heading over its lines; nothing at all when there are no lines. */
export const section = (heading: string, lines: readonly string[]): readonly string[] => (lines.length === 0 ? [] : ['', heading, ...lines]);

/** A remark with a hanging indent. */
export const remark = (text: string): string => fold(`  - ${text}`, width, '    ');

/** `  gross weight ............ 12,650 lb   scale` */
export function entry(label: string, value: string, tail = ''): string {
  const room = 44;
  const dots = label.length + 3 > room ? ' ' : ` ${'.'.repeat(room - label.length - 2)} `;
  const line = `  ${label}${dots}${value.padStart(13)}`;
  if (tail === '') return line;
  return line.length + 3 + tail.length <= width ? `${line}   ${tail}` : `${line}\n${fold(`      (${tail})`, width, '      ')}`;
}

/** One row of a table: the first column to the left, the others to the right; a long first column takes lines of its own. */
export function row(first: string, cells: readonly string[], firstWidth: number, cellWidths: readonly number[]): string {
  const folded = fold(first, firstWidth, '  ').split('\n');
  const last = folded.pop() as string;
  const tail = cells.map((cell, i) => cell.padStart(cellWidths[i] ?? 10)).join('');
  return [...folded, `${last.padEnd(firstWidth)}${tail}`.trimEnd()].join('\n');
}

const pound = lb(1);
const tenth = percent('0.1');
const percentOf = (q: Quantity<'ratio'>): Quantity<'%'> => convert(q, '%');

/** A capacity in whole pounds, down. */
export const capacityInPrint = (q: Quantity<'lb'>): string => show(roundCapacityDown(q, pound));
/** A load in whole pounds, up. */
export const loadInPrint = (q: Quantity<'lb'>): string => show(roundLoadUp(q, pound));
/** Without the unit, for a column whose heading has it. */
export const bare = (printed: string): string => printed.replace(/ lb$/, '');

/** A share as a percentage, up to the next tenth: what is used of a limit. */
export const usedInPrint = (q: Quantity<'ratio'>): string => `${show(roundLoadUp(percentOf(q), tenth)).replace(/ %$/, '')}%`;
/** A share as a percentage to the nearest tenth. */
export const shareInPrint = (q: Quantity<'ratio'>): string => show(roundNearest(percentOf(q), tenth));
