/** Payload by tongue share: each limit a line, the least of them thick. */
import type { LadenLimit, ShareBand } from '../../load/index.js';
import type { Derived } from '../../trace/index.js';
import { box, element, label, line, points } from '../drawing/element.js';
import { ink, paint } from '../drawing/look.js';
import { axisText, capacityText, plain, roundStep, weightUnit } from '../drawing/numbers.js';
import { type FigureOptions, framed, settingOf } from '../drawing/options.js';
import { cut, textWidth } from '../drawing/words.js';
import { type Curve, crossings, curveOf, leastAt, steps } from './curves.js';
import { endLabels } from './end-labels.js';

/** What the figure needs: the limits of the laden trailer, and the payloads found under them. */
export interface SharesToDraw {
  /** Weight of the empty trailer. */
  readonly curb: Derived<'lb'>;
  /** Every limit, on gross, on the axles or on the tongue. */
  readonly limits: readonly LadenLimit[];
  /** The band of shares the answer is for. */
  readonly band: ShareBand;
  /** The part of the tongue load that spring bars put back on the axles. */
  readonly shareReturnedByBars?: Derived<'ratio'>;
  /** The most that any share of the band allows. */
  readonly best?: Derived<'lb'>;
  /** What holds at every share of the band. */
  readonly anywhere?: Derived<'lb'>;
  /** The load as it is now. */
  readonly now?: { readonly share: Derived<'ratio'>; readonly payload: Derived<'lb'> };
}

/** The shares that are drawn: the band and a margin, and where the load is now. */
function shareRange({ band, now }: SharesToDraw): readonly [number, number] {
  const ends = [plain(band.low), plain(band.high), ...(now === undefined ? [] : [plain(now.share)])];
  return [Math.max(0.02, Math.min(...ends) - 0.04), Math.min(0.6, Math.max(...ends) + 0.04)];
}

const story = ({ best, anywhere, band }: SharesToDraw, curves: readonly Curve[], units: 'pounds and feet' | 'kilograms and metres'): string => {
  const governing = [...new Set([plain(band.low), plain(band.high), ...crossings(curves, plain(band.low), plain(band.high))].map((share) => curves.find(({ payload }) => payload(share) === leastAt(curves, share))?.name ?? ''))];
  return [
    best === undefined ? '' : `Best ${capacityText(best.value, units)}.`,
    anywhere === undefined ? '' : `At every share of the band ${capacityText(anywhere.value, units)}.`,
    `In the band set by ${governing.join(', then ')}.`,
  ]
    .filter((part) => part !== '')
    .join(' ');
};

/**
 * How does the payload change with the share that the tongue takes?
 *
 * Each limit a thin line named at its end; the least of them thick; the band shaded; the best payload ringed; what holds at every share of the
 * band a level line; where the load is now a cross.
 *
 * A picture of the limits that are passed in: those that do not depend on gross, axles or tongue alone are not in it.
 *
 * @param data limits, empty weight, band, and the payloads found; @param options units, prefix of ids, width
 * @returns the text of an SVG
 * @example payloadByShare({ curb: given('trailer weight', lb(3650)), limits: [{ name: 'GVWR', on: 'gross', limit: given('GVWR', lb(14000)) }], band: guidelineFor('ball') }).includes('GVWR') // true
 * @source each limit carries its own
 */
