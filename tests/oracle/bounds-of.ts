/** Whether every double of an answer is within its bound of the exact decimal, in 34 digits and in 60. */
import { decimalReading, type Node, nodesOf, readNode } from '../../src/trace/index.js';
import { boundOf, doubleOf } from '../../src/units/figure.js';
import type { Decimal } from '../../src/units/index.js';
import { workingsIn } from '../helpers/specs.js';
import { exactly, Sixty, sixtyReading } from './sixty-digits.js';

/** How many figures were looked at, how many of them are exact doubles, and what is wrong. */
export interface FoundBounds {
  nodes: number;
  exact: number;
  readonly wrong: string[];
}

function check(node: Node, replayed: Decimal, sixty: Decimal, found: FoundBounds): void {
  const bound = boundOf(node.value);
  found.nodes += 1;
  if (bound === 0) found.exact += 1;
  const name = `${node.symbol ?? node.kind} ${node.value.value.toFixed()}`;
  if (replayed.toFixed() !== node.value.value.toFixed()) found.wrong.push(`${name} replays to ${replayed.toFixed()}`);
  if (bound === Infinity) return;
  const double = exactly(doubleOf(node.value));
  const off = new Sixty(node.value.value.toFixed()).minus(double).abs();
  if (off.gt(bound)) found.wrong.push(`${name} is ${off.toFixed()} off its double, bound ${bound}`);
  const slack = double.abs().times('1e-40').plus(bound);
  if (sixty.minus(double).abs().gt(slack))
    found.wrong.push(`${name} is ${sixty.toFixed()} in 60 digits, bound ${bound}`);
}

/** Looks at every figure of an answer. */
export function checkBounds(answer: unknown, found: FoundBounds): void {
  const [replays, sixties] = [new Map<Node, Decimal>(), new Map<Node, Decimal>()];
  for (const node of nodesOf(workingsIn(answer).map(({ why }) => why)))
    check(node, readNode(node, decimalReading, replays), readNode(node, sixtyReading, sixties), found);
}
