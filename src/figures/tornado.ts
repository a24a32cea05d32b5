/** Which input moves a figure most: one bar per input, about the calculated figure. */
import type { Bar } from '../study/index.js';
import { box, element, label, line } from './drawing/element.js';
import { ink, paint, pattern } from './drawing/look.js';
import { axisText } from './drawing/numbers.js';
import { type FigureOptions, framed, settingOf } from './drawing/options.js';
import { cut, textWidth } from './drawing/words.js';

/** What a tornado shows: the answer of `oneAtATime`, with a name and a unit. */
export interface TornadoData {
  /** The figure in words: `reserve, gross against GVWR`. */
  readonly what: string;
  /** Its unit: `lb`. */
  readonly unit: string;
  /** The calculated figure. */
  readonly base: number;
  /** The bars, in the order in which they are drawn. */
  readonly bars: readonly Bar[];
  /** Where the wall is; zero by default: a reserve below zero is over. `none` for a figure without one. */
  readonly wall?: number | 'none';
}

const rounded = (value: number): string => axisText(Math.round(value));

/**
 * Which input moves this figure most, and does any of them take it past its limit?
 *
 * A bar from the least to the greatest value of the figure while one input varies; the line through all bars is the calculated figure; the
 * wall is where a reserve is zero. What lies beyond the wall is cross-hatched.
 *
 * Inputs that only together cross the wall do not show: see `study`.
 *
 * @param data from `oneAtATime`, with the name and unit of its figure; @param options units are those of the data; prefix, width
 * @returns the text of an SVG
 * @example tornado({ what: 'reserve', unit: 'lb', base: 100, bars: [{ factor: 'machine weight', low: -50, high: 250, swing: 300 }] }).includes('machine weight') // true
 * @source common practice, no source
 */
export function tornado({ what, unit, base, bars, wall = 0 }: TornadoData, options: FigureOptions = {}): string {
  const setting = settingOf(options, 'tornado');
  const { width, narrow, prefix } = setting;
  const finite = bars.filter(({ low, high }) => Number.isFinite(low) && Number.isFinite(high));
  const ends = [base, ...(wall === 'none' ? [] : [wall]), ...finite.flatMap(({ low, high }) => [low, high])];
  const [from, to] = [Math.min(...ends), Math.max(...ends)];
  const spans = finite.map(({ low, high }) => `${rounded(low)} to ${rounded(high)}`);
  const column = Math.max(0, ...spans.map((text) => textWidth(text))) + 12;
  const left = narrow ? 8 : width * 0.34;
  const right = width - (narrow ? 8 : column);
  const x = (value: number): number => left + (to === from ? 0.5 : (value - from) / (to - from)) * (right - left);
  const step = narrow ? 40 : 24;
  const top = 34;
  const parts = finite.flatMap(({ factor, low, high }, i) => {
    const y = top + i * step + (narrow ? 16 : 0);
    const past = wall === 'none' ? low : Math.min(Math.max(low, wall), high);
    const text = narrow ? y - 4 : y + 12;
    return [
      label(2, text, cut(factor, narrow ? width - column : width * 0.34 - 8)),
      box(x(past), y, x(high) - x(past), 14, { fill: paint('load') }),
      past > low ? box(x(low), y, x(past) - x(low), 14, { fill: pattern(prefix, 'over'), stroke: paint('over') }) : '',
      label(width - 2, text, spans[i] ?? '', { anchor: 'end' }),
    ];
  });
  const anchorAt = (place: number): 'start' | 'middle' | 'end' => {
    if (place < 50) return 'start';
    return place > width - 50 ? 'end' : 'middle';
  };
  const bottom = top + finite.length * step;
  const uprights = [
    line(x(base), top - 6, x(base), bottom, { stroke: ink, 'stroke-width': 1 }),
    label(x(base), 12, `now ${rounded(base)} ${unit}`, { anchor: anchorAt(x(base)), bold: true }),
    ...(wall === 'none'
      ? []
      : [
          line(x(wall), top - 6, x(wall), bottom, { stroke: paint('over'), 'stroke-width': 3 }),
          label(x(wall), 25, wall === 0 ? 'limit' : `limit ${rounded(wall)}`, {
            fill: paint('over'),
            anchor: anchorAt(x(wall)),
          }),
        ]),
  ];
  const crossing = finite.filter(({ low }) => wall !== 'none' && low < wall).map(({ factor }) => factor);
  return framed(setting, {
    title: `What moves the ${what} most`,
    description: `${what} is ${rounded(base)} ${unit} as it stands. ${finite.map(({ factor, low, high }) => `${factor}: ${rounded(low)} to ${rounded(high)}`).join('; ')}.${crossing.length === 0 ? '' : ` Past the limit with: ${crossing.join(', ')}.`}`,
    height: bottom + 6,
    parts: [element('g', {}, ...parts), ...uprights],
  });
}
