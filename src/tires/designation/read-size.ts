/** The size in a designation: metric, diameter and width, numeric, letter. */

import { inches, millimetres, percents } from '../load/size-figures.js';
import type { Designation } from './designation.js';
import { isLetterSize, letterSize } from './read-size-letter.js';
import { readConstruction, readRim, rimOf, type SizeRead, startsConstruction, widthCode } from './read-size-parts.js';

import { codeAt, fail, number, type Scan, skipSpaces, take, word } from './scan.js';

const prefixes: readonly string[] = ['', 'P', 'LT', 'ST', 'T', 'S'];
const isPrefix = (text: string): text is Designation['prefix'] => prefixes.includes(text);

/** Reads prefix and size; the limits of width, aspect and rim only keep out slips of the pen (from memory of the range in use). */
export function readSize(scan: Scan): SizeRead | undefined {
  skipSpaces(scan);
  const from = scan.at;
  const letters = word(scan);
  if (isLetterSize(scan, letters)) return letterSize(scan, letters);
  if (!isPrefix(letters)) return fail(scan, 'BadPrefix', 'prefix', 'ST, LT, P, T, S or none', from);
  skipSpaces(scan);
  const at = scan.at;
  const first = number(scan, 'width');
  if (first === undefined) return undefined;
  if (first === '') return fail(scan, 'MissingWidth', 'width', 'the width of the tire', at);
  skipSpaces(scan);
  const size = Number(first);
  if (size >= 60 && !first.includes('.')) return metric(scan, letters, size, at);
  if (letters === 'P' || letters === 'T' || letters === 'S')
    return fail(scan, 'WidthOutOfRange', 'width', 'a width in millimetres behind this prefix', at);
  if (take(scan, 'X')) return withDiameter(scan, letters, first, at);
  return numeric(scan, letters, first, at);
}

function metric(scan: Scan, prefix: Designation['prefix'], width: number, at: number): SizeRead | undefined {
  if (width < 100 || width > 650) return fail(scan, 'WidthOutOfRange', 'width', 'a width of 100 to 650 mm', at);
  let aspect: number | undefined;
  if (take(scan, '/')) {
    skipSpaces(scan);
    const begin = scan.at;
    const text = number(scan, 'aspect');
    if (text === undefined) return undefined;
    if (text === '') return fail(scan, 'MissingAspect', 'aspect', 'the height as a percentage of the width', begin);
    aspect = Number(text);
    if (aspect < 20 || aspect > 100)
      return fail(scan, 'AspectOutOfRange', 'aspect', 'a percentage of 20 to 100', begin);
    if (aspect % 5 !== 0)
      return fail(scan, 'UnknownSize', 'aspect', 'an aspect of a listed series: a multiple of 5', begin);
  } else if (prefix !== '' || (codeAt(scan) !== 82 && codeAt(scan) !== 90)) {
    return fail(scan, 'MissingAspect', 'aspect', 'a slash and the height as a percentage of the width');
  }
  const construction = readConstruction(scan, true);
  if (construction === undefined) return undefined;
  const rim = readRim(scan);
  return (
    rim && {
      prefix,
      size: {
        form: 'metric',
        width: millimetres(width),
        aspect: aspect === undefined ? undefined : percents(aspect),
        construction,
        rim,
      },
    }
  );
}

/** After the x comes a width and then a rim; or the rim itself, where people write x for the hyphen. */
function withDiameter(scan: Scan, prefix: Designation['prefix'], first: string, at: number): SizeRead | undefined {
  skipSpaces(scan);
  const secondAt = scan.at;
  const second = number(scan, 'width');
  if (second === undefined) return undefined;
  if (second === '') return fail(scan, 'MissingRim', 'rim', 'a width or the rim diameter', secondAt);
  skipSpaces(scan);
  if (!startsConstruction(scan)) {
    const code = widthCode(scan, first, at);
    const rim = code && rimOf(scan, second, secondAt);
    return rim && code
      ? {
          prefix,
          size: { form: 'numeric', width: inches(code), code, alternative: undefined, construction: 'unstated', rim },
        }
      : undefined;
  }
  if (Number(first) < 10 || Number(first) > 60)
    return fail(scan, 'DiameterOutOfRange', 'diameter', 'a diameter of 10 to 60 in', at);
  const width = widthCode(scan, second, secondAt);
  if (width === undefined) return undefined;
  const construction = readConstruction(scan, false);
  const rim = construction && readRim(scan);
  return rim && construction
    ? { prefix, size: { form: 'diameter and width', diameter: inches(first), width: inches(width), construction, rim } }
    : undefined;
}

function numeric(scan: Scan, prefix: Designation['prefix'], first: string, at: number): SizeRead | undefined {
  const code = widthCode(scan, first, at);
  if (code === undefined) return undefined;
  let alternative: string | undefined;
  if (take(scan, '/')) {
    const begin = scan.at;
    const second = number(scan, 'width');
    if (second === undefined) return undefined;
    if (second === '') return fail(scan, 'MissingWidth', 'width', 'the alternative width behind the slash', begin);
    alternative = widthCode(scan, second, begin);
    if (alternative === undefined) return undefined;
    skipSpaces(scan);
  }
  const construction = readConstruction(scan, false);
  const rim = construction && readRim(scan);
  return rim && construction
    ? { prefix, size: { form: 'numeric', width: inches(code), code, alternative, construction, rim } }
    : undefined;
}
