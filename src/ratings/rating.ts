/** Ratings, weights and capacities: three kinds of figures in pounds that must not be mixed up. */
import { asDerived, type Derived, type Known, type Source } from '../trace/index.js';
import { signOfFigure } from '../units/internal.js';
import type { ComponentKind, RatingKind, WeightKind } from './kinds.js';

/** A rating: what a label, a stamping or a maker says a part may carry. Greater than zero. */
export interface Rating<K extends RatingKind> {
  readonly rating: K;
  readonly limit: Derived<'lb'>;
  /** Which one, when there are several: `axle 1`. */
  readonly part?: string | undefined;
  readonly clause?: Source | undefined;
}

/** A weight of the kind that some rating limits. */
export interface Weight<K extends WeightKind> {
  readonly weight: K;
  readonly load: Derived<'lb'>;
}

/** What a component bears: the strength offered to a rating. */
export interface Capacity<C extends ComponentKind> {
  readonly component: C;
  readonly bears: Derived<'lb'>;
  readonly part?: string | undefined;
}

function positive(figure: Derived<'lb'>, what: string): Derived<'lb'> {
  if (signOfFigure(figure.value) <= 0) throw new RangeError(`${what} is greater than zero`);
  return figure;
}

/** Names a figure as a rating of a kind. @throws RangeError when it is not greater than zero. @example rating('GVWR', lb(14000)).limit // 14,000 lb */
export function rating<K extends RatingKind>(
  kind: K,
  limit: Known<'lb'>,
  options: { part?: string | undefined; clause?: Source | undefined } = {},
): Rating<K> {
  const figure = asDerived(`${options.part === undefined ? '' : `${options.part} `}${kind}`, limit, 'label');
  return { rating: kind, limit: positive(figure, `the rating ${kind}`), part: options.part, clause: options.clause };
}

/** Names a figure as a weight of a kind. @example weight('gross', lb(12400)).load // 12,400 lb */
export const weight = <K extends WeightKind>(kind: K, load: Known<'lb'>): Weight<K> => ({
  weight: kind,
  load: asDerived(kind, load),
});

/** Names a figure as what a component bears. @throws RangeError when it is not greater than zero. @example capacity('tires', lb(5080)).bears // 5,080 lb */
export const capacity = <C extends ComponentKind>(component: C, bears: Known<'lb'>, of?: string): Capacity<C> => ({
  component,
  bears: positive(asDerived(component, bears, 'label'), `what ${component} bear`),
  part: of,
});
