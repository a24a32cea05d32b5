/** Taking figures of any unit of their kind into pounds and psi, and refusing what is not above zero. */
import { type Either, left, right } from 'fp-ts/lib/Either.js';
import { asDerived, type Basis, converted, type Derived, decide, type Known, zeroIn } from '../../trace/index.js';
import { showInWords } from '../../units/internal.js';
import type { NotPositive } from '../errors.js';

/** A load under this name, in lb. */
export function inPounds(
  name: string,
  load: Known<'lb' | 'kg'>,
  basis: Basis = 'stated',
): Either<NotPositive, Derived<'lb'>> {
  const figure = asDerived(name, load, basis);
  const pounds = converted<'lb' | 'kg', 'lb'>(`${name} in lb`, figure, 'lb');
  return decide(pounds, '>', zeroIn('lb')).holds ? right(pounds) : left(notPositive(name, showInWords(figure.value)));
}

/** A pressure under this name, in psi. Exact: 550 kPa is 79.77 psi, though sidewalls print it together with 80 psi. */
export function inPsi(
  name: string,
  pressure: Known<'psi' | 'kPa'>,
  basis: Basis = 'stated',
): Either<NotPositive, Derived<'psi'>> {
  const figure = asDerived(name, pressure, basis);
  const pounds = converted<'psi' | 'kPa', 'psi'>(`${name} in psi`, figure, 'psi');
  return decide(pounds, '>', zeroIn('psi')).holds ? right(pounds) : left(notPositive(name, showInWords(figure.value)));
}

const notPositive = (what: string, found: string): NotPositive => ({
  chapter: 'tires',
  tag: 'NotPositive',
  what,
  found,
});
