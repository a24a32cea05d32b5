/** The common fields of every part of an assessment: checks, remarks, open questions and decisions. */
import type { Check, Note } from '../../ratings/index.js';
import type { Decision } from '../../trace/index.js';
import { collected, frozen, pushAll } from '../../units/internal.js';
import type { OpenQuestion } from './open-questions.js';

export interface Part {
  /** Each load against the rating that limits it, in lb. */
  readonly checks: readonly Check[];
  /** Remarks: what was assumed, and where sources disagree. */
  readonly notes: readonly Note[];
  /** What is not right and is no check of a rating. */
  readonly attention: readonly Note[];
  /** Open questions, each with the missing facts. */
  readonly notChecked: readonly OpenQuestion[];
  /** Where the program went one way because of a figure; for studies. */
  readonly decisions: readonly Decision[];
}

export const emptyPart: Part = frozen({ checks: [], notes: [], attention: [], notChecked: [], decisions: [] });

/** A part that only says what is missing. */
export const open = (question: OpenQuestion): Part => ({
  checks: emptyPart.checks,
  notes: emptyPart.notes,
  attention: emptyPart.attention,
  notChecked: [question],
  decisions: emptyPart.decisions,
});

/** Concatenates lists. A loop, because `push(...list)` overflows the call stack for very long lists. */
export const joined = <A>(lists: readonly (readonly A[])[]): readonly A[] => collected(lists, (list) => list);

/** Several parts as one. */
export function together(parts: readonly Part[]): Part {
  const checks: Check[] = [];
  const notes: Note[] = [];
  const attention: Note[] = [];
  const notChecked: OpenQuestion[] = [];
  const decisions: Decision[] = [];
  for (const part of parts) {
    pushAll(checks, part.checks);
    pushAll(notes, part.notes);
    pushAll(attention, part.attention);
    pushAll(notChecked, part.notChecked);
    pushAll(decisions, part.decisions);
  }
  return { checks, notes, attention, notChecked, decisions };
}
