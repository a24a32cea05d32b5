/** Plain text in 80 columns: headings, label-and-figure lines, tables with right-aligned figures. */

import {
  compare,
  convert,
  lb,
  percent,
  psi,
  type Quantity,
  ratio,
  roundCapacityDown,
  roundLoadUp,
  roundNearest,
  show,
  showBrief,
} from '../units/index.js';
import { roundLoadAway, wrapText } from '../units/internal.js';

export const width = 80;

/** A heading over its lines; an empty list when there are no lines. */
export const section = (heading: string, lines: readonly string[]): readonly string[] =>
  lines.length === 0 ? [] : ['', folded(heading, width, '  '), ...lines];

/** Breaks words that no line could hold: a name of 200 letters is still a name. */
function breakable(text: string, room: number): string {
  if (text.length <= room) return text;
  const broken = (word: string): string => word.replace(new RegExp(`(.{${room}})(?=.)`, 'gu'), '$1 ');
  return text
    .split(' ')
    .map((word) => (word.length <= room ? word : broken(word)))
    .join(' ');
}

/** A figure and its unit, and the parts of a figure in feet and inches, stay on one line. */
const figureGaps = /(?<=\d['"]?) (?=(?:lb|kg|psi|kPa|mm|m|in|ft|deg)\b|%|\d+(?: \d+\/\d+)?"|\d+\/\d+")/g;
const held = '\u00a0';

/** A text folded to the page, what follows the first line indented. */
export const folded = (text: string, to = width, indent = '    '): string =>
  wrapText(breakable(text.replace(figureGaps, held), to - indent.length - 4), to, indent).replaceAll(held, ' ');

/** `GVWR, beam and tires` */
export const and = (names: readonly string[]): string =>
  names.length < 3 ? names.join(' and ') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;

/** The names of several limits, as a sentence has them. */
export const namesOf = (limits: readonly { readonly name: string }[]): string => and(limits.map(({ name }) => name));

/** `1 check`, `2 checks` */
export const counted = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;

/** A remark with a hanging indent. */
export const remark = (text: string): string => folded(`  - ${text}`);

/** `  gross weight ............ 12,650 lb   scale` */
export function entry(label: string, value: string, tail = ''): string {
  const room = 44;
  const lines = folded(`  ${label}`, room, '    ').split('\n');
  const last = lines.pop() as string;
  const dots = last.length + 1 > room ? ' ' : ` ${'.'.repeat(room - last.length)} `;
  const figure = `${last}${dots}${value.padStart(13)}`;
  const whole = tail === '' ? figure : `${figure}   ${tail}`;
  return [
    ...lines,
    ...(whole.length > width ? [figure, folded(`${' '.repeat(6)}(${tail})`, width, ' '.repeat(6))] : [whole]),
  ].join('\n');
}

/** One row of a table: the first column to the left, the others to the right; a long first column takes lines of its own. */
export function row(
  first: string,
  cells: readonly string[],
  firstWidth: number,
  cellWidths: readonly number[],
): string {
  const lines = folded(first, firstWidth, '  ').split('\n');
  const last = lines.pop() as string;
  const tail = cells.map((cell, i) => ` ${cell}`.padStart(cellWidths[i] ?? 10)).join('');
  return [...lines, `${last.padEnd(firstWidth)}${tail}`.trimEnd()].join('\n');
}

const pound = lb(1);
const tenthOfPsi = psi('0.1');
const tenth = percent('0.1');
const percentOf = (q: Quantity<'ratio'>): Quantity<'%'> => convert(q, '%');

/** A capacity in whole pounds, down. */
export const capacityInPrint = (q: Quantity<'lb'>): string => show(roundCapacityDown(q, pound));
/** A load in whole pounds, up; one that lifts, away from zero. */
export const loadInPrint = (q: Quantity<'lb'>): string => show(roundLoadAway(q, pound));
/** A pressure as it was given: in psi, or in kilopascals followed by psi; rounded down, so that the print never exceeds the molded pressure. */
export function pressureInPrint(q: Quantity<'psi'>): string {
  const inPsi = roundCapacityDown(q, tenthOfPsi);
  return compare(inPsi, q) === 0 ? show(q) : `${showBrief(convert(q, 'kPa'))} (${show(inPsi)})`;
}
/** Without the unit, for a column whose heading has it. */
export const bare = (printed: string): string => printed.replace(/ lb$/, '');

const tenfold = ratio(10);
/** A share as a percentage, up to the next tenth: what is used of a limit; from tenfold on no more than that. */
export const usedInPrint = (q: Quantity<'ratio'>): string =>
  compare(q, tenfold) >= 0 ? '>999%' : `${show(roundLoadUp(percentOf(q), tenth)).replace(/ %$/, '')}%`;
/** A share as a percentage to the nearest tenth. */
export const shareInPrint = (q: Quantity<'ratio'>): string => show(roundNearest(percentOf(q), tenth));
