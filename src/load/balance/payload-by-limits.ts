/** What each limit allows by itself, and axles and tongue together. */
import { type Bound, governedBy } from '../../ratings/index.js';
import { type Derived, minus, result } from '../../trace/index.js';
import { grossAllowedTogether, type LadenLimit } from './laden-limit.js';
import type { PayloadBy, ShareBand } from './payload-answer.js';

export type Lb = Derived<'lb'>;

export interface Question {
  readonly curb: Lb;
  readonly share: ShareBand;
  /** Limits that the load may not exceed, and those it may not fall short of. */
  readonly most: readonly LadenLimit[];
  readonly least: readonly LadenLimit[];
}

export const named = (name: string, gross: Lb, curb: Lb): Bound => ({
  name,
  limit: result(`payload by ${name}`, minus(gross, curb)),
});

/** At the lower share the axles carry most, at the higher one the tongue. */
export const hardEnd = ({ on }: LadenLimit, { low, high }: ShareBand): Derived<'ratio'> =>
  on === 'axles' ? low : high;
export const easyEnd = ({ on }: LadenLimit, { low, high }: ShareBand): Derived<'ratio'> =>
  on === 'axles' ? high : low;
/** Limits of the axles in one attitude: they differ only in their figure, and the least of them governs. */
function byStanding(limits: readonly LadenLimit[]): readonly (readonly LadenLimit[])[] {
  const groups: LadenLimit[][] = [];
  for (const limit of limits) {
    if (limit.on !== 'axles') continue;
    const alike = groups.find(([first]) => first?.returned === limit.returned && first?.lean === limit.lean);
    if (alike === undefined) groups.push([limit]);
    else alike.push(limit);
  }
  return groups;
}

/**
 * Axles and tongue together: more share relieves the axles and loads the tongue, so the best share is where the two meet.
 * The least limit of each is enough.
 */
export function together({ curb, most }: Question): readonly Bound[] {
  const onTongue = most.filter(({ on }) => on === 'tongue');
  if (onTongue.length === 0) return [];
  const tongue = governedBy('greatest tongue load', onTongue);
  return byStanding(most).map((group) => {
    const least = governedBy('least limit of the axles', group);
    const name = [...least.governing, ...tongue.governing].map((bound) => bound.name).join(' with ');
    const axles = { ...(group[0] as LadenLimit), limit: least.limit };
    return named(name, grossAllowedTogether(axles, tongue.limit, curb, `gross weight allowed by ${name}`), curb);
  });
}

/** The least of what single limits and pairs allow; a pair is named only where no single limit sets the same figure. */
export function least(symbol: string, single: readonly Bound[], pairs: readonly Bound[]): PayloadBy {
  const { limit, governing } = governedBy(symbol, [...single, ...pairs]);
  const alone = governing.filter((bound) => single.includes(bound));
  return { weight: limit, governing: alone.length > 0 ? alone : governing, limits: single };
}
