/** What follows the size: suffix, service description, load range or ply rating, load version, sidewall words. */
import { type Markings, readRange } from './markings.js';
import { readBracket, readIndexOrPly } from './read-service.js';
import { codeAt, fail, isDigit, isLetter, type Scan, skipSpaces, take, word } from './scan.js';

const styles = new Set(['OWL', 'RWL', 'OBL', 'RBL', 'WSW', 'BSW', 'BSL', 'BW', 'WW', 'TL', 'TT', 'FRT']);

/** Reads to the end of the text. False when something could not be read: the scan has the problem. */
export function readMarkings(scan: Scan, found: Markings): boolean {
  for (;;) {
    skipSeparators(scan, found);
    const code = codeAt(scan);
    if (scan.problem !== undefined) return false;
    if (code === 0) return true;
    if (code === 42) {
      scan.at += 1;
      setAside(found, '*');
    } else if (code === 40) readBracket(scan, found);
    else if (isDigit(code)) readIndexOrPly(scan, found);
    else if (isLetter(code)) readWord(scan, found);
    else fail(scan, 'UnexpectedText', 'markings', 'a service description, a load range or the end');
    if (scan.problem !== undefined) return false;
  }
}

/** Spaces, a comma, a slash or a hyphen between parts; but a second hyphen in a numeric size is ambiguous. */
function skipSeparators(scan: Scan, found: Markings): void {
  skipSpaces(scan);
  const at = scan.at;
  const separator = codeAt(scan);
  if (separator !== 44 && separator !== 45 && separator !== 47) return;
  scan.at += 1;
  if (separator === 45 && isLetter(codeAt(scan)) && found.size.form === 'numeric' && found.size.construction === 'D') {
    fail(
      scan,
      'AmbiguousNumeric',
      'load range',
      'the load range in brackets or behind a space: hyphens already part width from rim',
      at,
    );
    return;
  }
  skipSpaces(scan);
  if (!isDigit(codeAt(scan)) && !isLetter(codeAt(scan)))
    fail(scan, 'UnexpectedText', 'markings', `a part of the designation behind "${scan.text[at] ?? ''}"`);
}

function setAside(found: Markings, text: string): void {
  if (!found.setAside.includes(text)) found.setAside.push(text);
}

/** C behind a European radial size is the commercial suffix; anywhere else it is a load range. */
const mayBeCommercial = ({ prefix, size, suffix, service }: Markings): boolean =>
  prefix === '' &&
  size.form === 'metric' &&
  (size.construction === 'R' || size.construction === 'ZR') &&
  size.rim.value.isInteger() &&
  suffix === '' &&
  service === undefined;

function readWord(scan: Scan, found: Markings): void {
  const at = scan.at;
  const text = word(scan);
  if (text === 'C' && mayBeCommercial(found)) found.suffix = 'C';
  else if (text === 'LT' || text === 'ST' || text === 'MH') readSuffix(scan, found, text, at);
  else if (text === 'XL' || text === 'LL' || text === 'SL' || text === 'RF') {
    if (found.version !== undefined) fail(scan, 'RepeatedPart', 'markings', 'one load version', at);
    found.version = text;
  } else if (text.startsWith('LR') && text.length <= 3) readRangeBehindWord(scan, found, text.slice(2), at);
  else if (text === 'LOAD') readLoadRangeWords(scan, found, at);
  else if (text.length === 1 && text === 'M' && (codeAt(scan) === 43 || codeAt(scan) === 47))
    readMudAndSnow(scan, found, at);
  else if (text.length === 1) readRange(scan, found, text, at);
  else if (styles.has(text)) setAside(found, text);
  else fail(scan, 'UnexpectedText', 'markings', 'a word of a tire designation', at);
}

function readSuffix(scan: Scan, found: Markings, text: 'LT' | 'ST' | 'MH', at: number): void {
  if (found.suffix !== '' || found.prefix !== '') fail(scan, 'RepeatedPart', 'suffix', 'one prefix or suffix', at);
  found.suffix = text;
}

function readLoadRangeWords(scan: Scan, found: Markings, at: number): void {
  skipSpaces(scan);
  take(scan, '-');
  if (word(scan) !== 'RANGE') fail(scan, 'UnexpectedText', 'load range', 'the words load range', at);
  else readRangeBehindWord(scan, found, '', at);
}

function readRangeBehindWord(scan: Scan, found: Markings, letter: string, at: number): void {
  if (letter !== '') {
    readRange(scan, found, letter, at + 2);
    return;
  }
  skipSpaces(scan);
  if (!take(scan, ':')) take(scan, '-');
  skipSpaces(scan);
  const begin = scan.at;
  readRange(scan, found, word(scan), begin);
}

function readMudAndSnow(scan: Scan, found: Markings, at: number): void {
  scan.at += 1;
  if (word(scan) === 'S') setAside(found, 'M+S');
  else fail(scan, 'UnexpectedText', 'markings', 'M+S', at);
}
