/** Whether the decisions of an answer tell for which other inputs it is still valid. */
import { expect } from 'vitest';
import { type Decision, type Derived, figureWith, holdsFor, type Node, replay } from '../../src/trace/index.js';
import type { Decimal, Unit } from '../../src/units/index.js';
import { compareFigures, ofDecimal } from '../../src/units/internal.js';

/** One answer: its figures and whatever else it says, in words. */
export interface Spoken {
  readonly figures: readonly Derived<Unit>[];
  readonly says: readonly unknown[];
  readonly decisions: readonly Decision[];
}

type Leaves = ReadonlyMap<string, Decimal>;

const figureOf = (node: Node, leaves: Leaves) => ofDecimal(figureWith(node, leaves), node.value.unit);

const stands = ({ left, comparison, right, holds }: Decision, leaves: Leaves): boolean =>
  holdsFor(compareFigures(figureOf(left, leaves), figureOf(right, leaves)), comparison) === holds;

/**
 * Asks at every figure, and holds each answer against the others: where all its decisions come out the same at another figure,
 * the answer there must say the same, and its figures must be those of the working replayed. Undefined is a refusal.
 */
export function expectSpeaksFor<Figure>(
  path: string,
  figures: readonly (readonly [Decimal, Figure])[],
  ask: (figure: Figure) => Spoken | undefined,
): void {
  const answers = figures.map(([decimal, figure]) => ({ leaves: new Map([[path, decimal]]), spoken: ask(figure) }));
  for (const { spoken } of answers) {
    if (spoken === undefined) continue;
    for (const { leaves, spoken: other } of answers) {
      if (!spoken.decisions.every((decision) => stands(decision, leaves))) continue;
      const at = `${path} ${leaves.get(path)?.toFixed()}`;
      expect(other?.says, at).toEqual(spoken.says);
      expect(
        other?.figures.map(({ value }) => value.value.toFixed()),
        at,
      ).toEqual(spoken.figures.map((figure) => replay(figure, leaves).value.toFixed()));
    }
  }
}
