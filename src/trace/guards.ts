/**
 * Guards: tests that a figure must pass before it is used, and the error when it does not.
 *
 * A guard is a decision, because the answer is there only while it holds. `allHold` hands the decisions of its guards back,
 * so that a study can tell for which variants the recorded calculation is still valid.
 */
import { type Either, left, right } from 'fp-ts/lib/Either.js';
import { type Quantity, quantity, toWire, type Unit } from '../units/index.js';
import { type Comparison, type Decision, decide } from './decide.js';
import type { OutsideItsRange } from './errors.js';
import { constant } from './leaves.js';
import type { Derived, Node } from './node.js';

/** A comparison that must hold, and the error when it does not; the error is made when it is needed. */
export interface Guard<E = OutsideItsRange> {
  readonly decision: Decision;
  readonly otherwise: () => E;
}

const zeros = new Map<Unit, Derived<Unit>>();

/** Zero in a unit, for comparisons. @example show(zeroIn('lb').value) // 0 lb */
export function zeroIn<U extends Unit>(unit: U): Derived<U> {
  const zero = zeros.get(unit) ?? constant(quantity(0, unit));
  zeros.set(unit, zero);
  return zero as Derived<U>;
}

/** Where in a spec a figure stands, when it came from one; a recorded conversion stands where its figure does. @example pathOf(given('deck', foot(20), 'stated', 'trailer.deck').why).path // trailer.deck */
export function pathOf(node: Node): { readonly path?: string } {
  if (node.kind === 'given') return node.path === undefined ? {} : { path: node.path };
  return node.kind === 'computed' && node.operation === 'convert' ? pathOf(node.of[0] as Node) : {};
}

type End = 'from' | 'to' | 'above' | 'below';
type Ends = { readonly [E in End]?: Quantity<Unit> };

const written = (ends: Ends): Pick<OutsideItsRange, End> =>
  Object.fromEntries(Object.entries(ends).map(([end, figure]) => [end, toWire(figure)]));

const outside = (what: string, figure: Derived<Unit>, ends: Ends): OutsideItsRange => ({
  chapter: 'trace',
  tag: 'OutsideItsRange',
  what,
  found: toWire(figure.value),
  ...written(ends),
  ...pathOf(figure.why),
});

/** Any comparison with an error of its own. @example guard(decide(given('gross', lb(14000)), '<=', given('GVWR', lb(14000))), () => 'too heavy').decision.holds // true */
export const guard = <E>(decision: Decision, otherwise: () => E): Guard<E> => ({ decision, otherwise });

/** The ends of a range with one end, as a comparison with that end says. */
function endsOf(comparison: Comparison, at: Quantity<Unit>): Ends {
  switch (comparison) {
    case '>':
      return { above: at };
    case '>=':
      return { from: at };
    case '<':
      return { below: at };
    case '<=':
      return { to: at };
    case '=':
      return { from: at, to: at };
  }
}

const compared = <U extends Unit>(
  what: string,
  figure: Derived<U>,
  comparison: Comparison,
  end: Derived<NoInfer<U>>,
): Guard =>
  guard(decide(figure, comparison, end), () => outside(what, figure, endsOf(comparison, end.value as Quantity<Unit>)));

/** The figure must be greater than zero. @example aboveZero('wheelbase', given('wheelbase', inch(0))).decision.holds // false */
export const aboveZero = <U extends Unit>(what: string, figure: Derived<U>): Guard =>
  compared<Unit>(what, figure, '>', zeroIn(figure.value.unit));

/** The figure must be zero or more. @example notNegative('curb', given('curb', lb(0))).decision.holds // true */
export const notNegative = <U extends Unit>(what: string, figure: Derived<U>): Guard =>
  compared<Unit>(what, figure, '>=', zeroIn(figure.value.unit));

/** The figure must not be above a limit. @example atMost('share', given('share', ratio(2)), constant(ratio(1))).decision.holds // false */
export const atMost = <U extends Unit>(what: string, figure: Derived<U>, limit: Derived<NoInfer<U>>): Guard =>
  compared(what, figure, '<=', limit);

/** The figure must not be below a limit. @example atLeast('depth', given('depth', inch(3)), constant(inch(2))).decision.holds // true */
export const atLeast = <U extends Unit>(what: string, figure: Derived<U>, limit: Derived<NoInfer<U>>): Guard =>
  compared(what, figure, '>=', limit);

/** The figure must be less than a limit. @example below('slope', given('slope', degree(90)), constant(degree(90))).decision.holds // false */
export const below = <U extends Unit>(what: string, figure: Derived<U>, limit: Derived<NoInfer<U>>): Guard =>
  compared(what, figure, '<', limit);

/** The figure must be more than a limit. @example above('leg', given('leg', inch(2)), constant(inch(1))).decision.holds // true */
export const above = <U extends Unit>(what: string, figure: Derived<U>, limit: Derived<NoInfer<U>>): Guard =>
  compared(what, figure, '>', limit);

/** The figure must lie between two others, the ends included or not. @example between('place', given('place', inch(90)), constant(inch(0)), constant(inch(240)), 'included').length // 2 */
export function between<U extends Unit>(
  what: string,
  figure: Derived<U>,
  from: Derived<NoInfer<U>>,
  to: Derived<NoInfer<U>>,
  ends: 'included' | 'excluded',
): readonly Guard[] {
  const included = ends === 'included';
  const otherwise = (): OutsideItsRange =>
    outside(what, figure, included ? { from: from.value, to: to.value } : { above: from.value, below: to.value });
  return [
    guard(decide(figure, included ? '>=' : '>', from), otherwise),
    guard(decide(figure, included ? '<=' : '<', to), otherwise),
  ];
}

/** Above zero and not above one. @example aShare('tongue share', given('tongue share', ratio('0.12'))).length // 2 */
export function aShare(what: string, share: Derived<'ratio'>): readonly Guard[] {
  const one = constant(quantity(1, 'ratio'));
  const otherwise = (): OutsideItsRange =>
    outside(what, share, { above: zeroIn('ratio').value, to: quantity(1, 'ratio') });
  return [guard(decide(share, '>', zeroIn('ratio')), otherwise), guard(decide(share, '<=', one), otherwise)];
}

/** The low end must not be above the high one. @example inOrder('deck', given('front', inch(60)), given('rear', inch(300))).decision.holds // true */
export const inOrder = <U extends Unit>(what: string, low: Derived<U>, high: Derived<NoInfer<U>>): Guard =>
  guard(decide(low, '<=', high), () => outside(`the low end of ${what}`, low, { to: high.value }));

/** The decisions when every guard holds; otherwise the error of the first that does not. @example allHold([])._tag // Right */
export function allHold<E>(guards: readonly Guard<E>[]): Either<E, readonly Decision[]> {
  const failed = guards.find(({ decision }) => !decision.holds);
  return failed === undefined ? right(guards.map(({ decision }) => decision)) : left(failed.otherwise());
}
