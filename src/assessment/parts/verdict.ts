/** One verdict on the whole: what is over, what asks attention, what is within, or that nothing could be checked. */
import type { Verdict } from '../../ratings/index.js';

/**
 * `over`: a rating is exceeded, or something lifts that must press. `attention`: no rating is exceeded, but something is
 * not right. `within`: everything that was asked is within, and nothing asks attention. `unchecked`: no load could be
 * held against a rating.
 */
export type AssessmentVerdict = 'over' | 'attention' | 'within' | 'unchecked';

interface Answered {
  readonly checks: readonly { readonly verdict: Verdict }[];
  readonly partChecks: readonly { readonly verdict: Verdict }[];
  readonly uplift: readonly unknown[];
  readonly attention: readonly unknown[];
}

/** The gravest of what was found. */
export function verdictOf({ checks, partChecks, uplift, attention }: Answered): AssessmentVerdict {
  const over = [checks, partChecks].some((all) => all.some(({ verdict }) => verdict === 'over'));
  if (over || uplift.length > 0) return 'over';
  if (attention.length > 0) return 'attention';
  return checks.length === 0 ? 'unchecked' : 'within';
}
