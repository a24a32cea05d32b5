/** Limits of the tongue load of a laden trailer: what it may be, and what it must be. */
import type { LadenLimit } from '../../load/index.js';
import type { Bound } from '../../ratings/index.js';
import type { DecodedSpec } from '../../spec/index.js';
import { constant, decide, inInches, inPounds, inShare, minus, over, result, times } from '../../trace/index.js';
import { ratio } from '../../units/index.js';
import { type FoundLimits, limitsOn, nothing, type Rig } from './rig.js';

/** The tongue load at which the jack is full: `rating (a - x) / (a margin)`, x its place behind the ball. */
function byJack({ spec: { trailer }, stack: { group } }: Rig): readonly Bound[] {
  const { jack } = trailer;
  if (jack === undefined || group === undefined) return [];
  const ahead = minus(group.at, inInches('jack position', jack.at));
  const rated = inPounds('jack rating', jack.rating);
  return [
    {
      name: 'jack',
      limit: result('tongue load by jack', over(times(rated, ahead), times(group.at, inShare('margin', jack.margin)))),
    },
  ];
}

/**
 * Bars that restore a part p of what the tongue takes off the front axle leave `T (1 - p)` to relieve it. Where they restore
 * all of it, no tongue load can relieve an axle that is over its rating without a trailer.
 */
function leastWithBars(vehicle: DecodedSpec['tow'], least: readonly Bound[]): FoundLimits {
  const restore = vehicle?.bars && inShare('share to restore', vehicle.bars.restore);
  if (restore === undefined || least.length === 0) return { limits: [], decisions: [] };
  const some = decide(restore, '<', constant(ratio(1)));
  if (some.holds)
    return {
      limits: limitsOn(
        'tongue',
        least.map(({ name, limit }) => ({
          name: `${name} bars on`,
          limit: result(`tongue load by ${name} bars on`, over(limit, minus(1, restore))),
        })),
        { atLeast: true },
      ),
      decisions: [some],
    };
  const fine = least.map(({ limit }) => decide(limit, '<=', nothing));
  return {
    limits: limitsOn(
      'gross',
      least.filter((_, i) => fine[i]?.holds === false).map(({ name }) => ({ name: `${name} bars on`, limit: nothing })),
    ),
    decisions: [some, ...fine],
  };
}

/** What the ball may carry, level and off level, and what it must. */
export function tongueLimits(rig: Rig): FoundLimits {
  const {
    spec: { trailer, tow: vehicle },
    tow: { largest, shareReturnedByBars, offLevel: hitch },
    stance: { offLevel },
  } = rig;
  const { coupler } = trailer;
  const level: readonly Bound[] =
    largest?.limits.filter(({ on }) => on === 'tongue') ??
    (coupler?.tongue === undefined
      ? []
      : [{ name: 'coupler tongue', limit: inPounds('coupler tongue rating', coupler.tongue) }]);
  const change = offLevel?.tongueChange;
  const shifted = (bounds: readonly Bound[]): readonly Bound[] =>
    change === undefined
      ? []
      : bounds.map(({ name, limit }) => ({
          name: `${name} off level`,
          limit: result(`tongue load by ${name} off level`, minus(limit, change)),
        }));
  const least = [...(largest?.least ?? []), ...shifted(largest?.least ?? [])];
  const withBars = shareReturnedByBars === undefined ? undefined : leastWithBars(vehicle, least);
  const limits: readonly LadenLimit[] = [
    ...limitsOn('tongue', [...level, ...shifted(level), ...byJack(rig)]),
    ...limitsOn('tongue', least, { atLeast: true }),
    ...(withBars?.limits ?? []),
    ...(change === undefined || hitch === undefined
      ? []
      : limitsOn(
          'tongue',
          [{ name: 'tongue off level', limit: result('tongue load that presses off level', minus(nothing, change)) }],
          { atLeast: true },
        )),
  ];
  return { limits, decisions: withBars?.decisions ?? [] };
}
