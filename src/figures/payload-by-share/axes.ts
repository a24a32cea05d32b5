/** The axes of payload over tongue share, and the band of shares the answer is for. */
import { box, label, line } from '../drawing/element.js';
import { ink, paint } from '../drawing/look.js';
import { axisText, plain, roundStep, weightUnit } from '../drawing/numbers.js';
import type { FigureUnits } from '../drawing/options.js';
import type { Chart } from './chart.js';
import type { SharesToDraw } from './shares.js';

/** Multiples of a step between two ends. */
function multiples(from: number, to: number, step: number): readonly number[] {
  const first = Math.ceil(from / step);
  const count = Math.max(0, Math.floor(to / step) - first + 1);
  return Array.from({ length: Math.min(count, 50) }, (_, i) => (first + i) * step);
}

/** Drawn first, so that every curve lies on top. */
export function axes(chart: Chart, { band }: SharesToDraw, units: FigureUnits): readonly string[] {
  const { x, y, left, right, above, below, narrow, from, to, top, bottom } = chart;
  const unit = weightUnit(units);
  const step = roundStep((top - bottom) / unit.pounds, 6);
  const [low, high] = [x(plain(band.low)), x(plain(band.high))];
  return [
    box(low, above, Math.max(2, high - low), below - above, { fill: paint('room') }),
    ...multiples(bottom / unit.pounds, top / unit.pounds, step).map((mark) => {
      const at = y(mark * unit.pounds);
      return (
        line(left, at, right, at, { stroke: paint('hairline'), 'stroke-width': '0.5' }) +
        label(left - 6, at + 4, axisText(mark), { anchor: 'end', size: 11 })
      );
    }),
    label(2, 12, `payload, ${unit.name}`, { size: 11 }),
    ...multiples(from, to, narrow ? 0.04 : 0.02).map(
      (share) =>
        line(x(share), below, x(share), below + 4, { stroke: ink, 'stroke-width': 1 }) +
        label(x(share), below + 18, `${Math.round(share * 100)} %`, { anchor: 'middle', size: 11 }),
    ),
    label((left + right) / 2, below + 34, 'share of the gross weight on the tongue', { anchor: 'middle', size: 11 }),
    line(left, below, right, below, { stroke: ink, 'stroke-width': 1 }),
  ];
}
