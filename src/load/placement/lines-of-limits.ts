/** Each limit on the place of a machine as a straight line in its weight. */
import type { Bound, Rating, RatingKind } from '../../ratings/index.js';
import { constant, type Derived, minus, over, plus, result, type Source, times } from '../../trace/index.js';
import { inch, quantity } from '../../units/index.js';
import { collected } from '../../units/internal.js';
import type { LadenLimit } from '../balance/laden-limit.js';
import type { PlacementLimit, TrailerForPlacing } from './limits.js';

const label = ({ rating, part: of }: Rating<RatingKind>): string => (of === undefined ? rating : `${of} ${rating}`);

const noMoment = constant(quantity(0, 'lb*in'));

export function deckLimits(
  front: Derived<'in'>,
  rear: Derived<'in'>,
  length: Derived<'in'>,
  balancePoint: Derived<'in'>,
): readonly PlacementLimit[] {
  const line = (end: 'front' | 'rear', base: Derived<'in'>): PlacementLimit => ({
    name: `deck ${end}`,
    end,
    by: 'deck',
    base,
    moment: noMoment,
    source: undefined,
  });
  return [
    line('front', result('place by deck front', plus(front, balancePoint))),
    line('rear', result('place by deck rear', minus(rear, minus(length, balancePoint)))),
  ];
}

/** What limits of the axles in one way of standing have in common: `a / (1 - k)`, and where their lines start. */
interface Standing extends Pick<LadenLimit, 'returned' | 'lean'> {
  readonly reach: Derived<'in'>;
  readonly base: Derived<'in'>;
}

/** Worked out once, under the name of the first limit that asks. */
function standingOf(
  name: string,
  a: Derived<'in'>,
  returned: LadenLimit['returned'],
  lean: LadenLimit['lean'],
  standings: Standing[],
): Standing {
  const known = standings.find((each) => each.returned === returned && each.lean === lean);
  if (known !== undefined) return known;
  const reach = returned === undefined ? a : result(`reach of ${name}`, over(a, minus(1, returned)));
  const base =
    lean === undefined
      ? result(`base place by ${name}`, minus(a, reach))
      : result(`base place by ${name}`, minus(a, times(reach, plus(1, lean))));
  const found = { returned, lean, reach, base };
  standings.push(found);
  return found;
}

/**
 * A limit on the laden trailer as a line in the machine's weight P. Tongue: `x >= a + (M0 - L a) / P`. Axles,
 * `W + P - T (1 - k) + q P <= L`: `x <= a (1 - (1 + q) / (1 - k)) + (M0 + (L - W) a / (1 - k)) / P`. What must press bounds
 * the other end. The whole weight does not depend on the place and has no line.
 */
function lineOf(
  limit: LadenLimit,
  a: Derived<'in'>,
  weight: Derived<'lb'>,
  moment: Derived<'lb*in'>,
  standings: Standing[],
): PlacementLimit | undefined {
  const { name, on, returned, lean, atLeast = false } = limit;
  const line = (end: 'front' | 'rear', base: Derived<'in'>, ofLine: Derived<'lb*in'>): PlacementLimit => ({
    name,
    end,
    by: 'weight',
    base,
    moment: result(`moment by ${name}`, ofLine),
    source: undefined,
  });
  if (on === 'tongue') return line(atLeast ? 'rear' : 'front', a, minus(moment, times(limit.limit, a)));
  if (on !== 'axles') return undefined;
  const { reach, base } = standingOf(name, a, returned, lean, standings);
  return line(atLeast ? 'front' : 'rear', base, plus(moment, times(minus(limit.limit, weight), reach)));
}

/** `T <= limit` for a hitch part, `low x W <= T <= high x W` for a guideline, `W - T <= limit` for the axles. */
export function weightLimits(
  trailer: TrailerForPlacing,
  a: Derived<'in'>,
  weight: Derived<'lb'>,
  moment: Derived<'lb*in'>,
): readonly PlacementLimit[] {
  const onTongue = (name: string, limit: Derived<'lb'>, source: Source | undefined): PlacementLimit => ({
    name,
    end: 'front',
    by: 'weight',
    base: a,
    source,
    moment: result(`moment by ${name}`, minus(moment, times(limit, a))),
  });
  const tongue = [...trailer.tongueLimits.map((limit) => onTongue(label(limit), limit.limit, limit.clause))];
  const axles = trailer.axleLimits.map(
    (limit): PlacementLimit => ({
      name: label(limit),
      end: 'rear',
      by: 'weight',
      base: constant(inch(0)),
      source: limit.clause,
      moment: result(`moment by ${label(limit)}`, plus(moment, times(minus(limit.limit, weight), a))),
    }),
  );
  const standings: Standing[] = [];
  const others = (trailer.limits ?? [])
    .map((limit) => lineOf(limit, a, weight, moment, standings))
    .filter((line) => line !== undefined);
  if (trailer.guideline === 'no guideline') return [...tongue, ...axles, ...others];
  const { low, high, source } = trailer.guideline;
  const byShare = (name: string, end: 'front' | 'rear', share: Derived<'ratio'>): PlacementLimit => ({
    name,
    end,
    by: 'weight',
    source,
    base: result(`base place by ${name}`, minus(a, times(share, a))),
    moment: result(`moment by ${name}`, minus(moment, times(share, weight, a))),
  });
  return [
    ...tongue,
    ...axles,
    ...others,
    byShare('guideline low', 'rear', low),
    byShare('guideline high', 'front', high),
  ];
}

/** Limits on the whole, less what stays; limits on the load are on the machine alone. */
export const weightsOf = ({ limits = [] }: TrailerForPlacing, weight: Derived<'lb'>): readonly Bound[] =>
  collected(limits, ({ name, on, limit, atLeast }) => {
    if (atLeast === true || (on !== 'gross' && on !== 'payload')) return [];
    return [{ name, limit: on === 'gross' ? result(`machine weight by ${name}`, minus(limit, weight)) : limit }];
  });
