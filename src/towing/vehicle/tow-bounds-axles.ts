/** The axles of a tow vehicle before the trailer comes on, and what the tongue takes off the front one. */
import { type Decision, decide, difference, inPounds } from '../../trace/index.js';
import { isMissing, type LoadOrMissing, loadFrom } from '../checks/checks-or-missing.js';
import { noneOf } from '../figures.js';
import { takesOffFront, tongueTaking } from '../hitch/hitch-lever.js';
import { hitchedBy } from './hitched-axle-loads.js';
import type { TowBounds } from './tow-bound.js';
import type { TowFacts } from './tow-facts.js';
import type { TowVehicle } from './tow-vehicle.js';

/** The axles before the trailer comes on: scaled, with hitch parts that were not scaled hung on the ball. */
export function resting({ front, rear, hardware, lever }: TowFacts): {
  readonly front: LoadOrMissing;
  readonly rear: LoadOrMissing;
} {
  const parts = hardware['hitch hardware'];
  if (parts === undefined || front === undefined || rear === undefined)
    return { front: loadFrom(front, 'front axle, truck alone'), rear: loadFrom(rear, 'rear axle, truck alone') };
  return 'missing' in lever
    ? { front: lever, rear: lever }
    : hitchedBy(lever, front, rear, parts, 'with hitch hardware');
}

/** A gooseneck ball ahead of the rear axle loads the front axle; any other ball does not. */
export function loadsFront(hitch: TowVehicle['hitch'], lever: TowFacts['lever']): Decision | undefined {
  if (hitch !== 'gooseneck' || 'missing' in lever) return undefined;
  return lever.by === 'share' ? decide(lever.share, '<', noneOf('ratio')) : decide(lever.overhang, '<', noneOf('in'));
}

/**
 * A ball behind the rear axle takes load off the front axle: `F b / o` is the tongue load at which the front wheels leave the
 * ground, `(F - front GAWR) b / o` the one that brings an overloaded front axle back to its rating.
 */
export function behindBall(
  { hitch, frontGawr }: TowVehicle,
  front: LoadOrMissing,
  lever: TowFacts['lever'],
): Pick<TowBounds, 'bounds' | 'least'> {
  if (hitch !== 'ball behind' || isMissing(front) || 'missing' in lever || !takesOffFront(lever))
    return { bounds: [], least: [] };
  const lifts = 'tow vehicle front axle lifts';
  return {
    bounds: [{ name: lifts, on: 'tongue', limit: tongueTaking('tongue load that lifts the front axle', lever, front) }],
    least:
      frontGawr === undefined
        ? []
        : [
            {
              name: 'tow vehicle front GAWR',
              limit: tongueTaking(
                'tongue load that relieves the front axle',
                lever,
                difference('front axle above its GAWR', front, inPounds('tow vehicle front GAWR', frontGawr, 'label')),
              ),
            },
          ],
  };
}
