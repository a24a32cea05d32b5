/** A row answered by `assess` itself: the exact path, and what the tape is compared with. */
import { type Either, left, right } from 'fp-ts/lib/Either.js';
import type { Assessment, AssessmentVerdict, MissingFact } from '../../assessment/index.js';
import type { Measure } from './measure.js';
import { attentionTags } from './verdict-codes.js';

export interface WholeRow {
  readonly figures: readonly number[];
  readonly verdict: AssessmentVerdict;
  readonly attention: readonly string[];
  readonly governs: string;
}

export const missingFigure = (name: string): MissingFact => ({
  chapter: 'assessment',
  tag: 'MissingFact',
  question: name,
  missing: 'facts for it in this alternative',
});

export function fromAssessment(
  assessment: Assessment,
  names: readonly string[],
  measure: Measure,
): Either<MissingFact, WholeRow> {
  const measured = measure(assessment);
  const figures: number[] = [];
  for (const name of names) {
    const figure = Object.hasOwn(measured, name) ? measured[name] : undefined;
    if (figure === undefined) return left(missingFigure(name));
    figures.push(figure.value.value.toNumber());
  }
  return right({
    figures,
    verdict: assessment.verdict,
    attention: attentionTags(assessment),
    governs: assessment.tightest.map(({ what }) => what).join(' = ') || 'nothing checked',
  });
}
