/** The value of one input at which a reserve is used up. */

import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import type { Assessment } from '../../assessment/index.js';
import type { SpecInput } from '../../spec/index.js';
import type { Node } from '../../trace/index.js';
import type { Quantity, Unit } from '../../units/index.js';
import { ofDecimal } from '../../units/internal.js';
import type { StudyFailure } from '../errors.js';
import { ready } from './one-input.js';
import { zerosOf } from './zeros-of-a-working.js';

export interface Solution {
  readonly path: string;
  /** Where the reserve is zero. */
  readonly value: Quantity<Unit>;
  /** Exact where the working is linear in the input; otherwise bracketed to `bracketWidth`. */
  readonly how: 'exact' | 'bracketed';
}

/**
 * At which value of this input is this reserve used up?
 *
 * Linear workings are solved exactly: `x = -r(0) / slope`. Others are scanned over the range of the input and the sign change
 * nearest to the spec's own value is bracketed. Where the program takes another branch along the input, each stretch is solved by
 * its own working.
 *
 * @param base a spec as JSON
 * @param path the input, such as `cargo.0.weight`
 * @param choose picks the reserve from an assessment
 * @returns Left `UnknownPath`, or `NoSolution` when the reserve is nowhere zero
 * @example orThrow(solveFor(spec, 'cargo.0.weight', (a) => a.checks[0].reserve)).value // 10,350 lb
 * @source the working of `assess`, solved for one of its inputs
 */
export function solveFor(
  base: SpecInput,
  path: string,
  choose: (assessment: Assessment) => { readonly why: Node } | undefined,
): Either<StudyFailure, Solution> {
  const given = ready(base, path);
  if (isLeft(given)) return given;
  const { assessment, own, unit, stretches } = given.right;
  const reserve = choose(assessment);
  const none = (found: string): Either<StudyFailure, never> =>
    left({ chapter: 'study', tag: 'NoSolution', path, what: reserve?.why.symbol ?? 'the reserve', found });
  if (reserve === undefined) return none('no such reserve in this assessment');
  const zeros = stretches.flatMap((stretch) => {
    const node = stretch.assessment === undefined ? undefined : choose(stretch.assessment)?.why;
    if (node === undefined) return [];
    const { at, how } = zerosOf(node, undefined, path, stretch.from, stretch.to);
    return at.map((x) => ({ x, how }));
  });
  const [nearest] = zeros.sort((a, b) => a.x.minus(own).abs().comparedTo(b.x.minus(own).abs()));
  return nearest === undefined
    ? none('the same sign everywhere')
    : right({ path, value: ofDecimal(nearest.x, unit), how: nearest.how });
}
