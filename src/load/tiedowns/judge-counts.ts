/** The number of tiedowns fitted against every reading of the rule, and one verdict from strength and number. */
import { constant, type Decision, decide } from '../../trace/index.js';
import { ratio } from '../../units/index.js';
import type { TiedownCount } from './count.js';
import type { CountReading } from './sections.js';

/** The number fitted against one reading of the rule. */
export interface CountVerdict extends CountReading {
  readonly fitted: number;
  readonly verdict: 'enough' | 'too few';
  /** Whether it is the reading that governs. */
  readonly governs: boolean;
}

/** `readings differ`: strong enough, and enough in number by one reading of the rule and not by another. */
export type TiedVerdict = 'enough' | 'not enough' | 'readings differ';

/** The number fitted against every reading. */
export function judgeCounts(
  { readings, governing }: Pick<TiedownCount, 'readings' | 'governing'>,
  fitted: number,
): { readonly counts: readonly CountVerdict[]; readonly decisions: readonly Decision[] } {
  const decisions = readings.map(({ minimum }) => decide(constant(ratio(fitted)), '>=', minimum));
  const counts = readings.map((reading, i) => ({
    ...reading,
    fitted,
    governs: reading === governing,
    verdict: decisions[i]?.holds ? ('enough' as const) : ('too few' as const),
  }));
  return { counts, decisions };
}

/** One verdict from strength and number. */
export function overall(strength: 'enough' | 'short', counts: readonly CountVerdict[]): TiedVerdict {
  const good = counts.filter(({ verdict }) => verdict === 'enough').length;
  if (strength === 'short' || good === 0) return 'not enough';
  return good === counts.length ? 'enough' : 'readings differ';
}
