/** Reading the figures of a towing question: any unit is converted to pounds and inches, and guarded before it is used. */
import { type Either, left, right } from 'fp-ts/lib/Either.js';
import {
  type AnyShare,
  asDerived,
  constant,
  type Decision,
  type Derived,
  decide,
  inUnit,
  type Node,
  zeroIn,
} from '../trace/index.js';
import { quantity, toWire, type Unit } from '../units/index.js';
import type { BelowZero, NotAboveZero, NotAShare } from './errors.js';

export const plainShare = (symbol: string, figure: AnyShare): Derived<'ratio'> =>
  inUnit(asDerived(symbol, figure), 'ratio');

/** Zero in a unit, for comparisons. */
export const noneOf = zeroIn;

/** The key of a figure in a spec, when it came from one. */
export function pathOf(node: Node): { readonly path?: string } {
  if (node.kind === 'given') return node.path === undefined ? {} : { path: node.path };
  return node.kind === 'computed' && node.operation === 'convert' ? pathOf(node.of[0] as Node) : {};
}

/** A figure under the name an error would call it by. */
export type Called = readonly [what: string, figure: Derived<Unit>];

/** Every one greater than zero, or the first that is not. */
export function allAboveZero(figures: readonly Called[]): Either<NotAboveZero, readonly Decision[]> {
  const decisions: Decision[] = [];
  for (const [what, figure] of figures) {
    const decision = decide(figure, '>', noneOf(figure.value.unit));
    if (!decision.holds)
      return left({ chapter: 'towing', tag: 'NotAboveZero', what, found: toWire(figure.value), ...pathOf(figure.why) });
    decisions.push(decision);
  }
  return right(decisions);
}

/** None less than zero, or the first that is. */
export function noneBelowZero(figures: readonly Called[]): Either<BelowZero, readonly Decision[]> {
  const decisions: Decision[] = [];
  for (const [what, figure] of figures) {
    const decision = decide(figure, '>=', noneOf(figure.value.unit));
    if (!decision.holds)
      return left({ chapter: 'towing', tag: 'BelowZero', what, found: toWire(figure.value), ...pathOf(figure.why) });
    decisions.push(decision);
  }
  return right(decisions);
}

/** Above zero and not above one. */
export function aShare(what: string, share: Derived<'ratio'>): Either<NotAShare, readonly Decision[]> {
  const decisions = [decide(share, '>', noneOf('ratio')), decide(share, '<=', constant(quantity(1, 'ratio')))];
  if (decisions.every(({ holds }) => holds)) return right(decisions);
  return left({ chapter: 'towing', tag: 'NotAShare', what, found: toWire(share.value), ...pathOf(share.why) });
}
