/** Cache of the outcomes of decisions that depend on one varied input: the same figure gives the same outcome on every row. */
import { type Decision, type Node, nodesOf } from '../../trace/index.js';
import type { Decimal } from '../../units/index.js';

/** The most outcomes of one decision that are kept. */
const mostKept = 10_000;

export class DecisionMemo {
  private readonly inputs = new Map<Decision, readonly string[]>();
  private readonly outcomes = new Map<Decision, Map<Decimal, boolean>>();

  constructor(private readonly paths: readonly string[]) {}

  /** The varied inputs on which the sides of a decision rest. */
  inputsOf(decision: Decision): readonly string[] {
    const known = this.inputs.get(decision);
    if (known !== undefined) return known;
    const isInput = (node: Node): boolean =>
      node.kind === 'given' && node.path !== undefined && this.paths.includes(node.path);
    const leaves = nodesOf([decision.left, decision.right]).filter(isInput);
    const found = [...new Set(leaves.flatMap((node) => (node.kind === 'given' ? (node.path ?? []) : [])))];
    this.inputs.set(decision, found);
    return found;
  }

  /** The outcome for a figure, if it was asked before. Figures are compared by identity: a level is always the same object. */
  outcome(decision: Decision, figure: Decimal): boolean | undefined {
    return this.outcomes.get(decision)?.get(figure);
  }

  keep(decision: Decision, figure: Decimal, outcome: boolean): boolean {
    const known = this.outcomes.get(decision) ?? new Map<Decimal, boolean>();
    if (known.size >= mostKept) known.clear();
    known.set(figure, outcome);
    this.outcomes.set(decision, known);
    return outcome;
  }
}
