/** The parts of a tire size: width code, construction, rim. */
import { inches } from '../load/size-figures.js';
import type { Construction, Designation, TireSize } from './designation.js';
import { codeAt, fail, number, type Scan, skipSpaces, take } from './scan.js';

export interface SizeRead {
  readonly prefix: Designation['prefix'];
  readonly size: TireSize;
}

/** A width in inches as it is written: whole, or with two decimals. */
export function widthCode(scan: Scan, text: string, at: number): string | undefined {
  const width = Number(text);
  if (!(width >= 3 && width <= 40)) return fail(scan, 'WidthOutOfRange', 'width', 'a width of 3 to 40 in', at);
  const point = text.indexOf('.');
  if (point < 0) return text;
  const decimals = text.length - point - 1;
  if (decimals > 2) return fail(scan, 'WidthOutOfRange', 'width', 'a width with at most two decimals', at);
  return decimals === 2 && !text.startsWith('0') ? text : width.toFixed(2);
}

export const startsConstruction = (scan: Scan): boolean => [82, 68, 66, 90, 45].includes(codeAt(scan));

/** R, D, a hyphen and B, by their character codes. */
const constructions: Readonly<Record<number, Construction>> = { 82: 'R', 68: 'D', 45: 'D', 66: 'B' };

export function readConstruction(scan: Scan, slashAllowed: boolean): Construction | undefined {
  skipSpaces(scan);
  const plain = constructions[codeAt(scan)];
  if (plain !== undefined) {
    scan.at += 1;
    return plain;
  }
  if (codeAt(scan) === 90 && codeAt(scan, scan.at + 1) === 82) {
    scan.at += 2;
    return 'ZR';
  }
  if (slashAllowed && (take(scan, '/') || take(scan, 'X'))) return 'unstated';
  return fail(
    scan,
    codeAt(scan) === 0 ? 'MissingRim' : 'MissingConstruction',
    'construction',
    'R, D, B, ZR or a hyphen, then the rim',
  );
}

export function readRim(scan: Scan): TireSize['rim'] | undefined {
  skipSpaces(scan);
  const at = scan.at;
  const text = number(scan, 'rim');
  if (text === undefined) return undefined;
  return text === '' ? fail(scan, 'MissingRim', 'rim', 'the rim diameter', at) : rimOf(scan, text, at);
}

export function rimOf(scan: Scan, text: string, at: number): TireSize['rim'] | undefined {
  const size = Number(text);
  if (size < 3 || size > 30 || size % 0.5 !== 0)
    return fail(scan, 'RimOutOfRange', 'rim', 'a rim of 3 to 30 in, whole or half', at);
  return inches(size);
}
