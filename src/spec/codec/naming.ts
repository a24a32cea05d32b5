/** The name of a figure in the working: its own words, with the axle it belongs to or the piece it is a part of before them. */
import type * as t from 'io-ts';
import { has, isRecord, own } from './fault.js';

/** `GVWR`; `{ axle: 'GAWR' }` is `axle 1 GAWR`; `{ item: 'weight' }` is `excavator weight`; `{ of: 'number of' }` is `number of rails`. */
export type Naming = string | { readonly axle: string } | { readonly item: string } | { readonly of: string };

function axleNumber(context: t.Context): number {
  const at = context.findIndex(({ key }) => key === 'axles');
  return Number(context[at + 1]?.key ?? 0) + 1;
}

/** The name of the nearest record around a figure that has one. */
function nameAround(context: t.Context): string {
  for (let i = context.length - 2; i >= 0; i -= 1) {
    const around = context[i]?.actual;
    const name = isRecord(around) ? own(around, 'name') : undefined;
    if (typeof name === 'string') return name;
  }
  return 'piece';
}

/** The name of the figure at a place. */
export function symbolAt(naming: Naming, context: t.Context): string {
  if (typeof naming === 'string') return naming;
  if (has(naming, 'axle')) return `axle ${axleNumber(context)} ${naming.axle}`;
  return has(naming, 'of') ? `${naming.of} ${nameAround(context)}` : `${nameAround(context)} ${naming.item}`;
}
