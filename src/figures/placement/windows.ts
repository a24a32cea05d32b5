/** The placement window of each piece of cargo, read from an assessment. */
import type { Assessment } from '../../assessment/index.js';
import type { PlacementWindow } from '../../load/index.js';
import type { Derived } from '../../trace/index.js';

export interface DeckWindow {
  readonly machine: string;
  readonly window: PlacementWindow;
  /** Where its balance point is now, and the names of the limits it does not keep to there. */
  readonly now: { readonly at: Derived<'in'>; readonly breaks: readonly string[] } | undefined;
}

/** Those that are known. */
export function windowsOf({ placement }: Pick<Assessment, 'placement'>): readonly DeckWindow[] {
  return placement.pieces.map(({ name: machine, window, now }) => ({
    machine,
    window,
    now: now && { at: now.at, breaks: now.breaks.map(({ name }) => name) },
  }));
}

/** The names of the limits that set an end. */
export const setBy = (end: { readonly setBy: readonly { readonly name: string }[] }): string =>
  [...new Set(end.setBy.map(({ name }) => name))].join(' and ');
