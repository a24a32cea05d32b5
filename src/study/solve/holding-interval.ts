/** The interval of one input in which every check holds. */

import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import type { Assessment } from '../../assessment/index.js';
import type { Note } from '../../ratings/index.js';
import type { SpecInput } from '../../spec/index.js';
import type { Node } from '../../trace/index.js';
import type { Quantity, Unit } from '../../units/index.js';
import { compareDecimals, type Decimal, ofDecimal, zero } from '../../units/internal.js';
import type { StudyFailure } from '../errors.js';
import { ready } from './one-input.js';
import type { AssessAt, Stretch } from './stretches-of-one-input.js';
import { figureAt, zerosOf } from './zeros-of-a-working.js';

/** The ends between which every check holds, and what sets them; an end set by no check is the end of the input's range. */
export interface HoldingInterval {
  /** The key of the spec that was moved. */
  readonly path: string;
  /** The least value at which every check holds, in the unit of the key. */
  readonly from: Quantity<Unit>;
  /** The greatest value at which every check holds, in the unit of the key. */
  readonly to: Quantity<Unit>;
  /**
   * The checks that are used up at an end, or over beyond it; `no answer beyond` where the spec would not be answered;
   * `what is checked changes` where it would, but each figure by another rule, as below the first printed pressure of a tire.
   */
  readonly setBy: { readonly from: readonly string[]; readonly to: readonly string[] };
  /** Whether all checks hold at the end itself: they may just above a weight of zero, where zero itself has no answer. */
  readonly included: { readonly from: boolean; readonly to: boolean };
  /** Exact where the working is linear in the input; otherwise bracketed. */
  readonly how: 'exact' | 'bracketed';
  /** What is to be said of the input that was moved: axles under a tongue load that was weighed. */
  readonly notes: readonly Note[];
}

/** A figure that is zero or more when the answer is good. */
interface Reserve {
  readonly what: string;
  readonly node: Node;
}

/** Every reserve of an assessment, the loads that must press down among them. */
const allWithin = (assessment: Assessment | undefined): boolean =>
  assessment !== undefined && assessment.verdict !== 'over';

const reservesOf = ({ checks, partChecks, uplift }: Assessment): readonly Reserve[] => [
  ...[...checks, ...partChecks].map(({ what, reserve }) => ({ what, node: reserve.why })),
  ...uplift.mustPress.map(({ what, load }) => ({ what: `${what} presses down`, node: load.why })),
];

interface Piece {
  readonly from: Decimal;
  readonly to: Decimal;
  readonly over: readonly string[];
  readonly how: 'exact' | 'bracketed';
}

/** A stretch cut at the zeros of its reserves, each piece with the reserves that are negative in it. */
function piecesOf({ from, to, assessment, whyNone }: Stretch, path: string): readonly Piece[] {
  if (assessment === undefined) return [{ from, to, over: [whyNone], how: 'exact' }];
  const reserves = reservesOf(assessment);
  const zeros = reserves.map(({ node }) => zerosOf(node, undefined, path, from, to));
  const how = zeros.every((each) => each.how === 'exact') ? 'exact' : 'bracketed';
  const cuts = [from, ...zeros.flatMap(({ at }) => at), to].sort((a, b) => a.comparedTo(b));
  return cuts.slice(1).flatMap((end, i) => {
    const start = cuts[i] as Decimal;
    const middle = start.plus(end).div(2);
    return end.gt(start)
      ? [
          {
            from: start,
            to: end,
            over: reserves.filter(({ node }) => figureAt(node, path, middle).isNegative()).map(({ what }) => what),
            how,
          },
        ]
      : [];
  });
}

/** Neighbours that hold on both sides of a place, and at it, are one. */
function joined(pieces: readonly Piece[], at: AssessAt): readonly Piece[] {
  return pieces.reduce<Piece[]>((list, piece) => {
    const last = list.at(-1);
    const one = last !== undefined && last.over.length === 0 && piece.over.length === 0 && allWithin(at(piece.from));
    if (one) list[list.length - 1] = { ...last, to: piece.to, how: last.how === 'exact' ? piece.how : last.how };
    else list.push(piece);
    return list;
  }, []);
}

/**
 * Between which values of this input do all checks hold?
 *
 * @returns the interval around the spec's own value, or the nearest one that holds; Left `NoSolution` when there is none
 * @example orThrow(holdingInterval(spec, 'cargo.0.weight')).setBy.to[0] // tongue against ball mount tongue
 * @source the working of `assess`, solved for one of its inputs
 */
export function holdingInterval(base: SpecInput, path: string): Either<StudyFailure, HoldingInterval> {
  const given = ready(base, path);
  if (isLeft(given)) return given;
  const { at, own, unit, stretches, notes } = given.right;
  const pieces = joined(
    stretches.flatMap((stretch) => piecesOf(stretch, path)),
    at,
  );
  const far = ({ from, to }: Piece): Decimal => {
    if (own.lt(from)) return from.minus(own);
    return own.gt(to) ? own.minus(to) : zero;
  };
  const [best] = pieces.filter(({ over }) => over.length === 0).sort((a, b) => far(a).comparedTo(far(b)));
  if (best === undefined)
    return left({
      chapter: 'study',
      tag: 'NoSolution',
      path,
      what: 'every reserve',
      found: 'no value at which all checks hold',
    });
  const i = pieces.indexOf(best);
  const beyond = (piece: Piece | undefined, end: Decimal): readonly string[] =>
    piece === undefined || compareDecimals(piece.from, end) * compareDecimals(piece.to, end) > 0 ? [] : piece.over;
  return right({
    path,
    from: ofDecimal(best.from, unit),
    to: ofDecimal(best.to, unit),
    how: best.how,
    notes,
    included: { from: allWithin(at(best.from)), to: allWithin(at(best.to)) },
    setBy: { from: beyond(pieces[i - 1], best.from), to: beyond(pieces[i + 1], best.to) },
  });
}
