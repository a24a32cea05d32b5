/** A page of a fixed number of lines, shared out among blocks that each have a label. */

import { collected } from '../units/internal.js';
import { folded, width } from './text-layout.js';

/** The column of the labels. */
export const labelWidth = 13;

/** A part of the page: its label, its lines one by one, and how many of them it keeps when the page is full. */
export interface Block {
  readonly label: string;
  readonly items: readonly string[];
  /** The lines it has before others get more. */
  readonly usual: number;
  /** The lines it keeps when even the usual ones are too many. */
  readonly floor: number;
  /** The same items in fewer lines: those beyond the first `whole` run together. */
  readonly packed?: (whole: number) => readonly string[];
}

const foldedItem = (item: string): readonly string[] => folded(item, width - labelWidth, '  ').split('\n');
export const linesOf = (items: readonly string[]): readonly string[] => collected(items, foldedItem);

/** A line that goes on where nobody reads it. */
const brokenOff = (line: string): string => `${line.slice(0, width - labelWidth - 4).trimEnd()} ...`;

/** As many whole items as go into the lines, and how many more there are. */
function cut(items: readonly string[], room: number): readonly string[] {
  const kept: string[] = [];
  for (const [i, item] of items.entries()) {
    const lines = foldedItem(item);
    const last = i === items.length - 1;
    if (kept.length + lines.length > room - (last ? 0 : 1)) {
      if (kept.length > 0) return [...kept, `and ${items.length - i} more: see the report`];
      const first = lines.slice(0, room);
      return lines.length > room ? [...first.slice(0, -1), brokenOff(first.at(-1) ?? '')] : first;
    }
    kept.push(...lines);
  }
  return kept;
}

export function fitted({ items, packed }: Block, room: number): readonly string[] {
  const all = linesOf(items);
  if (all.length <= room || room === 0) return all.slice(0, room);
  for (let whole = items.length - 1; packed !== undefined && whole >= 0; whole -= 1) {
    const lines = linesOf(packed(whole));
    if (lines.length <= room) return lines;
  }
  return cut(items, room);
}

/** Each block has its usual lines; where they are too many the last blocks give some up, where there are more the first ones get them. */
export function roomFor(blocks: readonly Block[], lines: number): readonly number[] {
  const wanted = blocks.map(({ items }) => linesOf(items).length);
  const rooms = blocks.map(({ usual }, i) => Math.min(usual, wanted[i] as number));
  let left = lines - rooms.reduce((sum, room) => sum + room, 0);
  for (let i = rooms.length - 1; i >= 0 && left < 0; i -= 1) {
    const less = Math.min(-left, Math.max(0, (rooms[i] as number) - (blocks[i] as Block).floor));
    rooms[i] = (rooms[i] as number) - less;
    left += less;
  }
  for (const [i, room] of rooms.entries()) {
    const more = Math.min(Math.max(left, 0), (wanted[i] as number) - room);
    rooms[i] = room + more;
    left -= more;
  }
  return rooms;
}
