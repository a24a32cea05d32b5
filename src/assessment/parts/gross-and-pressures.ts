/** The trailer's own loads against its own ratings: the whole, and the cold pressures its tires need. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { type Check, checkId, checkLoad, type Rating, weight } from '../../ratings/index.js';
import { type PressureForLoad, tirePressureForLoad } from '../../tires/index.js';
import type { Derived } from '../../trace/index.js';
import { refusalText } from '../words.js';
import type { OpenQuestion } from './open-questions.js';
import type { Stack } from './running-gear.js';
import { axleName } from './wanting-keys.js';
import type { Weighed } from './weights.js';

export function grossChecks(
  gvwr: Rating<'GVWR'> | undefined,
  { gross }: Weighed,
): { readonly checks: readonly Check[]; readonly notChecked: readonly OpenQuestion[] } {
  if (gvwr === undefined)
    return {
      checks: [],
      notChecked: [
        {
          id: checkId('GVWR'),
          what: 'gross weight and payload against GVWR',
          missing: 'GVWR from the label',
          paths: ['trailer.gvwr'],
        },
      ],
    };
  return { checks: gross === undefined ? [] : [checkLoad(gvwr, weight('gross', gross))], notChecked: [] };
}

export interface NeededPressure {
  /** Which axle: `axle 1`. */
  readonly of: string;
  /** The cold pressure, in psi, and the printed rows that say so. */
  readonly needed: PressureForLoad;
}

/** The cold pressures the loads need; open where neither a table nor the sidewall gives them. An overload has its own check, and an axle without a load is told as lifted. */
export function pressuresFor(
  { tires }: Stack,
  onTires: readonly (Derived<'lb'> | undefined)[],
): { readonly pressures: readonly NeededPressure[]; readonly notChecked: readonly OpenQuestion[] } {
  const pressures: NeededPressure[] = [];
  const notChecked: OpenQuestion[] = [];
  for (const [index, each] of tires.entries()) {
    const load = onTires[index];
    if (each?.rating === undefined || load === undefined) continue;
    const needed = tirePressureForLoad(each.rating, load);
    if (isLeft(needed) && (needed.left.tag === 'LoadAboveRating' || needed.left.tag === 'NotPositive')) continue;
    const { id, path } = axleName(index);
    if (isLeft(needed))
      notChecked.push({
        id: `${id}/tires/cold-pressure`,
        what: `cold pressure ${each.of} tires need`,
        missing: `a printed figure (${refusalText(needed.left)})`,
        paths: [`${path}.tires.molded`],
      });
    else pressures.push({ of: each.of, needed: needed.right });
  }
  return { pressures, notChecked };
}
