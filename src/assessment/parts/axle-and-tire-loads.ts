/** Axle and tire loads of the laden trailer in each attitude: level, off level, with bars set, both together, each with its heavier side. */
import { axleLoads } from '../../axles/index.js';
import type { Derived } from '../../trace/index.js';
import type { Stack } from './running-gear.js';
import type { Weighed } from './weights.js';

export interface AxleLoad {
  /** Which axle: `axle 1` is the foremost. */
  readonly of: string;
  /** What it carries at the ground, standing level, bars off, in lb. */
  readonly load: Derived<'lb'>;
}

/** The load on each axle standing level, bars off; none when the balance is not known. */
export function axleLoadsOf(stack: Stack, { balance }: Weighed): readonly AxleLoad[] {
  const loads = balance === undefined || stack.group === undefined ? [] : axleLoads(stack.group, balance.axleLoad);
  return loads.map((load, index) => ({ of: `axle ${index + 1}`, load }));
}
