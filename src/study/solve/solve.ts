/** The value of one input at which a reserve is used up. */

import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import type { Assessment } from '../../assessment/index.js';
import type { Note } from '../../ratings/index.js';
import type { SpecInput } from '../../spec/index.js';
import { constant, type Derived, type Node } from '../../trace/index.js';
import { convert, dimensionOf, type Quantity, type Unit } from '../../units/index.js';
import { inShort, ofDecimal, own } from '../../units/internal.js';
import type { StudyFailure, UnusableVariation } from '../errors.js';
import { unusable } from '../plan/plan-refusal.js';
import { readLevel } from '../plan/vary.js';
import { ready } from './one-input.js';
import { zerosOf } from './zeros-of-a-working.js';

export interface Solution {
  /** The key of the spec that was moved. */
  readonly path: string;
  /** Where the reserve is zero, or the target met; the spec has an answer there. */
  readonly value: Quantity<Unit>;
  /** Exact where the working is linear in the input; otherwise bracketed to `bracketWidth`. */
  readonly how: 'exact' | 'bracketed';
  /** What is to be said of the input that was moved: axles under a tongue load that was weighed. */
  readonly notes: readonly Note[];
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
 * @returns Left `UnknownPath`, or `NoSolution` when the reserve is nowhere zero, or only where the spec has no answer
 * @example orThrow(solveFor(spec, 'cargo.0.weight', (a) => a.checks[0].reserve)).value // 10,350 lb
 * @source the working of `assess`, solved for one of its inputs
 */
export function solveFor(
  base: SpecInput,
  path: string,
  choose: (assessment: Assessment) => { readonly why: Node } | undefined,
): Either<StudyFailure, Solution> {
  return solveWhere(base, path, choose, () => right(undefined));
}

/**
 * At which value of this input does this figure meet a target?
 *
 * As `solveFor`, for `figure - target` instead of a reserve: where must the machine be for a tongue share of 12 %?
 *
 * @param base a spec as JSON
 * @param path the input, such as `cargo.0.front`
 * @param choose picks the figure from an assessment
 * @param target a figure as text, with a unit of the figure's dimension
 * @returns Left `UnknownPath`, `UnusableVariation` for a target that is no such figure, or `NoSolution`
 * @example orThrow(solveForTarget(spec, 'cargo.0.weight', (a) => a.weights.gross, '12,000 lb')).value // 8,350 lb
 * @source the working of `assess`, solved for one of its inputs
 */
export function solveForTarget(
  base: SpecInput,
  path: string,
  choose: (assessment: Assessment) => Derived<Unit> | undefined,
  target: string,
): Either<StudyFailure, Solution> {
  return solveWhere(base, path, choose, (figure) => targetFor(figure.value.unit, target));
}

/** The target as a figure in the unit of what is to meet it. */
function targetFor(unit: Unit, text: string): Either<UnusableVariation, Node | undefined> {
  const read = readLevel(text);
  if (read !== undefined && dimensionOf(read.unit) === dimensionOf(unit))
    return right(constant(convert(read, unit as never) as Quantity<Unit>, 'target').why);
  const needed = `a figure of ${dimensionOf(unit)} with its unit`;
  return left({ chapter: 'study', tag: 'UnusableVariation', path: 'target', found: inShort(text), needed });
}

const isNode = (why: unknown): boolean => typeof why === 'object' && why !== null && Object.hasOwn(why, 'kind');

/** What a function without types picked, where it is a figure with its working. */
const ifFigure = <F extends { readonly why: Node }>(picked: F | undefined): F | undefined =>
  typeof picked === 'object' && picked !== null && isNode(own(picked, 'why')) ? picked : undefined;

/** Where a figure of an assessment is zero, or meets a target. */
function solveWhere<F extends { readonly why: Node }>(
  base: unknown,
  path: string,
  choose: (assessment: Assessment) => F | undefined,
  targetOf: (figure: F) => Either<UnusableVariation, Node | undefined>,
): Either<StudyFailure, Solution> {
  if (typeof choose !== 'function')
    return left(unusable('choose', choose, 'a function that picks a figure of an assessment'));
  const given = ready(base, path);
  if (isLeft(given)) return given;
  const { at, assessment, own, unit, stretches, notes } = given.right;
  const figure = ifFigure(choose(assessment));
  const none = (found: string): Either<StudyFailure, never> =>
    left({ chapter: 'study', tag: 'NoSolution', path, what: figure?.why.symbol ?? 'the figure', found });
  if (figure === undefined) return none('no such figure in this assessment');
  const target = targetOf(figure);
  if (isLeft(target)) return target;
  const zeros = stretches.flatMap((stretch) => {
    const node = stretch.assessment === undefined ? undefined : ifFigure(choose(stretch.assessment))?.why;
    if (node === undefined) return [];
    const { at: places, how } = zerosOf(node, target.right, path, stretch.from, stretch.to);
    return places.map((x) => ({ x, how }));
  });
  const nearest = zeros.sort((a, b) => a.x.minus(own).abs().comparedTo(b.x.minus(own).abs()));
  // A zero may lie on the end of a stretch, where the spec itself has no answer.
  const found = nearest.find(({ x }) => at(x) !== undefined);
  if (found !== undefined) return right({ path, value: ofDecimal(found.x, unit), how: found.how, notes });
  if (nearest.length > 0) return none('where it is met, the spec has no answer');
  return none(target.right === undefined ? 'the same sign everywhere' : 'the target is met nowhere');
}
