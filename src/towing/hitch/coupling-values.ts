/** What the values on a European coupling must at least be for the masses of a combination, as weights. */
import {
  asDerived,
  constant,
  converted,
  type Derived,
  forceAsWeight,
  greatestOf,
  type Known,
  over,
  plus,
  result,
  type Source,
  times,
} from '../../trace/index.js';
import { ratio, type UnitOf } from '../../units/index.js';

/** A force as a plate prints it: `quantity(17.2, 'kN')`. */
export type AnyForce = Known<UnitOf<'force'>>;

/** Where the formulas are from. */
export const regulation: Source = {
  id: 'un-r55',
  title: 'UN Regulation No. 55, definitions of D, Dc, V and S',
  grade: 'memory',
  clause: 'from memory',
};

/** The regulation counts with g = 9.81; a force in pounds is a weight at standard gravity, 9.80665. */
const gravityAsCounted = result(
  '9.81 / 9.80665',
  over(constant(ratio('9.81')), constant(ratio('9.80665'))),
  regulation,
);
const bounce = { air: constant(ratio('1.8')), other: constant(ratio('2.4')) };
/** The weight that presses with the force on the plate. */
export const asWeight = (symbol: string, force: AnyForce | undefined): Derived<'lb'> | undefined =>
  force === undefined
    ? undefined
    : forceAsWeight(
        `${symbol} as a weight`,
        converted(`${symbol} in lbf`, asDerived(symbol, force as Known<'kN'>, 'label'), 'lbf'),
      );

/** `g M1 M2 / (M1 + M2)`, as a weight. */
export const pull = (symbol: string, first: Derived<'lb'>, second: Derived<'lb'>): Derived<'lb'> =>
  result(symbol, times(first, over(second, plus(first, second)), gravityAsCounted), regulation);

/** `a (X / L)^2 C`, as a weight; the square counts as 1 at least. */
export function bounceOf(
  onAxles: Derived<'lb'>,
  deck: Derived<'in'>,
  drawbar: Derived<'in'>,
  suspension: 'air' | 'other',
): Derived<'lb'> {
  const lever = over(deck, drawbar);
  const square = greatestOf('(X / L)^2, 1 at least', [times(lever, lever), constant(ratio(1))]);
  const share = over(bounce[suspension], constant(ratio('9.80665')));
  return result('V needed', times(onAxles, square, share), regulation);
}
