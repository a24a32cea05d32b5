/** The one named bridge between a weight in pounds and a force in pounds. */
import { ofDecimal } from './figure.js';
import type { Quantity } from './quantity.js';

/**
 * What force does this weight press with, standing still under standard gravity?
 *
 * `F [lbf] = W [lb]`: at 9.80665 m/s2 the two figures are equal by definition of the pound-force. Road loads, bumps and
 * braking are not in it.
 *
 * @example show(weightToForce(lb(9200))) // 9,200 lbf
 * @source NIST SP 811, appendix B.
 */
export function weightToForce(weight: Quantity<'lb'>): Quantity<'lbf'> {
  return ofDecimal(weight.value, 'lbf');
}
