/** The loads of a leaflet as bars of text. */
import type { FiguresInPrint } from './figures-in-print.js';
import type { LeafletBar } from './leaflet-data.js';

const cells = 20;
const mostBeyond = 6;

/** `[######......]`: load is `#`, room is `.`, beyond the limit is `X`. Load goes up, so that a full bar is never over. */
function bar({ check: { load, limit } }: LeafletBar): string {
  const share = load.value.value.div(limit.value.value).times(cells);
  const filled = Math.max(0, share.ceil().toNumber());
  const beyond = Math.min(Math.max(filled - cells, 0), mostBeyond);
  const inside = Math.min(filled, cells);
  return `[${'#'.repeat(inside)}${'.'.repeat(cells - inside)}]${'X'.repeat(beyond)}`;
}

export function barLine(each: LeafletBar, p: FiguresInPrint): string {
  const { load, limit, used, verdict } = each.check;
  const word = verdict === 'over' ? ' OVER' : '';
  return `${each.name.padEnd(14)}${bar(each)} ${p.bareLoad(load.value)} of ${p.capacity(limit.value)} (${p.used(used.value)})${word}`;
}
