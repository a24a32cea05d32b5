/** Every double of an answer stands within its bound of the decimal it stands for, in 34 digits and in 60. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { assessJson } from '../../src/assessment/index.js';
import { decimalReading, type Node, nodesOf, readNode } from '../../src/trace/index.js';
import { boundOf, doubleOf } from '../../src/units/figure.js';
import type { Decimal } from '../../src/units/index.js';
import { randomSpec } from '../helpers/random-specs.js';
import { tiltDeck, workingsIn } from '../helpers/specs.js';
import { exactly, Sixty, sixtyReading } from './sixty-digits.js';

const count = process.env['ORACLE'] === 'long' ? 4000 : 25;

interface Found {
  nodes: number;
  exact: number;
  readonly wrong: string[];
}

function check(node: Node, replayed: Decimal, sixty: Decimal, found: Found): void {
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

function checkAnswer(answer: unknown, found: Found): void {
  const [replays, sixties] = [new Map<Node, Decimal>(), new Map<Node, Decimal>()];
  for (const node of nodesOf(workingsIn(answer).map(({ why }) => why)))
    check(node, readNode(node, decimalReading, replays), readNode(node, sixtyReading, sixties), found);
}

describe('bounds', () => {
  it('hold for every figure of random answers', { timeout: 7_200_000 }, () => {
    const found: Found = { nodes: 0, exact: 0, wrong: [] };
    for (let seed = 0; seed < count; seed += 1) {
      const answer = assessJson(seed === 0 ? tiltDeck() : randomSpec(seed));
      if (!isLeft(answer)) checkAnswer(answer.right, found);
    }
    expect(found.wrong).toEqual([]);
    expect(found.nodes).toBeGreaterThan(100 * count);
    // Whole pounds and inches, their sums, halves and moments: what round-number trailers are made of.
    expect(found.exact).toBeGreaterThan(found.nodes / 4);
  });
});
