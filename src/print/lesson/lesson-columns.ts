/** The columns of a lesson. */
import type { Node } from '../../trace/index.js';
import { inReaderUnits, type Quantity, type ReaderUnits, showBrief, showUnit, type Unit } from '../../units/index.js';
import { width } from '../text-layout.js';

/** A figure left blank. */
export const blankLine = '_________';

const places = (q: Quantity<Unit>): number => (q.value.abs().lt(1) ? 4 : 2);
export const textOf = (q: Quantity<Unit>): string => showBrief(q, places(q));

const columnWidth = 13;
const mostColumns = 3;

/** Figures of any other unit bring it along. */
const otherWidth = 21;

/** Writes figures in columns, one for each unit; units beyond the third share the last column, written out. */
export interface Columns {
  readonly head: string;
  readonly nameWidth: number;
  readonly cells: (node: Node) => string;
}

export function columnsFor(nodes: readonly Node[], units: ReaderUnits, blank: ReadonlySet<Node>): Columns {
  const found = [...new Set(nodes.map(({ value }) => inReaderUnits(value, units).unit))];
  const own = found.length <= mostColumns ? found : found.slice(0, mostColumns - 1);
  const others = own.length < found.length;
  const heads = own.map((unit) => (showUnit(unit) || 'share').padStart(columnWidth));
  return {
    head: [...heads, ...(others ? ['other'.padStart(otherWidth)] : [])].join(''),
    // Two columns are left for the mark.
    nameWidth: width - 2 - own.length * columnWidth - (others ? otherWidth : 0),
    cells: (node) => {
      const value = inReaderUnits(node.value, units);
      const at = own.indexOf(value.unit);
      const unit = showUnit(value.unit);
      if (blank.has(node))
        return `${' '.repeat(columnWidth * (at === -1 ? own.length : at))}${blankLine.padStart(columnWidth)}`;
      if (at === -1) return `${' '.repeat(columnWidth * own.length)}${textOf(value).padStart(otherWidth)}`;
      const bare = unit === '' ? textOf(value) : textOf(value).slice(0, -unit.length - 1);
      return `${' '.repeat(columnWidth * at)}${bare.padStart(columnWidth)}`;
    },
  };
}
