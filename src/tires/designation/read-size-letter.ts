/** A size by letter: H78-15. */
import { percents } from '../load/size-figures.js';
import type { LetterSize } from './designation.js';
import { readConstruction, readRim, type SizeRead } from './read-size-parts.js';
import { codeAt, digits, fail, isDigit, type Scan } from './scan.js';

/** H78-15, or HR78-15 for radial. */
export const isLetterSize = (scan: Scan, letters: string): boolean =>
  isDigit(codeAt(scan)) &&
  letters >= 'A' &&
  letters < 'O' &&
  (letters.length === 1 || (letters.length === 2 && letters.endsWith('R')));
export function letterSize(scan: Scan, letters: string): SizeRead | undefined {
  const at = scan.at;
  const aspect = digits(scan);
  if (!['50', '60', '70', '78'].includes(aspect))
    return fail(scan, 'AspectOutOfRange', 'aspect', '50, 60, 70 or 78 behind a size letter', at);
  const mark = readConstruction(scan, false);
  const rim = mark && readRim(scan);
  if (!rim) return undefined;
  const size: LetterSize = {
    form: 'letter',
    letter: letters.slice(0, 1),
    aspect: percents(aspect),
    construction: letters.length === 2 ? 'R' : mark,
    rim,
  };
  return { prefix: '', size };
}
