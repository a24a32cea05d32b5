/** The verdict on the whole, as it follows from what an answer says. */
import type { AnswerVerdict } from './shape.js';

interface Findings {
  readonly checks: readonly { readonly verdict: 'within' | 'over' }[];
  readonly uplift: readonly unknown[];
  readonly attention: readonly unknown[];
}

/** Over where a rating is exceeded or something lifts; attention where something else is not right; within where anything was checked. */
export function verdictFrom({ checks, uplift, attention }: Findings): AnswerVerdict {
  if (uplift.length > 0 || checks.some(({ verdict }) => verdict === 'over')) return 'over';
  if (attention.length > 0) return 'attention';
  return checks.length > 0 ? 'within' : 'unchecked';
}
