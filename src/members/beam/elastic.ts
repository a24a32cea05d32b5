/** The elastic curve: double integration of the moment, with no deflection at either support. */
import { constant, type Derived, minus, over, result, times, zeroIn } from '../../trace/index.js';
import { inch } from '../../units/index.js';
import { twiceIntegrated } from './brackets.js';
import type { Placed } from './loads.js';
import type { Reactions } from './reactions.js';
import type { Supports } from './spans.js';

/** No deflection: what the supports impose. */
export const atSupport: Derived<'in'> = constant(inch(0), 'no deflection at a support');

/** Deflection as a function of the place, down positive: `-[F(x) - F(a) - (F(b) - F(a)) (x - a) / span] / (E I)`. */
export function elasticCurve(
  loads: readonly Placed[],
  supports: Supports,
  reactions: Reactions,
  stiffness: Derived<'lbf*in2'>,
): (name: string, x: Derived<'in'>) => Derived<'in'> {
  const integral = (symbol: string, x: Derived<'in'>): Derived<'lbf*in3'> =>
    twiceIntegrated(symbol, x, loads, supports, reactions);
  const atLeft = integral('integral at the left support', supports.left);
  const rise = result(
    'rise of the integral over the span',
    minus(integral('integral at the right support', supports.right), atLeft),
  );
  return (name, x) => {
    const chord = times(rise, over(minus(x, supports.left), supports.span));
    const up = minus(integral(`integral at ${name}`, x), atLeft, chord);
    return result(`deflection at ${name}`, over(minus(zeroIn('lbf*in3'), up), stiffness));
  };
}
