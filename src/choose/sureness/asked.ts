/** What is asked of an assessment when its inputs may be off: every reserve, and every load that must press. */
import type { Assessment } from '../../assessment/index.js';
import type { Derived, Node } from '../../trace/index.js';

/** One question: a figure that is well when it is zero or more. */
export interface Question {
  /** What programs look it up by: the id of the check, or `presses/` and the name of the load. */
  readonly id: string;
  /** What is asked, in shop words: the name of a check, or of a load that must press. */
  readonly what: string;
  /** Whether a rating is asked, or whether a load presses. */
  readonly kind: 'rating' | 'pressing';
  /** Reserve of a rating, or the load that must press. */
  readonly figure: Derived<'lb'>;
}

/** Every question of an assessment, in its order. */
export const questionsOf = ({ checks, partChecks, uplift }: Assessment): readonly Question[] => [
  ...[...checks, ...partChecks].map(
    ({ id, what, reserve }): Question => ({ id, what, kind: 'rating', figure: reserve }),
  ),
  ...uplift.mustPress.map(
    ({ what, load }): Question => ({ id: `presses/${what}`, what: `${what} presses`, kind: 'pressing', figure: load }),
  ),
];

/** A working without its figures: two assessments whose questions have one shape are one formula at other figures. */
export function shapeOf(questions: readonly Question[]): string {
  const seen = new Map<Node, number>();
  const written: string[] = [];
  const visit = (node: Node): number => {
    const known = seen.get(node);
    if (known !== undefined) return known;
    written.push(
      node.kind === 'computed'
        ? `${node.operation}(${node.of.map(visit).join()})`
        : ((node.kind === 'given' ? node.path : undefined) ?? node.value.value.toFixed()),
    );
    seen.set(node, written.length);
    return written.length;
  };
  return questions.map(({ id, figure }) => `${id}=${visit(figure.why)}`).join(';') + written.join(';');
}
