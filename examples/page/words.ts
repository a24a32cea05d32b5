/** The first page as the page shows it: labels and items that flow to any width. */
import type { Assessment } from '../../src/assessment/index.js';
import { brief } from '../../src/print/index.js';

export interface Told {
  readonly label: string;
  readonly items: readonly string[];
}

/** Where the items of a printed first page begin, and where their second lines do. */
const [itemsAt, wrapsAt] = [13, 15];

/** Reads the printed lines back into labels and items. */
export function briefItems(text: string): readonly Told[] {
  const told: { label: string; items: string[] }[] = [];
  for (const line of text.split('\n').slice(1)) {
    const label = line.slice(0, itemsAt).trim();
    const rest = line.slice(itemsAt).trim();
    const last = told.at(-1);
    if (label !== '' || last === undefined) told.push({ label, items: [rest] });
    else if (line.startsWith(' '.repeat(wrapsAt))) last.items.push(`${last.items.pop() ?? ''} ${rest}`);
    else last.items.push(rest);
  }
  return told;
}

/** The lines of the first page for an assessment. */
export const briefFor = (assessment: Assessment, units: 'us' | 'metric'): readonly Told[] =>
  briefItems(brief(assessment, { units }));
