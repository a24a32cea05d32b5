/** Where a figure comes from, and how far it may be trusted. */
import { own } from '../units/internal.js';

/**
 * A: a regulation, standard, government or research text, read. B: textbook, trade press, vehicle or component manual,
 * reproduced regulation. C: web list or secondary copy. derived: arithmetic of our own. memory: no text was found.
 */
export type Grade = 'A' | 'B' | 'C' | 'derived' | 'memory';

/** A published text, or the plain statement that there is none. */
export interface Source {
  readonly id: string;
  readonly title: string;
  readonly grade: Grade;
  /** Edition, or the date as printed in the copy that was read. */
  readonly edition?: string;
  readonly clause?: string;
  readonly address?: string;
  readonly note?: string;
}

/** A figure everybody in the trade uses and nobody has printed. */
export const commonPractice: Source = Object.freeze({
  id: 'common-practice',
  title: 'common practice, no source',
  grade: 'memory',
});

/** Plain statics, re-derived from equilibrium. */
export const statics: Source = Object.freeze({ id: 'statics', title: 'static equilibrium, derived', grade: 'derived' });

/** A figure or wording written down from memory; to be verified before anyone leans on it. @example fromMemory('weights of wheels').grade // memory */
export const fromMemory = (what: string): Source =>
  Object.freeze({ id: 'from-memory', title: `${what}, from memory`, grade: 'memory' });

/**
 * Should the reader look the text up before leaning on it?
 *
 * A figure of a secondary copy (C) or from memory; of a regulation also one that was read in a reproduction (B).
 *
 * @example needsVerification('B', 'regulation') // true
 */
export const needsVerification = (grade: Grade, of: 'figure' | 'regulation' = 'figure'): boolean =>
  grade === 'C' || grade === 'memory' || (of === 'regulation' && grade === 'B');

/** One line for a report: title, edition, clause. @example citation(fromMemory('weights of wheels')) // weights of wheels, from memory (verify) */
export function citation(source: Source): string {
  const parts = [source.title, own(source, 'edition'), own(source, 'clause')].filter((part) => part !== undefined);
  return `${parts.join(', ')}${needsVerification(source.grade) && source.id !== commonPractice.id ? ' (verify)' : ''}`;
}
