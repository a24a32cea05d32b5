/** Weights taken in, in any unit of weight: in pounds, and greater than zero. */
import { type Either, left, right } from 'fp-ts/lib/Either.js';
import { type AnyWeight, asDerived, type Basis, converted, type Derived, decide, zeroIn } from '../trace/index.js';
import { dimensionOf, type Unit, type UnitOf } from '../units/index.js';
import { showInWords } from '../units/internal.js';
import { type RulesError, rulesError } from './errors.js';

/** A weight under its shop name, in lb. Left `OutOfRange` when it is not a weight greater than zero. */
export function pounds(name: string, figure: AnyWeight, basis?: Basis): Either<RulesError, Derived<'lb'>> {
  const taken = asDerived(name, figure, basis);
  if (dimensionOf(taken.value.unit) !== 'mass' || !decide<Unit>(taken, '>', zeroIn(taken.value.unit)).holds) {
    return left(
      rulesError(
        { tag: 'OutOfRange', what: name, found: showInWords(taken.value), needed: 'greater than zero' },
        pathOf(taken),
      ),
    );
  }
  return right(converted(name, taken, 'lb'));
}

/** The key of a figure in a spec, when it came from one. */
export const pathOf = ({ why }: Derived<UnitOf<'mass'> | UnitOf<'length'>>): string | undefined =>
  why.kind === 'given' ? why.path : undefined;
