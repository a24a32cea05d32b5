/** Limits on the laden trailer, each a straight line in gross weight, tongue load and payload. */
import { type Derived, minus, over, plus, result, times } from '../../trace/index.js';

/**
 * One limit on the laden trailer. `on` says what it limits:
 *
 * - `gross`: W, the whole trailer
 * - `axles`: `W - T (1 - k) + q P`, what the axles carry; k the part of the tongue load that spring bars put back on
 *   them, q what a pound of payload adds on the heavier side for standing off the middle
 * - `tongue`: T, the load on the ball
 * - `payload`: P, what is loaded
 */
export interface LadenLimit {
  readonly name: string;
  readonly on: 'gross' | 'axles' | 'tongue' | 'payload';
  readonly limit: Derived<'lb'>;
  /** k of the way of standing; none with the bars off. */
  readonly returned?: Derived<'ratio'> | undefined;
  /** q of the side; none where both sides are taken alike. */
  readonly lean?: Derived<'ratio'> | undefined;
  /** The load may not be below the limit: less, and something lifts. */
  readonly atLeast?: boolean | undefined;
}

/** `1 - k`: the part of the tongue load that the axles do not carry. */
export const keptByTongue = ({ returned }: LadenLimit): Derived<'ratio'> | 1 =>
  returned === undefined ? 1 : minus(1, returned);

/** `t (1 - k)`: the share of the gross weight that the axles do not carry. */
const relieved = (share: Derived<'ratio'>, { returned }: LadenLimit): Derived<'ratio'> =>
  returned === undefined ? share : times(share, minus(1, returned));

/**
 * The heaviest gross weight that keeps within a limit at one tongue share, divided last:
 * gross `L`; payload `W0 + L`; tongue `L / t`; axles `(L + q W0) / (1 + q - t (1 - k))`.
 */
export function grossAllowed(limit: LadenLimit, share: Derived<'ratio'>, curb: Derived<'lb'>): Derived<'lb'> {
  const symbol = `gross weight allowed by ${limit.name}`;
  switch (limit.on) {
    case 'gross':
      return limit.limit;
    case 'payload':
      return result(symbol, plus(curb, limit.limit));
    case 'tongue':
      return result(symbol, over(limit.limit, share));
    case 'axles':
      return limit.lean === undefined
        ? result(symbol, over(limit.limit, minus(1, relieved(share, limit))))
        : result(
            symbol,
            over(plus(limit.limit, times(limit.lean, curb)), minus(plus(1, limit.lean), relieved(share, limit))),
          );
  }
}

/**
 * The heaviest gross weight that keeps within a limit of the axles while the tongue carries all it may, whatever the share:
 * `(L + q W0 + T (1 - k)) / (1 + q)`.
 */
export function grossAllowedTogether(
  axles: LadenLimit,
  tongue: Derived<'lb'>,
  curb: Derived<'lb'>,
  symbol: string,
): Derived<'lb'> {
  const kept = axles.returned === undefined ? tongue : times(tongue, minus(1, axles.returned));
  return axles.lean === undefined
    ? result(symbol, plus(axles.limit, kept))
    : result(symbol, over(plus(axles.limit, times(axles.lean, curb), kept), plus(1, axles.lean)));
}

/** The tongue share at which a limit is just kept by this gross weight: tongue `L / W`; axles `((1 + q) W - q W0 - L) / ((1 - k) W)`. */
export function shareAtLimit(limit: LadenLimit, gross: Derived<'lb'>, curb: Derived<'lb'>): Derived<'ratio'> {
  const symbol = `tongue share by ${limit.name}`;
  if (limit.on === 'tongue') return result(symbol, over(limit.limit, gross));
  const beyond =
    limit.lean === undefined
      ? minus(gross, limit.limit)
      : minus(plus(gross, times(limit.lean, minus(gross, curb))), limit.limit);
  return limit.returned === undefined
    ? result(symbol, over(beyond, gross))
    : result(symbol, over(beyond, times(gross, minus(1, limit.returned))));
}
