/** Every limit on a laden trailer, in every attitude: payload, places and checks all use this one list. */
import type { LadenLimit } from '../../load/index.js';
import type { Bound } from '../../ratings/index.js';
import { inPounds } from '../../trace/index.js';
import { axleLimits, byTires, levelLimits, offLevelLimits } from './laden-limits-axles.js';
import { type Side, sideLimits } from './laden-limits-sides.js';
import { tongueLimits } from './laden-limits-tongue.js';
import { type FoundLimits, limitsOn, type Rig } from './rig.js';

/** The limits of one rig, worked out once: payload and every window read the same figures. */
export interface LadenLimits {
  readonly gross: readonly LadenLimit[];
  readonly axles: readonly LadenLimit[];
  readonly tongue: FoundLimits;
  /** Those of each side, for a load that leans so. */
  readonly sides: (sides: readonly Side[]) => readonly LadenLimit[];
}

/** What the whole may weigh: label, coupler, chains by both readings, hitch and tow vehicle. */
function grossLimits({ spec: { trailer }, gvwr, tow: { largest } }: Rig): readonly LadenLimit[] {
  const { coupler, chains } = trailer;
  const each = chains && inPounds('breaking strength of one chain', chains.each, 'label');
  const ofTow: readonly Bound[] = (largest?.limits ?? []).filter(
    ({ name, on }) => on === 'gross' && name !== 'coupler gross',
  );
  return limitsOn('gross', [
    ...(gvwr === undefined ? [] : [{ name: 'GVWR', limit: gvwr.limit }]),
    ...(coupler?.gross === undefined
      ? []
      : [{ name: 'coupler gross', limit: inPounds('coupler gross rating', coupler.gross) }]),
    ...(each === undefined ? [] : [{ name: 'safety chains each', limit: each }]),
    ...ofTow,
  ]);
}

/** Works them out. */
export function ladenLimits(rig: Rig): LadenLimits {
  const { stack, stance, tow } = rig;
  const tires = byTires(stack);
  const off = offLevelLimits(stack, stance);
  return {
    gross: grossLimits(rig),
    axles: axleLimits(levelLimits(stack, tires), off, tow.shareReturnedByBars),
    tongue: tongueLimits(rig),
    sides: (sides) => sideLimits(rig, tires, off, sides),
  };
}
