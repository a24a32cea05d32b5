/** Figures on their way in: taken under a name, brought to the working unit, and tested before they are used. */
import { type Either, left, right } from 'fp-ts/lib/Either.js';
import {
  type AnyAreaWeight,
  type AnyDensity,
  asDerived,
  type Comparison,
  constant,
  converted,
  type Decision,
  type Derived,
  decide,
} from '../trace/index.js';
import { type AnyQuantity, inch, quantity, type Unit } from '../units/index.js';
import type { MembersError } from './errors.js';

/** A density as a figure in lb/ft3, the conversion recorded. */
export const inPoundsPerCubicFoot = (symbol: string, density: AnyDensity): Derived<'lb/ft3'> =>
  converted(symbol, asDerived(symbol, density) as Derived<'lb/in3'>, 'lb/ft3');

/** One thing that must hold before a figure is used: the decision, and the error when it does not hold. */
export interface Demand {
  readonly decision: Decision;
  readonly otherwise: () => MembersError;
}

const plain = (figure: Derived<Unit>): AnyQuantity => figure.value as AnyQuantity;
const pathOf = ({ why }: Derived<Unit>): { path?: string } => {
  if (why.kind === 'given' && why.path !== undefined) return { path: why.path };
  const [first] = why.kind === 'computed' && why.operation === 'convert' ? why.of : [];
  return first?.kind === 'given' && first.path !== undefined ? { path: first.path } : {};
};

const tooSmall =
  (what: string, figure: Derived<Unit>, needed: 'more than zero' | 'zero or more') => (): MembersError => ({
    chapter: 'members',
    tag: 'FigureTooSmall',
    what,
    found: plain(figure),
    needed,
    ...pathOf(figure),
  });

/** The figure must be more than zero. */
export const aboveZero = <U extends Unit>(what: string, figure: Derived<U>): Demand => ({
  decision: decide<Unit>(figure, '>', constant(quantity(0, figure.value.unit))),
  otherwise: tooSmall(what, figure, 'more than zero'),
});

/** The figure must be zero or more. */
export const notBelowZero = <U extends Unit>(what: string, figure: Derived<U>): Demand => ({
  decision: decide<Unit>(figure, '>=', constant(quantity(0, figure.value.unit))),
  otherwise: tooSmall(what, figure, 'zero or more'),
});

/** The figure must stand so to a limit; `needed` says it in words: `greater than the web`. */
export const fits = <U extends Unit>(
  what: string,
  figure: Derived<U>,
  comparison: Comparison,
  limit: Derived<NoInfer<U>>,
  needed: string,
): Demand => ({
  decision: decide(figure, comparison, limit),
  otherwise: () => ({
    chapter: 'members',
    tag: 'ImpossibleShape',
    what,
    found: plain(figure),
    needed,
    limit: plain(limit),
    ...pathOf(figure),
  }),
});

/** Another error than the three above, for the same kind of test. */
export const demand = (decision: Decision, otherwise: () => MembersError): Demand => ({ decision, otherwise });

/** All demands met: their decisions, to be handed back with the result. Else the error of the first that is not. */
export function met(demands: readonly Demand[]): Either<MembersError, readonly Decision[]> {
  const broken = demands.find(({ decision }) => !decision.holds);
  return broken === undefined ? right(demands.map(({ decision }) => decision)) : left(broken.otherwise());
}

/** A weight per area as a figure in lb/ft2, the conversion recorded. */
export const inPoundsPerSquareFoot = (symbol: string, weight: AnyAreaWeight): Derived<'lb/ft2'> =>
  converted(symbol, asDerived(symbol, weight) as Derived<'kg/m2'>, 'lb/ft2');

const [thinnest, longest] = [constant(inch('0.0001')), constant(inch(100_000))];

/** A dimension of a section: more than zero, and such that areas and corners are not lost in the rounding of 34 digits. */
export const aSize = (what: string, figure: Derived<'in'>): readonly Demand[] => [
  aboveZero(what, figure),
  fits(what, figure, '>=', thinnest, 'thick enough to be made'),
  fits(what, figure, '<=', longest, 'short enough to be made'),
];
