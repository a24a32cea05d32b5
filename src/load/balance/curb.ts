/** Curb weight of the empty trailer and the position of its centre of gravity, from a list of parts. */
import { type Either, left, right } from 'fp-ts/lib/Either.js';
import {
  constant,
  type Decision,
  type Derived,
  decide,
  inInches,
  inPounds,
  over,
  plus,
  result,
  times,
} from '../../trace/index.js';
import { lb, toWire } from '../../units/index.js';
import type { NothingWeighed } from '../errors.js';
import type { PlacedItem } from './item.js';

/** Curb weight, its position, and one line a part. */
export interface CurbWeight {
  readonly weight: Derived<'lb'>;
  /** Where it acts, in inches behind the coupler. */
  readonly at: Derived<'in'>;
  readonly lines: readonly { readonly name: string; readonly weight: Derived<'lb'>; readonly at: Derived<'in'> }[];
  readonly decisions: readonly Decision[];
}

const nothing = constant(lb(0));

/**
 * What does this trailer weigh empty, and where does that weight act?
 *
 * `W0 = sum of w_i`, `x0 = sum of (w_i x x_i) / W0`; w in lb, x in inches behind the coupler.
 *
 * A part missing from the list is missing from the answer. Use a scale weight instead when the trailer exists.
 *
 * @param items every part with its weight and the place of its centre of gravity, measured from the coupler rearward
 * @returns weight in lb, place in inches, and one line a part for the report; Left `NothingWeighed` when the list is empty or weighs zero
 * @example orThrow(curbWeight([{ name: 'frame', weight: lb(1000), at: inch(150) }, { name: 'axles', weight: lb(500), at: inch(180) }])).at // 160 in
 * @source static equilibrium, derived
 */
export function curbWeight(items: readonly PlacedItem[]): Either<NothingWeighed, CurbWeight> {
  if (items.length === 0) return left({ chapter: 'load', tag: 'NothingWeighed', gross: toWire(lb(0)) });
  const lines = items.map(({ name, weight, at }) => ({
    name,
    weight: inPounds(`${name} weight`, weight),
    at: inInches(`${name} position`, at),
  }));
  const weight = result('curb weight', plus(...lines.map((line) => line.weight)));
  const weighed = decide(weight, '>', nothing);
  if (!weighed.holds) return left({ chapter: 'load', tag: 'NothingWeighed', gross: toWire(weight.value) });
  const moment = result('curb moment about the coupler', plus(...lines.map((line) => times(line.weight, line.at))));
  return right({ weight, at: result('curb position', over(moment, weight)), lines, decisions: [weighed] });
}
