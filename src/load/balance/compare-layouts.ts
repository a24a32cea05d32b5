/** Which of these layouts is the more compact, and do they load the tongue alike? */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import {
  type AnyLength,
  aboveZero,
  allHold,
  type Derived,
  inInches,
  minus,
  type OutsideItsRange,
  over,
  result,
  statics,
  times,
} from '../../trace/index.js';
import type { NothingGiven } from '../errors.js';
import { type SpreadItem, type YawInertia, yawInertia } from './yaw.js';

/** One arrangement of the same items on the trailer. */
export interface Layout {
  readonly name: string;
  readonly items: readonly SpreadItem[];
}

/** Yaw inertia and tongue load of one layout, compared with the first layout. */
export interface ComparedLayout extends YawInertia {
  readonly name: string;
  readonly tongue: Derived<'lb'>;
  /** Its index over that of the first layout. */
  readonly toFirst: Derived<'ratio'>;
}

/**
 * Which of these layouts is the more compact, and do they load the tongue alike?
 *
 * Each layout's `yawInertia`, its tongue load `T = W - sum of (w_i x_i) / a`, and its index over the first one's.
 *
 * @param axlesAt coupler to the centre of the axle group, in
 * @param layouts the same things in other places; compare layouts of one tongue load, or the answer mixes two effects
 * @returns Left as `yawInertia`; `OutsideItsRange` for the axle place or a first layout without any spread
 * @example orThrow(compareLayouts(inch(190), [compact, spread]))[1].toFirst // 1.6
 * @source mechanics, derived
 */
export function compareLayouts(
  axlesAt: AnyLength,
  layouts: readonly Layout[],
): Either<NothingGiven | OutsideItsRange, readonly ComparedLayout[]> {
  if (layouts.length === 0) return left({ chapter: 'load', tag: 'NothingGiven', what: 'layouts to compare' });
  const a = inInches('coupler to axles', axlesAt);
  const compared: ComparedLayout[] = [];
  for (const { name, items } of layouts) {
    const one = yawInertia(items);
    if (isLeft(one)) return one;
    const first = compared[0]?.index ?? one.right.index;
    const guarded = allHold([
      aboveZero('coupler to axles', a),
      aboveZero('yaw inertia index of the first layout', first),
    ]);
    if (isLeft(guarded)) return guarded;
    const { gross, centre, index } = one.right;
    const tongue = result(`tongue load, ${name}`, over(times(gross, minus(a, centre)), a), statics);
    compared.push({
      ...one.right,
      name,
      tongue,
      toFirst: result(`index of ${name} over the first`, over(index, first)),
      decisions: [...one.right.decisions, ...guarded.right],
    });
  }
  return right(compared);
}
