/** What the chapter choose found out, in the lines that a first page has room for. */
import type { Remedies, Remedy, Sureness } from '../choose/index.js';
import type { BriefExtras, BriefRemedy } from './brief-data.js';
import { and } from './text-layout.js';

const together = ({ steps }: Pick<Remedy, 'steps'>): BriefRemedy => ({ says: and(steps.map(({ says }) => says)) });

/** What has to be done anyhow, then what does it alone, then what does it together. */
function remedyLines({ isWithin, anyhow, single, together: several }: Remedies): readonly BriefRemedy[] {
  if (isWithin) return [];
  const first = anyhow.length === 0 ? [] : [together({ steps: anyhow })];
  return [...first, ...single.map(together), ...several.map(together)];
}

/** How sure the verdict is, and what to weigh or measure first where it is not. */
function surenessLine({ sure, checks, weighNext }: Sureness): string {
  if (sure === 'within') return 'within for sure, whatever the inputs are inside their tolerances';
  if (sure === 'over') return 'over for sure, whatever the inputs are inside their tolerances';
  const open = checks.filter((check) => check.sure === 'not sure').length;
  const [next] = weighNext;
  const counted = `not sure: ${open} of ${checks.length} checks may go either way`;
  return next === undefined ? counted : `${counted}; weigh or measure next: ${next.symbol} (${next.path})`;
}

/**
 * How do remedies and sureness stand on the first page?
 *
 * Remedies in the order in which they were found: what is needed anyhow, what does it alone, what does it together.
 *
 * @param found what `remedies` and `sureness` gave, as far as they were asked
 * @returns the extras of `brief`, `report` and `leaflet`
 * @example briefExtras({ remedies: orThrow(remedies(spec)) }).remedies.length > 0 // true
 * @source each remedy was applied and assessed before it is shown
 */
export function briefExtras({
  remedies,
  sureness,
}: {
  readonly remedies?: Remedies | undefined;
  readonly sureness?: Sureness | undefined;
}): BriefExtras {
  return {
    ...(remedies && { remedies: remedyLines(remedies) }),
    ...(sureness && { sureness: { says: surenessLine(sureness) } }),
  };
}
