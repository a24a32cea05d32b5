/** The same job on the next rating: what changes, and which published lines are crossed on the way. */

import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import { type AssessError, type Assessment, ruleFindings } from '../assessment/index.js';
import { type Note, note } from '../ratings/index.js';
import type { Finding } from '../rules/index.js';
import type { SpecInput } from '../spec/index.js';
import { inPounds } from '../trace/index.js';
import { compare as compareFigures } from '../units/index.js';
import { type Comparison, compare } from './compare.js';
import type { ChooseError } from './errors.js';

/** A published line whose answer is another one on the next class. */
export interface LineCrossed {
  /** What the rule says of the build there is. */
  readonly now: Finding;
  /** What it says of the build one class up. */
  readonly next: Finding;
}

export interface ClassUp {
  /** Both builds side by side. */
  readonly comparison: Comparison;
  /** The published rules that answer otherwise for the heavier build. */
  readonly crossed: readonly LineCrossed[];
  /** Remarks: where the two are not of one job. */
  readonly notes: readonly Note[];
}

/** The same job means the same cargo. */
function sameJob({ assessments: [now, next] }: Comparison): readonly Note[] {
  const weigh = (cargo: NonNullable<typeof now>['spec']['cargo']): string =>
    (cargo ?? []).map(({ name, weight }) => `${name} ${weight.value.value.toFixed()} ${weight.value.unit}`).join();
  const same = weigh(now?.spec.cargo) === weigh(next?.spec.cargo);
  return same
    ? []
    : [note('NotTheSameJob', 'The two specs do not carry the same cargo: the comparison is not of one job.')];
}

const findingsOf = (build: Assessment | undefined): readonly Finding[] =>
  build === undefined ? [] : ruleFindings(build.rules);

/**
 * What changes one class up?
 *
 * Both builds are assessed with their own axles, tires, coupler and empty weight; the table shows the figures of both, and
 * every published line whose answer changes is listed with both comparisons.
 *
 * @param now the spec of the build at hand
 * @param next the spec of the next class, the same cargo standing where it should on that trailer
 * @returns comparison, lines crossed, a note when the job is not the same or the next GVWR is not higher
 * @example orThrow(oneClassUp(spec, spec)).crossed.length // 0
 * @source each figure and each rule carries its own
 */
export function oneClassUp(now: SpecInput, next: SpecInput): Either<AssessError | ChooseError, ClassUp> {
  const compared = compare({ now, 'one class up': next });
  if (isLeft(compared)) return compared;
  const [first, second] = compared.right.assessments;
  const before = new Map(findingsOf(first).map((finding) => [finding.id, finding]));
  const crossed = findingsOf(second).flatMap((finding) => {
    const earlier = before.get(finding.id);
    const same = earlier?.outcome === finding.outcome && earlier.topic === finding.topic;
    return earlier === undefined || same ? [] : [{ now: earlier, next: finding }];
  });
  const [low, high] = [first, second].map(
    (build) => build?.spec.trailer.gvwr && inPounds('GVWR', build.spec.trailer.gvwr),
  );
  const higher = low !== undefined && high !== undefined && compareFigures(high.value, low.value) > 0;
  const notes = [
    ...sameJob(compared.right),
    ...(higher ? [] : [note('NotAClassUp', 'The GVWR of the next build is not known to be higher.')]),
  ];
  return right({ comparison: compared.right, crossed, notes });
}
