/** What the figures of an answer rest on. */
import { type Decision, type Node, nodesOf } from '../../src/trace/index.js';
import { workingsIn } from './specs.js';

const decided = (answer: unknown): readonly Node[] =>
  typeof answer === 'object' && answer !== null && 'decisions' in answer
    ? (answer.decisions as readonly Decision[]).flatMap(({ left, right }) => [left, right])
    : [];

/** The basis of every figure that was given, by its name; those that only a decision of the answer rests on too. */
export function basesIn(answer: unknown): Readonly<Record<string, string>> {
  const nodes = nodesOf([...workingsIn(answer).map(({ why }) => why), ...decided(answer)]);
  return Object.fromEntries(nodes.flatMap((node) => (node.kind === 'given' ? [[node.symbol, node.basis]] : [])));
}
