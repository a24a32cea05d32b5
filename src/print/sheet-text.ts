/** What an audit of a sheet found, in words for a page of 80 columns. */
import type { SheetAudit } from '../choose/index.js';
import { collected } from '../units/internal.js';
import { remark } from './text-layout.js';

/** Every set of figures that cannot all be true, each with its arithmetic. @example sheetText(orThrow(auditSheet({ gvwr: '14,000 lb', coupler: '15,000 lb' }))).startsWith('The sheet agrees with itself') // true */
export function sheetText({ conflicts, asked }: SheetAudit): string {
  if (conflicts.length === 0)
    return `The sheet agrees with itself: ${asked} ${asked === 1 ? 'relation was' : 'relations were'} asked. That does not make it right.`;
  return collected(conflicts, ({ figures, arithmetic }) => [
    remark(`cannot all be true: ${figures.map(({ name, printed }) => `${name} ${printed}`).join(', ')}`),
    ...arithmetic.map((line) => remark(line)),
  ]).join('\n');
}
