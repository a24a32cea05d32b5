/** Dimension lines from the coupler, and the window on the deck in words. */
import { box, label, line } from '../drawing/element.js';
import { ink, paint } from '../drawing/look.js';
import { lengthText, plain } from '../drawing/numbers.js';
import type { Setting } from '../drawing/options.js';
import { broken, cut, textWidth } from '../drawing/words.js';
import { type DeckWindow, setBy } from '../placement/windows.js';
import type { Measured } from './scene.js';
import type { Paper } from './shape.js';

/** Height of a dimension line and its label: next to the line, or below it in a narrow picture. */
export const dimensionHeight = ({ narrow }: Setting): number => (narrow ? 32 : 22);

/** A line a measure, from the coupler. */
export function dimensionLines(
  measures: readonly Measured[],
  { x }: Paper,
  top: number,
  setting: Setting,
): readonly string[] {
  const { width, units, narrow } = setting;
  return measures.map(({ name, at }, i) => {
    const y = top + i * dimensionHeight(setting) + 8;
    const [left, right] = [x(0), x(plain(at))];
    const ends = [left, right].map((end) => line(end, y - 4, end, y + 4, { stroke: ink, 'stroke-width': 1 })).join('');
    const text = cut(`${lengthText(at.value, units)} ${name}`, width - 12);
    const wide = textWidth(text);
    const beside = right + 6 + wide <= width;
    const start = beside ? right + 6 : Math.max(left + 4, right - wide - 6);
    const words = narrow
      ? label(Math.min(left, width - wide - 2), y + 16, text)
      : (beside ? '' : box(start - 4, y - 8, wide, 16, { fill: paint('paper') })) + label(start, y + 4, text);
    return line(left, y, right, y, { stroke: paint('hairline'), 'stroke-width': 1 }) + ends + words;
  });
}

/** The band on the deck: room for the balance point, a line where it is now. */
export function windowBand({ window, now }: DeckWindow, { x, deck }: Paper): string {
  const [from, to] = [x(plain(window.lower.at)), x(plain(window.upper.at))];
  const band = window.empty
    ? ''
    : box(from, deck - 7, Math.max(2, to - from), 7, {
        fill: paint('load'),
        'fill-opacity': '0.35',
        stroke: paint('load'),
      });
  const mark =
    now === undefined
      ? ''
      : line(x(plain(now.at)), deck - 12, x(plain(now.at)), deck + 2, { stroke: ink, 'stroke-width': 2 });
  return band + mark;
}

/** The window in words: both ends, each with the limit that sets it, and where the balance point is now. */
export function windowWords({ machine, window, now }: DeckWindow, { units, width }: Setting): readonly string[] {
  const [lower, upper] = [
    lengthText(window.lower.at.value, units, 'rear'),
    lengthText(window.upper.at.value, units, 'front'),
  ];
  const room = window.empty
    ? `No place for the balance point of ${machine}: no further forward than ${lower} (${setBy(window.lower)}), no further back than ${upper} (${setBy(window.upper)}).`
    : `Balance point of ${machine} between ${lower} (${setBy(window.lower)}) and ${upper} (${setBy(window.upper)}).`;
  const at = now && lengthText(now.at.value, units);
  const inside = now?.breaks.length === 0 ? 'inside' : `outside, by ${now?.breaks.join(' and ')}`;
  const text = at === undefined ? room : `${room} Now at ${at}: ${inside}.`;
  return broken(text, width - 8);
}
