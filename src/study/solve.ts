/** The value of one input at which a reserve is used up, and the interval of it in which every check holds. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Assessment, assess, leavesOf } from '../assessment/index.js';
import type { TrailerError } from '../errors.js';
import type { Node } from '../trace/index.js';
import type { Quantity, Unit } from '../units/index.js';
import { compareDecimals, type Decimal, editDistance, nearestKeys, ofDecimal, zero } from '../units/internal.js';
import { type AssessAt, assessAt, type Cell, cellsOf } from './cells.js';
import { bracketWidth, figureAt, zerosOf } from './zeros.js';

export { bracketWidth };

export interface Solution {
  readonly path: string;
  /** Where the reserve is zero. */
  readonly value: Quantity<Unit>;
  /** Exact where the working is linear in the input; otherwise bracketed to `bracketWidth`. */
  readonly how: 'exact' | 'bracketed';
}

/** The ends between which every check holds, and what sets them; an end set by nothing is the most the input may be. */
export interface HoldingInterval {
  readonly path: string;
  readonly from: Quantity<Unit>;
  readonly to: Quantity<Unit>;
  /**
   * The checks that are used up at an end, or over beyond it; `no answer beyond` where the spec would not be answered;
   * `what is checked changes` where it would, but each figure by another rule, as below the first printed pressure of a tire.
   */
  readonly setBy: { readonly from: readonly string[]; readonly to: readonly string[] };
  /** Whether all checks hold at the end itself: just above a weight of nothing they may, and at nothing there is no answer. */
  readonly included: { readonly from: boolean; readonly to: boolean };
  readonly how: 'exact' | 'bracketed';
}

/** A figure that is zero or more when the answer is good. */
interface Reserve {
  readonly what: string;
  readonly node: Node;
}

/** Every reserve of an assessment, the loads that must press down among them. */
const reservesOf = ({ checks, partChecks, mustPress }: Assessment): readonly Reserve[] => [
  ...[...checks, ...partChecks].map(({ what, reserve }) => ({ what, node: reserve.why })),
  ...mustPress.map(({ what, load }) => ({ what: `${what} presses down`, node: load.why })),
];

interface Ready {
  readonly at: AssessAt;
  readonly own: Decimal;
  readonly unit: Unit;
  readonly assessment: Assessment;
  readonly cells: readonly Cell[];
}

function ready(base: unknown, path: string): Either<TrailerError, Ready> {
  const assessed = assess(base);
  if (isLeft(assessed)) return assessed;
  const leaves = leavesOf(assessed.right.spec);
  const leaf = leaves.get(path);
  if (leaf?.between === undefined)
    return left({
      chapter: 'study',
      tag: 'UnknownPath',
      path,
      nearest: nearestKeys([...leaves.keys()], (other) => editDistance(path, other)),
    });
  const { unit, value } = leaf.value;
  const at = assessAt(base, path, unit, leaf.basis);
  return right({ at, own: value, unit, assessment: assessed.right, cells: cellsOf(at, path, ...leaf.between) });
}

/**
 * At which value of this input is this reserve used up?
 *
 * Linear workings are solved exactly: `x = -r(0) / slope`. Others are scanned over what the input may be and the sign change
 * nearest to the spec's own value is bracketed. Where the program goes another way along the input, each stretch is solved by
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
  base: unknown,
  path: string,
  choose: (assessment: Assessment) => { readonly why: Node } | undefined,
): Either<TrailerError, Solution> {
  const given = ready(base, path);
  if (isLeft(given)) return given;
  const { assessment, own, unit, cells } = given.right;
  const reserve = choose(assessment);
  const none = (found: string): Either<TrailerError, never> =>
    left({ chapter: 'study', tag: 'NoSolution', path, what: reserve?.why.symbol ?? 'the reserve', found });
  if (reserve === undefined) return none('no such reserve in this assessment');
  const zeros = cells.flatMap((cell) => {
    const node = cell.assessment === undefined ? undefined : choose(cell.assessment)?.why;
    if (node === undefined) return [];
    const { at, how } = zerosOf(node, undefined, path, cell.from, cell.to);
    return at.map((x) => ({ x, how }));
  });
  const [nearest] = zeros.sort((a, b) => a.x.minus(own).abs().comparedTo(b.x.minus(own).abs()));
  return nearest === undefined
    ? none('the same sign everywhere')
    : right({ path, value: ofDecimal(nearest.x, unit), how: nearest.how });
}

interface Piece {
  readonly from: Decimal;
  readonly to: Decimal;
  readonly over: readonly string[];
  readonly how: 'exact' | 'bracketed';
}

/** A cell cut at the zeros of its reserves, each piece with the reserves that are negative in it. */
function piecesOf({ from, to, assessment, unspoken }: Cell, path: string): readonly Piece[] {
  if (assessment === undefined) return [{ from, to, over: [unspoken], how: 'exact' }];
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
    const one =
      last !== undefined && last.over.length === 0 && piece.over.length === 0 && at(piece.from)?.holds === true;
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
export function holdingInterval(base: unknown, path: string): Either<TrailerError, HoldingInterval> {
  const given = ready(base, path);
  if (isLeft(given)) return given;
  const { at, own, unit, cells } = given.right;
  const pieces = joined(
    cells.flatMap((cell) => piecesOf(cell, path)),
    at,
  );
  const far = ({ from, to }: Piece): Decimal => (own.lt(from) ? from.minus(own) : own.gt(to) ? own.minus(to) : zero);
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
    included: { from: at(best.from)?.holds === true, to: at(best.to)?.holds === true },
    setBy: { from: beyond(pieces[i - 1], best.from), to: beyond(pieces[i + 1], best.to) },
  });
}
