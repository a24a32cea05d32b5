/** The one verdict of an answer: `over`, `attention`, `within` or `unchecked`. */
import type { Verdict } from '../../ratings/index.js';

/**
 * `over`: a rating is exceeded, or something lifts that must press. `attention`: no rating is exceeded, but something is
 * not right. `within`: every check is within, and there is no attention note. `unchecked`: no load could be
 * compared with a rating.
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
