/** A rating against the weight it limits, or a component against the rating it must bear. */

import { type Derived, difference, quotient, type Source } from '../trace/index.js';
import { compareFigures } from '../units/internal.js';
import { checkId } from './check-id.js';
import type { ComponentKind, Limits, RatingKind, Supports } from './kinds.js';
import type { Capacity, Rating, Weight } from './rating.js';

export type Verdict = 'within' | 'over';

/** The answer to one question of strength. An overload is an answer, not an error. */
export interface Check {
  /** What programs look it up by: `axle-1/gawr`, `tow/receiver/tongue@bars-on`. Stable: words may change, ids do not. */
  readonly id: string;
  /** What was asked, in shop words: `gross against GVWR`. */
  readonly what: string;
  readonly kind: RatingKind | ComponentKind;
  readonly part?: string | undefined;
  readonly limit: Derived<'lb'>;
  readonly load: Derived<'lb'>;
  /** Limit minus load. Zero is within; anything below is over. */
  readonly reserve: Derived<'lb'>;
  /** Load over limit. */
  readonly used: Derived<'ratio'>;
  readonly verdict: Verdict;
  readonly clause?: Source | undefined;
}

/** `bars on`, `off level`: the way of standing a check was asked for, as people add it to a name. */
const named = (what: string, how: string | undefined): string => (how === undefined ? what : `${what}, ${how}`);

function judge(
  what: string,
  how: string | undefined,
  kind: Check['kind'],
  of: string | undefined,
  limit: Derived<'lb'>,
  load: Derived<'lb'>,
  clause: Source | undefined,
): Check {
  const within = compareFigures(load.value, limit.value) <= 0;
  return {
    id: checkId(kind, of, how),
    what,
    kind,
    part: of,
    limit,
    load,
    clause,
    reserve: difference(`reserve, ${what}`, limit, load),
    used: quotient(`share used, ${what}`, load, limit),
    verdict: within ? 'within' : 'over',
  };
}

const whose = (of: string | undefined): string => (of === undefined ? '' : `${of} `);

/**
 * Is this weight within this rating?
 *
 * `reserve = limit - load`; within when the reserve is zero or more, after the snap. Anything else is over.
 *
 * Compiles only for a pair that `Limits` allows: a GAWR does not meet a gross weight.
 *
 * @param limit a rating, read from the label, the molding, the stamping or the maker's sheet, in lb
 * @param load the weight of the kind that rating limits, in lb
 * @param how the way of standing it is asked for, when there is more than one: `bars on`, `off level`
 * @returns verdict, reserve, share used, and the working of each
 * @example checkLoad(rating('GVWR', lb(14000)), weight('gross', lb(12400))).verdict // 'within'
 * @source common practice, no source: a rating is a limit, not a target
 */
export function checkLoad<K extends RatingKind>(
  limit: Rating<K>,
  load: Weight<Limits[NoInfer<K>]>,
  how?: string,
): Check {
  return judge(
    named(`${load.weight} against ${whose(limit.part)}${limit.rating}`, how),
    how,
    limit.rating,
    limit.part,
    limit.limit,
    load.load,
    limit.clause,
  );
}

/**
 * Does this component bear this rating?
 *
 * `reserve = what it bears - the rating`. A GAWR must not exceed the weakest part of its axle system.
 *
 * @example checkPart(capacity('tires', lb(5080)), rating('GAWR', lb(5200))).verdict // 'over'
 * @source 49 CFR 571.120 S5.1.2 (tires), agency letter aiam1472 (GAWR at the tire-ground interface; weakest part governs)
 */
export function checkPart<C extends ComponentKind>(
  component: Capacity<C>,
  demand: Rating<Supports[NoInfer<C>]>,
): Check {
  const of = component.part ?? demand.part;
  return judge(
    `${whose(of)}${component.component} against ${demand.rating}`,
    undefined,
    component.component,
    of,
    component.bears,
    demand.limit,
    demand.clause,
  );
}
