/** A row answered by `assess` itself: the exact path, and what the tape is compared with. */
import { type Either, left, right } from 'fp-ts/lib/Either.js';
import type { Assessment, AssessmentVerdict, MissingFact } from '../../assessment/index.js';
import type { Quantity, Unit } from '../../units/index.js';
import { boundOf, doubleOf } from '../../units/internal.js';
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

/** How a figure becomes the number of a row. */
export type AsNumber = (figure: Quantity<Unit>) => number;

/** The double nearest to the decimal. */
export const nearest: AsNumber = ({ value }) => value.toNumber();

/** The most that a double may be away from its decimal, as a share of it, to be compared with a tape. */
const closeEnough = 1e-12;

/** The double of a figure where its bound says that it is as good as its decimal: for comparing, without working the decimal out. */
export const forComparing: AsNumber = (figure) => {
  const double = doubleOf(figure);
  return boundOf(figure) <= closeEnough * Math.abs(double) ? double : nearest(figure);
};

export function fromAssessment(
  assessment: Assessment,
  names: readonly string[],
  measure: Measure,
  asNumber = nearest,
): Either<MissingFact, WholeRow> {
  const measured = measure(assessment);
  const figures: number[] = [];
  for (const name of names) {
    const figure = Object.hasOwn(measured, name) ? measured[name] : undefined;
    if (figure === undefined) return left(missingFigure(name));
    figures.push(asNumber(figure.value));
  }
  return right({
    figures,
    verdict: assessment.verdict,
    attention: attentionTags(assessment),
    governs: assessment.tightest.map(({ what }) => what).join(' = ') || 'nothing checked',
  });
}
