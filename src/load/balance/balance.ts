/** Moment balance about the coupler: axle-group load and tongue load from item weights and positions. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import {
  type AnyLength,
  constant,
  type Decision,
  type Derived,
  decide,
  inInches,
  inPounds,
  minus,
  over,
  plus,
  result,
  statics,
  times,
} from '../../trace/index.js';
import { inch, lb, toWire } from '../../units/index.js';
import { has } from '../../units/internal.js';
import type { BalanceError } from '../errors.js';
import type { Item } from './item.js';

/** One line of the balance: what an item weighs and its moment about the coupler. */
export interface BalanceLine {
  readonly name: string;
  readonly weight: Derived<'lb'>;
  readonly moment: Derived<'lb*in'>;
}

/** Gross weight, axle-group load and tongue load of the coupled, level trailer. */
export interface Balance {
  readonly gross: Derived<'lb'>;
  /** Load of the axle group at the ground, coupled and level, lb. */
  readonly axleLoad: Derived<'lb'>;
  /** Load on the coupler, lb; negative when the trailer lifts the ball. */
  readonly tongue: Derived<'lb'>;
  /** Tongue load over gross weight. */
  readonly tongueShare: Derived<'ratio'>;
  readonly axlesAt: Derived<'in'>;
  readonly lines: readonly BalanceLine[];
  readonly decisions: readonly Decision[];
}

const nothing = constant(lb(0));
const atCoupler = constant(inch(0));

function lineOf(item: Item, axlesAt: Derived<'in'>, decisions: Decision[]): Either<BalanceError, BalanceLine> {
  const { name } = item;
  const weight = inPounds(`${name} weight`, item.weight);
  if (has(item, 'at')) {
    return right({
      name,
      weight,
      moment: result(`${name} moment`, times(weight, inInches(`${name} position`, item.at))),
    });
  }
  const tongue = inPounds(`${name} tongue load`, item.tongue);
  const possible = decide(tongue, '<=', weight);
  decisions.push(possible);
  if (!possible.holds)
    return left({
      chapter: 'load',
      tag: 'TongueAboveWeight',
      of: name,
      tongue: toWire(tongue.value),
      weight: toWire(weight.value),
    });
  return right({ name, weight, moment: result(`${name} moment`, times(minus(weight, tongue), axlesAt)) });
}

/**
 * What do the axles carry and what does the coupler carry?
 *
 * `A = sum of (w_i x x_i) / a`, `T = W - A`; w in lb, x and a in inches behind the coupler, a the place where the axle
 * group carries. An item known by its tongue load T_i alone has the moment `(w_i - T_i) x a`.
 *
 * Level trailer, one axle or an axle group that acts at one place. Nose-up attitude, brake torque and road loads are not included.
 *
 * @param items the trailer itself (weighed, or as built up) and everything on it
 * @param geometry axlesAt: coupler to the centre of the axle group, by tape, along the frame
 * @returns Left `AxlesNotBehindCoupler`, `NothingWeighed`, `TongueAboveWeight`; a tongue that comes out negative is an answer
 * @example orThrow(balance([{ name: 'trailer', weight: lb(3200), tongue: lb(480) }, { name: 'machine', weight: lb(9200), at: inch(171) }], { axlesAt: inch(190) })).tongue // 1,400 lb
 * @source static equilibrium, derived
 */
export function balance(
  items: readonly Item[],
  geometry: { readonly axlesAt: AnyLength },
): Either<BalanceError, Balance> {
  const axlesAt = inInches('axle position', geometry.axlesAt);
  const decisions = [decide(axlesAt, '>', atCoupler)];
  if (!decisions[0]?.holds)
    return left({ chapter: 'load', tag: 'AxlesNotBehindCoupler', axlesAt: toWire(axlesAt.value) });
  const lines: BalanceLine[] = [];
  for (const item of items) {
    const line = lineOf(item, axlesAt, decisions);
    if (isLeft(line)) return line;
    lines.push(line.right);
  }
  if (lines.length === 0) return left({ chapter: 'load', tag: 'NothingWeighed', gross: toWire(lb(0)) });
  const gross = result('gross weight', plus(...lines.map(({ weight }) => weight)));
  const weighed = decide(gross, '>', nothing);
  decisions.push(weighed);
  if (!weighed.holds) return left({ chapter: 'load', tag: 'NothingWeighed', gross: toWire(gross.value) });
  const moment = result('moment about the coupler', plus(...lines.map((line) => line.moment)));
  const axleLoad = result('axle group load', over(moment, axlesAt), statics);
  const tongue = result('tongue load', minus(gross, axleLoad), statics);
  return right({
    gross,
    axleLoad,
    tongue,
    tongueShare: result('tongue share', over(tongue, gross)),
    axlesAt,
    lines,
    decisions,
  });
}
