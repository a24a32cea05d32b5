/** Payload by tongue share: each limit a line, the least of them thick. */
import { element, label, points } from '../drawing/element.js';
import { paint } from '../drawing/look.js';
import { capacityText, plain } from '../drawing/numbers.js';
import { type FigureOptions, type FigureUnits, framed, settingOf } from '../drawing/options.js';
import { answers } from './answers.js';
import { axes } from './axes.js';
import { chartOf } from './chart.js';
import { type Curve, crossings, curveOf, leastAt } from './curves.js';
import { endLabels } from './end-labels.js';
import type { SharesToDraw } from './shares.js';

const story = ({ best, anywhere, band }: SharesToDraw, curves: readonly Curve[], units: FigureUnits): string => {
  const governing = [
    ...new Set(
      [plain(band.low), plain(band.high), ...crossings(curves, plain(band.low), plain(band.high))].map(
        (share) => curves.find(({ payload }) => payload(share) === leastAt(curves, share))?.name ?? '',
      ),
    ),
  ];
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
 * A picture of the limits that are passed in; what must press is not drawn.
 *
 * @param data limits, empty weight, band, and the payloads found; @param options units, prefix of ids, width
 * @returns the text of an SVG
 * @example payloadByShare({ curb: given('trailer weight', lb(3650)), limits: [{ name: 'GVWR', on: 'gross', limit: given('GVWR', lb(14000)) }], band: guidelineFor('ball') }).includes('GVWR') // true
 * @source each limit carries its own
 */
export function payloadByShare(data: SharesToDraw, options: FigureOptions = {}): string {
  const setting = settingOf(options, 'shares');
  const { units } = setting;
  const curves = data.limits.filter(({ atLeast }) => atLeast !== true).map((limit) => curveOf(limit, data.curb));
  if (curves.length === 0)
    return framed(setting, {
      title: 'Payload by tongue share',
      description: 'No limit is known.',
      height: 24,
      parts: [label(2, 14, 'No limit is known.')],
    });
  const chart = chartOf(data, curves, setting);
  const { x, y, grid, top, bottom, below } = chart;
  const drawn = curves.filter(({ payload }) => grid.some((share) => payload(share) < top));
  const along = (payload: (share: number) => number): string =>
    points(
      grid
        .filter((share) => payload(share) <= top && payload(share) >= bottom)
        .map((share) => [x(share), y(payload(share))] as const),
    );
  const names = endLabels(drawn, chart);
  const curve = { fill: 'none', 'stroke-linejoin': 'round' };
  return framed(setting, {
    title: 'Payload by tongue share',
    description: story(data, curves, units),
    height: Math.max(below + 40, names.height),
    parts: [
      ...axes(chart, data, units),
      ...drawn.map(({ payload }) =>
        element('polyline', { points: along(payload), stroke: paint('steel'), 'stroke-width': 1, ...curve }),
      ),
      element('polyline', {
        points: along((share) => leastAt(curves, share)),
        stroke: paint('load'),
        'stroke-width': 4,
        ...curve,
      }),
      ...answers(data, curves, chart, units),
      ...names.parts,
    ],
  });
}
