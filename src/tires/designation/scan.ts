/** Reading a designation character by character: every step moves forward, and what was read is never read again. */
import type { DesignationFault, DesignationPart, UnreadableDesignation } from '../designation-errors.js';

/** The longest text that can be a designation; anything longer is refused unread. */
export const longest = 80;

/** A place in a text, and the first thing that went wrong there. */
export interface Scan {
  readonly text: string;
  at: number;
  problem: UnreadableDesignation | undefined;
}

export const startScan = (text: string): Scan => ({ text, at: 0, problem: undefined });

/** Records the error and returns `undefined`. */
export function fail(
  scan: Scan,
  fault: DesignationFault,
  part: DesignationPart,
  needed: string,
  at = scan.at,
): undefined {
  const { text } = scan;
  scan.problem = {
    chapter: 'tires',
    tag: 'UnreadableDesignation',
    fault,
    part,
    text: text.slice(0, longest),
    at,
    found: at >= text.length ? 'the end' : `"${text.slice(at, at + 12)}"`,
    needed,
  };
  return undefined;
}

/** The character code at a place, small letters taken as capitals; 0 at the end. */
export function codeAt(scan: Scan, at = scan.at): number {
  if (at >= scan.text.length) return 0;
  const code = scan.text.charCodeAt(at);
  return code >= 97 && code <= 122 ? code - 32 : code;
}

export const isDigit = (code: number): boolean => code >= 48 && code <= 57;
export const isLetter = (code: number): boolean => code >= 65 && code <= 90;
const isSpace = (code: number): boolean => code === 32 || code === 9 || code === 160;

/** True when the text goes on with this character, which is then read. */
export function take(scan: Scan, character: string): boolean {
  if (codeAt(scan) !== character.charCodeAt(0)) return false;
  scan.at += 1;
  return true;
}

export function skipSpaces(scan: Scan): void {
  while (isSpace(scan.text.charCodeAt(scan.at))) scan.at += 1;
}

/** A run of letters, as capitals; empty when there is none. */
export function word(scan: Scan): string {
  const from = scan.at;
  let small = false;
  for (let code = codeAt(scan); isLetter(code); code = codeAt(scan)) {
    small ||= scan.text.charCodeAt(scan.at) !== code;
    scan.at += 1;
  }
  if (scan.at === from) return '';
  const text = scan.text.slice(from, scan.at);
  return small ? text.toUpperCase() : text;
}

/** A run of digits as text; empty when there is none. */
export function digits(scan: Scan): string {
  const { text, at: from } = scan;
  let at = from;
  while (isDigit(text.charCodeAt(at))) at += 1;
  scan.at = at;
  return text.slice(from, at);
}

/** OWL and OBL are sidewall styles that may follow a number; any other O there is a zero written wrong. */
function isLetterO(scan: Scan, code: number): boolean {
  if (code !== 79) return false;
  const next = codeAt(scan, scan.at + 1);
  return next !== 87 && next !== 66;
}

/** Digits with at most one decimal point, as text: `225`, `10.50`. Empty when there is none, undefined when it is spoilt. */
export function number(scan: Scan, part: DesignationPart): string | undefined {
  let text = digits(scan);
  let code = codeAt(scan);
  if (text === '')
    return isLetterO(scan, code) && isDigit(codeAt(scan, scan.at + 1))
      ? fail(scan, 'LetterOInNumber', part, 'the digit zero')
      : '';
  if (code === 46 && isDigit(codeAt(scan, scan.at + 1))) {
    scan.at += 1;
    text += `.${digits(scan)}`;
    code = codeAt(scan);
  }
  if (isLetterO(scan, code)) return fail(scan, 'LetterOInNumber', part, 'the digit zero');
  if ((code === 58 || code === 44) && isDigit(codeAt(scan, scan.at + 1)))
    return fail(scan, 'BadDecimalSeparator', part, 'a decimal point');
  return text;
}
