/** Shear on either side of a station, and the stations inside a spread load where it is zero. */
import { type Derived, decide, minus, over, plus, result, times, zeroIn } from '../../trace/index.js';
import { collected } from '../../units/internal.js';
import { beyond } from './brackets.js';
import type { Placed, Spread } from './loads.js';
import type { Reactions } from './reactions.js';
import type { Supports } from './spans.js';
import type { Keep, Station } from './stations.js';

/** The part of a spread load to the left of a station. */
const leftOf = ({ intensity, from, to }: Spread, x: Derived<'in'>): Derived<'lbf'> =>
  times(intensity, minus(beyond(x, from), beyond(x, to)));

/** A shear diagram: `V = R - P - w <x - s>`, counting what is left of the station; up on the left part is positive. */
export function shearDiagram(
  loads: readonly Placed[],
  supports: Supports,
  reactions: Reactions,
  keep: Keep,
): (station: Station, side: 'left' | 'right') => Derived<'lbf'> {
  return ({ name, at }, side) => {
    const counts = (place: Derived<'in'>): boolean => keep(decide(place, side === 'left' ? '<' : '<=', at));
    const up = (
      [
        [supports.left, reactions.left],
        [supports.right, reactions.right],
      ] as const
    )
      .filter(([place]) => counts(place))
      .map(([, force]) => force);
    const down = collected(loads, (load): Derived<'lbf'>[] => {
      if (load.kind === 'spread') return [leftOf(load, at)];
      return counts(load.at) ? [load.force] : [];
    });
    return result(`shear ${side} of ${name}`, minus(plus(zeroIn('lbf'), ...up), plus(zeroIn('lbf'), ...down)));
  };
}

/** The load per inch between two neighbouring places: all spread loads that cover the gap; undefined when there is none. */
function intensityBetween(
  from: Derived<'in'>,
  to: Derived<'in'>,
  loads: readonly Placed[],
  keep: Keep,
): Derived<'lbf/in'> | undefined {
  const covering = loads.filter(
    (load): load is Spread =>
      load.kind === 'spread' && keep(decide(load.from, '<=', from)) && keep(decide(load.to, '>=', to)),
  );
  if (covering.length === 0) return undefined;
  const intensity = plus(...covering.map((load) => load.intensity));
  return keep(decide(intensity, '=', zeroIn('lbf/in'))) ? undefined : intensity;
}

/** Stations between neighbours where the shear passes through zero under a spread load: `x = x1 + V1 / q`. The moment may peak there. */
export function zeroShear(
  stations: readonly Station[],
  shear: (station: Station, side: 'left' | 'right') => Derived<'lbf'>,
  loads: readonly Placed[],
  keep: Keep,
): readonly Station[] {
  return collected(stations.slice(1), (next, i): Station[] => {
    const here = stations[i] as Station;
    const intensity = intensityBetween(here.at, next.at, loads, keep);
    if (intensity === undefined) return [];
    const at = result('place of no shear', plus(here.at, over(shear(here, 'right'), intensity)));
    return keep(decide(at, '>', here.at)) && keep(decide(at, '<', next.at))
      ? [{ name: `no shear past ${here.name}`, at }]
      : [];
  });
}
