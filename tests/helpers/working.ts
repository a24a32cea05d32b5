/** What must hold of every working: it replays to its own figure, node for node, and agrees with exact fractions. */
import { expect } from 'vitest';
import { type Derived, decimalReading, type Node, nodesOf, readNode } from '../../src/trace/index.js';
import type { Decimal, Unit } from '../../src/units/index.js';
import { type Fraction, fractionReading, NotRational, relativeGap } from './fractions.js';

/** Replays every node of the workings and compares with what was recorded; then reads the rational ones in fractions. */
export function expectReplays(...derived: readonly Derived<Unit>[]): void {
  const memo = new Map<Node, Decimal>();
  const exact = new Map<Node, Fraction>();
  for (const node of nodesOf(derived.map(({ why }) => why))) {
    const again = readNode(node, decimalReading, memo);
    expect(again.toFixed(), node.symbol ?? node.kind).toBe(node.value.value.toFixed());
    expect(gapFromExact(node, exact), node.symbol ?? node.kind).toBeLessThan(1e-24);
  }
  for (const { value, why } of derived) expect(value).toBe(why.value);
}

function gapFromExact(node: Node, memo: Map<Node, Fraction>): number {
  try {
    return Math.abs(relativeGap(node.value.value.toFixed(), readNode(node, fractionReading, memo)));
  } catch (problem) {
    if (problem instanceof NotRational) return 0;
    throw problem;
  }
}
