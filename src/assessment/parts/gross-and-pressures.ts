/** The trailer's own loads against its own ratings: the whole, and the cold pressures its tires need. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { type Check, checkLoad, type Rating, weight } from '../../ratings/index.js';
import { type PressureForLoad, tirePressureForLoad } from '../../tires/index.js';
import type { Derived } from '../../trace/index.js';
import { refusalText } from '../words.js';
import type { NotChecked } from './not-checked.js';
import type { Stack } from './running-gear.js';
import type { Weighed } from './weights.js';

export function grossChecks(
  gvwr: Rating<'GVWR'> | undefined,
  { gross }: Weighed,
): { readonly checks: readonly Check[]; readonly notChecked: readonly NotChecked[] } {
  if (gvwr === undefined)
    return {
      checks: [],
      notChecked: [{ what: 'gross weight and payload against GVWR', missing: 'GVWR from the label' }],
    };
  return { checks: gross === undefined ? [] : [checkLoad(gvwr, weight('gross', gross))], notChecked: [] };
}

export interface NeededPressure {
  readonly of: string;
  readonly needed: PressureForLoad;
}

/** The cold pressures the loads need; open where nothing printed or molded says so. An overload has its own check. */
export function pressuresFor(
  { tires }: Stack,
  onTires: readonly (Derived<'lb'> | undefined)[],
): { readonly pressures: readonly NeededPressure[]; readonly notChecked: readonly NotChecked[] } {
  const pressures: NeededPressure[] = [];
  const notChecked: NotChecked[] = [];
  for (const [index, each] of tires.entries()) {
    const load = onTires[index];
    if (each?.rating === undefined || load === undefined) continue;
    const needed = tirePressureForLoad(each.rating, load);
    if (isLeft(needed) && needed.left.tag === 'LoadAboveRating') continue;
    if (isLeft(needed))
      notChecked.push({
        what: `cold pressure ${each.of} tires need`,
        missing: `a printed figure (${refusalText(needed.left)})`,
      });
    else pressures.push({ of: each.of, needed: needed.right });
  }
  return { pressures, notChecked };
}
