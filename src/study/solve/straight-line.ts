/** The straight line of a working in one input, in exact decimals, if it is linear. */

import type { Node } from '../../trace/index.js';
import { type Decimal, zero } from '../../units/internal.js';
import { columnForm, type Form, isFixed, linearStep, numberForm } from '../tape/linear-forms.js';

/** `at + slope x input`. */
export interface Line {
  readonly at: Decimal;
  readonly slope: Decimal;
}

/** The one column there is: the input. */
const input = 0;

/** The line of a working in the input at `path`, or `undefined` when it is not linear. */
export function lineOf(root: Node, path: string): Line | undefined {
  const memo = new Map<Node, Form | undefined>();
  const read = (node: Node): Form | undefined => {
    if (!memo.has(node)) memo.set(node, formOf(node));
    return memo.get(node);
  };
  const formOf = (node: Node): Form | undefined => {
    if (node.kind !== 'computed')
      return node.kind === 'given' && node.path === path ? columnForm(input) : numberForm(node.value.value);
    const parts = node.of.map(read);
    if (!parts.every((part) => part !== undefined)) return undefined;
    return parts.every(isFixed) ? numberForm(node.value.value) : linearStep(node, parts);
  };
  const form = read(root);
  return form && { at: form.at, slope: form.terms.get(input) ?? zero };
}
