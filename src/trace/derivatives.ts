/** How an answer moves with each of its inputs: one backward pass over the working. */
import { showBrief, type Unit } from '../units/index.js';
import { Decimal, ofDecimal } from '../units/internal.js';
import type { Computed, Derived, Given, LookedUp, Node } from './node.js';
import { partialsOf, tiedParts } from './partials.js';
import { nodesOf } from './replay.js';

/** How much the answer changes for one unit more of one input. */
export interface Slope {
  readonly leaf: Given | LookedUp;
  /** Change of the answer, in its own unit, for one more of the leaf's unit. Exact to 34 digits. */
  readonly slope: Decimal;
  /** Unit of the slope: `lb/in`; the unit of the answer alone where the input is a plain number. */
  readonly unit: string;
}

/** A least or a greatest in the working, and which of its parts gave the answer. */
export interface PieceTaken {
  readonly step: Computed;
  readonly piece: Node;
  /** All parts that are as good, when there is more than one: on the other side of the tie the slopes are those of another part. */
  readonly tied: readonly Node[];
}

/** Every slope of an answer, and where the slopes do not tell all. */
export interface Derivatives {
  /** One for each input with a path, and for each other input and table figure, in the order of the working; those that do not move the answer are left out. */
  readonly slopes: readonly Slope[];
  readonly taken: readonly PieceTaken[];
  /** Steps that round: the slope is that of the figure before rounding. */
  readonly rounded: readonly Computed[];
  /** Inputs at a figure where the slope has no end, such as the root of zero. */
  readonly unbounded: readonly (Given | LookedUp)[];
}

const unitOf = (answer: Unit, leaf: Unit): string => {
  if (leaf === 'ratio') return answer;
  return `${answer === 'ratio' ? '1' : answer}/${leaf.includes('/') ? `(${leaf})` : leaf}`;
};

/** Adjoints of all nodes, last step first. */
function adjointsOf(order: readonly Node[], root: Node): ReadonlyMap<Node, Decimal> {
  const adjoints = new Map<Node, Decimal>([[root, new Decimal(1)]]);
  for (let i = order.length - 1; i >= 0; i -= 1) {
    const node = order[i] as Node;
    const adjoint = adjoints.get(node);
    if (node.kind !== 'computed' || adjoint === undefined) continue;
    partialsOf(node).forEach((partial, k) => {
      if (partial.isZero()) return;
      const part = node.of[k] as Node;
      const share = adjoint.times(partial);
      adjoints.set(part, adjoints.get(part)?.plus(share) ?? share);
    });
  }
  return adjoints;
}

/**
 * By how much does this answer change when one of its inputs changes?
 *
 * One backward pass over the working: `d answer / d part = sum of d answer / d step x d step / d part`. Exact to 34 digits
 * where the working is rational; through roots and angles to the digits of the decimals.
 *
 * Not for large changes: where another piece of a least or greatest takes over, or a decision goes the other way, the
 * slopes are others. Numbers that belong to a formula are no inputs.
 *
 * @param derived a figure with its working, such as a reserve or the tongue load
 * @returns the slope by each input with its unit (`lb/in`), the pieces taken with a mark where several tie, the steps that round
 * @example derivatives(product('tongue load', grossWeight, given('share', ratio('0.12')))).slopes.length // 3
 * @source the chain rule of differentiation, taken from the answer backward
 */
export function derivatives<U extends Unit>(derived: Derived<U>): Derivatives {
  const order = nodesOf([derived.why]);
  const adjoints = adjointsOf(order, derived.why);
  const sums = new Map<unknown, { leaf: Given | LookedUp; slope: Decimal }>();
  for (const node of order) {
    if (node.kind !== 'given' && node.kind !== 'looked up') continue;
    const adjoint = adjoints.get(node);
    if (adjoint === undefined) continue;
    const key = (node.kind === 'given' ? node.path : undefined) ?? node;
    const before = sums.get(key);
    sums.set(key, { leaf: before?.leaf ?? node, slope: before?.slope.plus(adjoint) ?? adjoint });
  }
  const found = [...sums.values()].filter(({ slope }) => !slope.isZero());
  const reached = order.filter(
    (node): node is Computed => node.kind === 'computed' && adjoints.get(node)?.isZero() === false,
  );
  return {
    slopes: found
      .filter(({ slope }) => slope.isFinite())
      .map(({ leaf, slope }) => ({ leaf, slope, unit: unitOf(derived.value.unit, leaf.value.unit) })),
    taken: reached
      .filter(({ operation }) => operation === 'least' || operation === 'greatest')
      .map((step) => {
        const tied = tiedParts(step);
        return { step, piece: tied[0] ?? (step.of[0] as Node), tied: tied.length > 1 ? tied : [] };
      }),
    rounded: reached.filter(({ operation }) => operation === 'round'),
    unbounded: found.filter(({ slope }) => !slope.isFinite()).map(({ leaf }) => leaf),
  };
}

/**
 * One line for each slope: the input's value, and what one unit more of it does.
 *
 * @example slopesText(derivatives(grossWeight)) // trailer weight: 1 lb/lb
 */
export function slopesText({ slopes, taken }: Derivatives): string {
  const nameOf = (node: Node): string => node.symbol ?? 'a step';
  return [
    ...slopes.map(({ leaf, slope, unit }) => {
      const path = leaf.kind === 'given' ? leaf.path : undefined;
      return `${path ?? leaf.symbol}: ${showBrief(ofDecimal(slope, 'ratio'), 4)} ${unit}`;
    }),
    ...taken
      .filter(({ tied }) => tied.length > 0)
      .map(({ step, tied }) => `tie in ${nameOf(step)}: ${tied.map(nameOf).join(', ')}`),
  ].join('\n');
}
