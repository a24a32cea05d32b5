/** What the chapter choose found out, in the lines that a first page has room for. */
import type { Remedies, Remedy, Sureness } from '../choose/index.js';
import type { BriefExtras, BriefRemedy } from './brief-data.js';
import { surenessItem } from './sureness-text.js';
import { and } from './text-layout.js';

const together = ({ steps }: Pick<Remedy, 'steps'>): BriefRemedy => ({ says: and(steps.map(({ says }) => says)) });

/** What has to be done anyhow, then what does it alone, then what does it together. */
function remedyLines({ isWithin, anyhow, single, together: several }: Remedies): readonly BriefRemedy[] {
  if (isWithin) return [];
  const first = anyhow.length === 0 ? [] : [together({ steps: anyhow })];
  return [...first, ...single.map(together), ...several.map(together)];
}

/**
 * How are remedies and sureness printed on the first page?
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
    ...(sureness && { sureness: surenessItem(sureness) }),
  };
}