export function payloadByShare(data: SharesToDraw, options: FigureOptions = {}): string {
  const setting = settingOf(options, 'shares');
  const { width, narrow, units } = setting;
  const { curb, limits, band, best, anywhere, now } = data;
  const returned = data.shareReturnedByBars === undefined ? 0 : plain(data.shareReturnedByBars);
  const curves = limits.map((limit) => curveOf(limit, curb, returned));
  if (curves.length === 0)
    return framed(setting, {
      title: 'Payload by tongue share',
      description: 'No limit is known.',
      height: 24,
      parts: [label(2, 14, 'No limit is known.')],
    });
  const [from, to] = shareRange(data);
  const grid = [...steps(from, to, 40), ...crossings(curves, from, to)].sort((a, b) => a - b);
  const least = grid.map((share) => leastAt(curves, share));
  const known = [...least, ...(now === undefined ? [] : [plain(now.payload)])];
  const [lowest, highest] = [Math.min(...known), Math.max(...known)];
  const spread = Math.max(highest - lowest, highest * 0.1, 1);
  const [bottom, top] = [lowest - spread * 0.25, highest + spread * 0.8];
  const unit = weightUnit(units);
  const [left, right, above, below] = [narrow ? 52 : 64, width - (narrow ? 18 : 170), 18, narrow ? 250 : 300];
  const x = (share: number): number => left + ((share - from) / (to - from)) * (right - left);
  const y = (payload: number): number => above + ((top - Math.max(bottom, Math.min(top, payload))) / (top - bottom)) * (below - above);
  const drawn = curves.filter(({ payload }) => grid.some((share) => payload(share) < top));
  const step = roundStep((top - bottom) / unit.pounds, 6);
  const marks = steps(Math.ceil(bottom / unit.pounds / step), Math.floor(top / unit.pounds / step), Math.max(1, Math.floor(top / unit.pounds / step) - Math.ceil(bottom / unit.pounds / step))).map((count) => count * step);
  const shareMarks = steps(Math.ceil(from * 50) / 50, Math.floor(to * 50) / 50, Math.max(1, Math.round((Math.floor(to * 50) - Math.ceil(from * 50))))).filter((_, i) => !narrow || i % 2 === 0);
  const curvePoints = (payload: (share: number) => number): string =>
    points(grid.filter((share) => payload(share) <= top && payload(share) >= bottom).map((share) => [x(share), y(payload(share))] as const));
  const legend = endLabels(drawn, { x, y, from, to, top, bottom, right, width, narrow, below, grid });
  const bestShare = best === undefined ? undefined : grid.filter((share) => share >= plain(band.low) - 1e-9 && share <= plain(band.high) + 1e-9).reduce<number | undefined>((found, share) => found === undefined || leastAt(curves, share) > leastAt(curves, found) ? share : found, undefined);
  const bestText = best && `best ${capacityText(best.value, units)}`;
  const anywhereText = anywhere && `anywhere in the band ${capacityText(anywhere.value, units)}`;
  return framed(setting, {
    title: 'Payload by tongue share',
    description: story(data, curves, units),
    height: Math.max(below + 40, legend.height),
    parts: [
      box(x(plain(band.low)), above, Math.max(2, x(plain(band.high)) - x(plain(band.low))), below - above, { fill: paint('room') }),
      ...marks.map((mark) => line(left, y(mark * unit.pounds), right, y(mark * unit.pounds), { stroke: paint('hairline'), 'stroke-width': '0.5' }) + label(left - 6, y(mark * unit.pounds) + 4, axisText(mark), { anchor: 'end', size: 11 })),
      label(2, 12, `payload, ${unit.name}`, { size: 11 }),
      ...shareMarks.map((share) => line(x(share), below, x(share), below + 4, { stroke: ink, 'stroke-width': 1 }) + label(x(share), below + 18, `${Math.round(share * 100)} %`, { anchor: 'middle', size: 11 })),
      label((left + right) / 2, below + 34, 'share of the gross weight on the tongue', { anchor: 'middle', size: 11 }),
      line(left, below, right, below, { stroke: ink, 'stroke-width': 1 }),
      ...drawn.map(({ payload }) => element('polyline', { points: curvePoints(payload), fill: 'none', stroke: paint('steel'), 'stroke-width': 1 })),
      element('polyline', { points: points(grid.map((share, i) => [x(share), y(least[i] ?? 0)] as const)), fill: 'none', stroke: paint('load'), 'stroke-width': 4, 'stroke-linejoin': 'round' }),
      ...(anywhere && anywhereText
        ? [line(x(plain(band.low)), y(plain(anywhere)), x(plain(band.high)), y(plain(anywhere)), { stroke: ink, 'stroke-width': 2, 'stroke-dasharray': '6 3' }), label(left + 4, y(plain(anywhere)) + 16, anywhereText)]
        : []),
      ...(best && bestText && bestShare !== undefined
        ? [element('circle', { cx: x(bestShare), cy: y(plain(best)), r: 7, fill: 'none', stroke: ink, 'stroke-width': 2 }), label(Math.min(x(bestShare) + 12, width - textWidth(bestText, 13) * 1.1), y(plain(best)) - 8, bestText, { bold: true, size: 13 })]
        : []),
      ...(now === undefined
        ? []
        : [element('path', { d: `M${(x(plain(now.share)) - 6).toFixed(1)} ${(y(plain(now.payload)) - 6).toFixed(1)}l12 12m0 -12l-12 12`, stroke: ink, 'stroke-width': 2, fill: 'none' }), label(x(plain(now.share)) + 10, y(plain(now.payload)) + 4, cut('now', 60))]),
      ...legend.parts,
    ],
  });
}
