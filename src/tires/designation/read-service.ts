/** The service description, `113/108L`, and what else begins with a digit or a bracket. */

import { plyOf } from '../load/ply.js';
import { speedSymbolTable } from '../tables.js';
import type { ServiceDescription } from './designation.js';
import { type Markings, readPlyRating, readRange } from './markings.js';
import { codeAt, digits, fail, isDigit, isLetter, type Scan, skipSpaces, take, word } from './scan.js';

const symbols = new Set(speedSymbolTable.rows.map(([symbol]) => symbol));

/** `10PR`, `12 PR`, `8-ply` or a service description. */
export function readIndexOrPly(scan: Scan, found: Markings): void {
  const at = scan.at;
  const first = digits(scan);
  if (atPly(scan)) {
    word(scan);
    skipRatingWord(scan);
    readPlyRating(scan, found, Number(first), at);
    return;
  }
  const service = description(scan, found, first, at, false);
  if (service === undefined) return;
  if (found.service !== undefined)
    fail(scan, 'RepeatedPart', 'load index', 'one service description, a second one in brackets', at);
  else found.service = service;
}

/** Moves to the word PR or PLY if that is what follows; otherwise stays. */
function atPly(scan: Scan): boolean {
  const back = scan.at;
  if (codeAt(scan) === 47) return false;
  skipSpaces(scan);
  take(scan, '-');
  const begin = scan.at;
  const next = word(scan);
  const isPly = next === 'PR' || next === 'PLY';
  scan.at = isPly ? begin : back;
  return isPly;
}

function skipRatingWord(scan: Scan): void {
  const back = scan.at;
  skipSpaces(scan);
  const next = word(scan);
  if (next !== 'RATING' && next !== 'RATED') scan.at = back;
}

/** `(F)` is a load range; `(158)`, `(94Y)`, `(154/150M)` are service descriptions. */
export function readBracket(scan: Scan, found: Markings): void {
  const open = scan.at;
  scan.at += 1;
  skipSpaces(scan);
  const at = scan.at;
  if (isDigit(codeAt(scan))) {
    const service = description(scan, found, digits(scan), at, true);
    if (service === undefined) return;
    if (found.service === undefined) found.service = service;
    else if (found.second === undefined) found.second = service;
    else fail(scan, 'RepeatedPart', 'load index', 'at most two service descriptions', at);
  } else readRange(scan, found, word(scan), at);
  skipSpaces(scan);
  if (scan.problem === undefined && !take(scan, ')'))
    fail(scan, 'UnclosedBracket', 'markings', 'a closing bracket', open);
}

function description(
  scan: Scan,
  found: Markings,
  first: string,
  at: number,
  bracketed: boolean,
): ServiceDescription | undefined {
  const single = index(scan, first, at);
  if (single === undefined) return undefined;
  let dual: number | undefined;
  if (codeAt(scan) === 47 && isDigit(codeAt(scan, scan.at + 1))) {
    scan.at += 1;
    const dualAt = scan.at;
    dual = index(scan, digits(scan), dualAt);
    if (dual === undefined) return undefined;
    if (dual > single)
      return fail(scan, 'DualAboveSingle', 'load index', 'a dual index that is not above the single index', dualAt);
  }
  const symbol = readSymbol(scan, found);
  return scan.problem === undefined ? { single, dual, symbol, bracketed } : undefined;
}

function index(scan: Scan, text: string, at: number): number | undefined {
  const value = Number(text);
  return value > 200 ? fail(scan, 'LoadIndexOutOfRange', 'load index', 'a load index of 0 to 200', at) : value;
}

const unknown = (scan: Scan, at: number): undefined =>
  fail(scan, 'UnknownSpeedSymbol', 'speed symbol', 'a letter B to Y without I, O and X, or A1 to A8', at);

/**
 * The symbol follows the index directly, or after a space. A lone letter behind a space that could as well be a load range is
 * refused: `113/108 L` may mean 75 mph or a ply rating of 20.
 */
function readSymbol(scan: Scan, found: Markings): string | undefined {
  const back = scan.at;
  skipSpaces(scan);
  const at = scan.at;
  const apart = at > back;
  const text = word(scan);
  const low = text === 'A' && isDigit(codeAt(scan)) ? scan.text.slice(scan.at, scan.at + 1) : '';
  const symbol = text + low;
  if (low !== '' && symbols.has(symbol)) {
    if (isDigit(codeAt(scan, scan.at + 1))) return unknown(scan, at);
    scan.at += 1;
    return symbol;
  }
  if (text.length !== 1 || (apart && !symbols.has(text) && plyOf(text) !== undefined)) {
    if (!apart && text !== '') return unknown(scan, at);
    scan.at = back;
    return undefined;
  }
  if (!symbols.has(symbol)) return unknown(scan, at);
  if (apart && plyOf(text) !== undefined && found.range?.from !== 'load range') {
    return fail(
      scan,
      'AmbiguousLetter',
      'speed symbol',
      'the speed symbol close to the index, or "load range" before the letter',
      at,
    );
  }
  return isLetter(codeAt(scan)) ? fail(scan, 'UnexpectedText', 'speed symbol', 'one letter', at) : text;
}
