/** What more deck costs: a bar a length, empty weight below, payload above. */
import type { PayloadByLength } from '../members/index.js';
import type { Derived } from '../trace/index.js';
import { box, label, line } from './drawing/element.js';
import { ink, paint, pattern } from './drawing/look.js';
import { capacityText, deckText, loadText, plain } from './drawing/numbers.js';
import { type FigureOptions, framed, settingOf } from './drawing/options.js';
import { broken } from './drawing/words.js';

/** What the figure needs: the rows of `payloadByLength`, and the GVWR they were calculated with. */
export interface LengthsToDraw {
  /** One row a length, from `payloadByLength`. */
  readonly rows: PayloadByLength['rows'];
  /** The GVWR that empty weight and payload fill. */
  readonly gvwr: Derived<'lb'>;
  /** The place of the axles at each length, in words; optional. */
  readonly axlePlaces?: readonly string[];
}

/**
 * What do more feet of deck cost in payload?
 *
 * One bar a length up to the GVWR: the empty weight below, solid; the payload above, outlined. Payloads are rounded down, empty weights up.
 *
 * Payload on the GVWR only: axles, tongue and the place of the machine are asked again for each length.
 *
 * @param data rows of `payloadByLength` and the GVWR; @param options units, prefix, width
 * @returns the text of an SVG
 * @example payloadByLength({ rows: [], gvwr: given('GVWR', lb(14000)) }).startsWith('<svg') // true
 * @source arithmetic
 */
export function payloadByLength({ rows, gvwr, axlePlaces = [] }: LengthsToDraw, options: FigureOptions = {}): string {
  const setting = settingOf(options, 'lengths');
  const { width, units, prefix } = setting;
  const heading = broken(`GVWR ${capacityText(gvwr.value, units)}: payload above, empty weight below`, width - 6);
  const [top, tall] = [14 + heading.length * 16, 180];
  const whole = Math.max(plain(gvwr), ...rows.map(({ emptyWeight }) => plain(emptyWeight)));
  const step = width / Math.max(1, rows.length);
  const thick = Math.min(64, step * 0.6);
  const y = (weight: number): number => top + tall - (weight / whole) * tall;
  const limit = y(plain(gvwr));
  const parts = rows.flatMap(({ length, emptyWeight, payload, verdict }, i) => {
    const middle = step * (i + 0.5);
    const empty = plain(emptyWeight);
    const within = y(Math.min(empty, plain(gvwr)));
    const over = verdict === 'over';
    return [
      box(middle - thick / 2, limit, thick, within - limit, { fill: paint('room'), stroke: paint('hairline') }),
      box(middle - thick / 2, within, thick, top + tall - within, { fill: paint('load') }),
      over
        ? box(middle - thick / 2, y(empty), thick, limit - y(empty), {
            fill: pattern(prefix, 'over'),
            stroke: paint('over'),
          })
        : '',
      label(middle, over ? y(empty) - 6 : within - 8, over ? 'over' : capacityText(payload.value, units), {
        anchor: 'middle',
        bold: true,
        size: 13,
        fill: over ? paint('over') : ink,
      }),
      label(middle, top + tall + 16, deckText(length.value, units), { anchor: 'middle', bold: true }),
      label(middle, top + tall + 32, loadText(emptyWeight.value, units), { anchor: 'middle' }),
      axlePlaces[i] === undefined ? '' : label(middle, top + tall + 48, axlePlaces[i], { anchor: 'middle', size: 11 }),
    ];
  });
  return framed(setting, {
    title: 'Payload by length of deck',
    description: `GVWR ${capacityText(gvwr.value, units)}. ${rows.map(({ length, emptyWeight, payload, verdict }) => `Deck of ${deckText(length.value, units)}: empty ${loadText(emptyWeight.value, units)}, ${verdict === 'over' ? 'over the GVWR when empty' : `payload ${capacityText(payload.value, units)}`}`).join('. ')}.`,
    height: top + tall + (axlePlaces.length === 0 ? 42 : 58),
    parts: [
      ...parts,
      line(0, limit, width, limit, { stroke: ink, 'stroke-width': 2 }),
      ...heading.map((text, i) => label(2, limit - 6 - (heading.length - 1 - i) * 16, text)),
    ],
  });
}
