/** What every part of an assessment hands over: its checks, remarks, open questions and decisions. */
import type { Check, Note } from '../ratings/index.js';
import type { Decision } from '../trace/index.js';
import type { NotChecked } from './not-checked.js';

export interface Part {
  readonly checks: readonly Check[];
  readonly notes: readonly Note[];
  readonly notChecked: readonly NotChecked[];
  readonly decisions: readonly Decision[];
}

export const emptyPart: Part = { checks: [], notes: [], notChecked: [], decisions: [] };

/** A part that only says what is missing. */
export const open = (what: string, missing: string): Part => ({ ...emptyPart, notChecked: [{ what, missing }] });
