/** The bar of one check: load solid, room outlined, over cross-hatched beyond the mark of the limit. */
import type { Check } from '../ratings/index.js';
import { box, element, line, tenth } from './drawing/element.js';
import { ink, paint, pattern } from './drawing/look.js';
import { plain } from './drawing/numbers.js';
import type { Setting } from './drawing/options.js';

interface Place {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The bar reaches a quarter beyond the limit; what is more is cut with a break mark. */
const most = 1.25;

const breakMark = (x: number, y: number, height: number): string =>
  element('path', {
    d: `M${tenth(x - 8)} ${tenth(y + height + 2)}l4 -${height + 4}m0 ${height + 4}l4 -${height + 4}`,
    stroke: paint('paper'),
    'stroke-width': 2,
    fill: 'none',
  });

/** Draws it. `governs` gives it an outline of its own weight. */
export function bar(
  { load, limit, verdict }: Check,
  { x, y, width, height }: Place,
  { prefix }: Setting,
  governs: boolean,
  sure: { readonly from: number; readonly to: number } | undefined,
): string {
  const full = width / most;
  const share = Math.max(0, plain(load) / plain(limit));
  const at = (part: number): number => x + Math.max(0, Math.min(most, part)) * full;
  const middle = y + height / 2;
  const over =
    verdict === 'over'
      ? box(x + full, y, Math.max(2, at(share) - x - full), height, {
          fill: pattern(prefix, 'over'),
          stroke: paint('over'),
        }) + (share > most ? breakMark(x + width, y, height) : '')
      : '';
  const whisker =
    sure === undefined
      ? ''
      : line(at(sure.from), middle, at(sure.to), middle, { stroke: ink, 'stroke-width': '1.5' }) +
        [sure.from, sure.to]
          .map((end) => line(at(end), y + 1, at(end), y + height - 1, { stroke: ink, 'stroke-width': '1.5' }))
          .join('');
  return (
    box(x, y, full, height, { fill: paint('room') }) +
    box(x, y, Math.min(1, share) * full, height, { fill: paint('load') }) +
    over +
    box(x, y, full, height, {
      fill: 'none',
      stroke: governs ? ink : paint('hairline'),
      'stroke-width': governs ? 2 : 1,
    }) +
    line(x + full, y - 2, x + full, y + height + 2, { stroke: ink, 'stroke-width': governs ? 2 : 1 }) +
    whisker
  );
}
