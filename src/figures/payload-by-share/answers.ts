/** The answers on the chart: the best payload ringed, what holds anywhere a level line, the load as it is now a cross. */
import { element, label, line, tenth } from '../drawing/element.js';
import { ink } from '../drawing/look.js';
import { capacityText, plain } from '../drawing/numbers.js';
import type { FigureUnits } from '../drawing/options.js';
import { textWidth } from '../drawing/words.js';
import type { Chart } from './chart.js';
import { type Curve, leastAt } from './curves.js';
import type { SharesToDraw } from './shares.js';

const strong = { stroke: ink, 'stroke-width': 2, fill: 'none' };

function bestRing(
  { best, band }: SharesToDraw,
  curves: readonly Curve[],
  { grid, x, y, width }: Chart,
  units: FigureUnits,
): string {
  if (best === undefined) return '';
  const inBand = [plain(band.low), plain(band.high), ...grid].filter(
    (share) => share >= plain(band.low) && share <= plain(band.high),
  );
  const share = inBand.reduce(
    (found, next) => (leastAt(curves, next) > leastAt(curves, found) ? next : found),
    plain(band.low),
  );
  const text = `best ${capacityText(best.value, units)}`;
  const high = y(plain(best));
  return (
    element('circle', { cx: x(share), cy: high, r: 7, ...strong }) +
    label(Math.min(x(share) + 12, width - textWidth(text, 13) * 1.1), high - 8, text, { bold: true, size: 13 })
  );
}

function anywhereLine({ anywhere, band }: SharesToDraw, { x, y, left }: Chart, units: FigureUnits): string {
  if (anywhere === undefined || plain(band.low) === plain(band.high)) return '';
  const high = y(plain(anywhere));
  return (
    line(x(plain(band.low)), high, x(plain(band.high)), high, { ...strong, 'stroke-dasharray': '6 3' }) +
    label(left + 4, high + 16, `anywhere in the band ${capacityText(anywhere.value, units)}`)
  );
}

function nowCross({ now }: SharesToDraw, { x, y }: Chart): string {
  if (now === undefined) return '';
  const [at, high] = [x(plain(now.share)), y(plain(now.payload))];
  return (
    element('path', { d: `M${tenth(at - 6)} ${tenth(high - 6)}l12 12m0 -12l-12 12`, ...strong }) +
    label(at + 10, high + 4, 'now')
  );
}

/** Drawn last. */
export const answers = (
  data: SharesToDraw,
  curves: readonly Curve[],
  chart: Chart,
  units: FigureUnits,
): readonly string[] => [anywhereLine(data, chart, units), bestRing(data, curves, chart, units), nowCross(data, chart)];
