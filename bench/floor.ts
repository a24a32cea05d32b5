/** What an assessment cannot go below: the decimals of its recorded steps, and the objects that keep them, each alone. */
import type { Assessment } from '../dist/assessment.js';
import { type Computed, type Derived, decimalReading, type Node, nodesOf, readOperation } from '../dist/trace.js';
import type { Unit } from '../dist/units.js';

/** Every figure with working in an answer, save the published lines, which are worked out only when read. */
function workingsIn(answer: unknown, seen = new Set<unknown>()): readonly Node[] {
  if (typeof answer !== 'object' || answer === null || seen.has(answer)) return [];
  seen.add(answer);
  if ('why' in answer) return [(answer as Derived<Unit>).why];
  if ('comparison' in answer) return [(answer as { left: Node }).left, (answer as unknown as { right: Node }).right];
  return Object.entries(answer).flatMap(([key, inner]) => (key === 'rules' ? [] : workingsIn(inner, seen)));
}

export function floorsOf(assessment: Assessment): {
  readonly steps: number;
  readonly decimals: () => unknown;
  readonly objects: () => unknown;
} {
  const computed = nodesOf(workingsIn(assessment)).filter((node): node is Computed => node.kind === 'computed');
  const recorded = computed.map((node) => ({ node, figures: node.of.map(({ value }) => value.value) }));
  return {
    steps: computed.length,
    decimals: () => {
      let last: unknown;
      for (const { node, figures } of recorded) last = readOperation(node, figures, decimalReading);
      return last;
    },
    objects: () => {
      let last: unknown;
      for (const {
        kind,
        operation,
        of,
        value: { unit, value },
        basis,
        symbol,
        source,
        factor,
        rounding,
      } of computed) {
        const figure = Object.freeze({ unit, value });
        last = {
          value: figure,
          why: { kind, operation, of: [...of], value: figure, basis, symbol, source, factor, rounding },
        };
      }
      return last;
    },
  };
}
