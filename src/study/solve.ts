/** The value of one input at which a reserve is used up, and the interval of it in which every check holds. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { compareDecimals, Decimal, ofDecimal, zero } from '../units/internal.js';
import { assess, type Assessment } from '../assessment/index.js';
import type { TrailerError } from '../errors.js';
import { decimalReading, editDistance, type Given, nearestKeys, type Node, readNode } from '../trace/index.js';
import type { Quantity, Unit } from '../units/index.js';
import { leavesOf } from './spec-paths.js';
import { lineOf } from './linear.js';

/** How close a bracketed solution is, in the unit of the input. */
export const bracketWidth = '0.000001';

export interface Solution {
  readonly path: string;
  /** Where the reserve is zero. */
  readonly value: Quantity<Unit>;
  /** Exact where the working is linear in the input; otherwise bracketed to `bracketWidth`. */
  readonly how: 'exact' | 'bracketed';
}

/** The ends between which every check holds, and the checks that set them; an open end is the most the input may be. */
export interface HoldingInterval {
  readonly path: string;
  readonly from: Quantity<Unit>;
  readonly to: Quantity<Unit>;
  readonly setBy: { readonly from: readonly string[]; readonly to: readonly string[] };
  readonly how: 'exact' | 'bracketed';
}

/** A figure that is zero or more when the answer is good. */
export interface Reserve {
  readonly what: string;
  readonly node: Node;
}

/** Every reserve of an assessment, the tongue that must press down among them. */
export const reservesOf = ({ checks, partChecks, weighed }: Assessment): readonly Reserve[] => [
  ...[...checks, ...partChecks].map(({ what, reserve }) => ({ what, node: reserve.why })),
  ...(weighed.balance ? [{ what: 'tongue presses down', node: weighed.balance.tongue.why }] : []),
];

const valueAt = (node: Node, path: string, x: Decimal): Decimal =>
  readNode(node, decimalReading, new Map(), (leaf) => (leaf.kind === 'given' && leaf.path === path ? x : undefined));

/** Zeros between two ends: the line's own when linear, otherwise wherever the sign changes over a scan of 200 steps. */
function zerosOf(node: Node, path: string, low: Decimal, high: Decimal): { at: readonly Decimal[]; how: 'exact' | 'bracketed' } {
  const line = lineOf(node, path);
  if (line !== undefined) {
    if (line.slope.isZero()) return { at: [], how: 'exact' };
    const at = line.at.neg().div(line.slope);
    return { at: at.lt(low) || at.gt(high) ? [] : [at], how: 'exact' };
  }
  const steps = 200;
  const places = Array.from({ length: steps + 1 }, (_, i) => low.plus(high.minus(low).times(i).div(steps)));
  const found: Decimal[] = [];
  for (let i = 0; i < steps; i += 1) {
    let [a, b] = [places[i] as Decimal, places[i + 1] as Decimal];
    const sign = valueAt(node, path, a).comparedTo(zero);
    if (sign === valueAt(node, path, b).comparedTo(zero)) continue;
    while (b.minus(a).gt(bracketWidth)) {
      const middle = a.plus(b).div(2);
      if (valueAt(node, path, middle).comparedTo(zero) === sign) a = middle; else b = middle;
    }
    found.push(sign > 0 ? a : b);
  }
  return { at: found, how: 'bracketed' };
}

interface Ready { readonly assessment: Assessment; readonly leaf: Given; readonly low: Decimal; readonly high: Decimal }

function ready(base: unknown, path: string): Either<TrailerError, Ready> {
  const assessed = assess(base);
  if (isLeft(assessed)) return assessed;
  const leaves = leavesOf(assessed.right.spec);
  const leaf = leaves.get(path);
  if (leaf?.between === undefined) return left({ chapter: 'study', tag: 'UnknownPath', path, nearest: nearestKeys([...leaves.keys()], (other) => editDistance(path, other)) });
  return right({ assessment: assessed.right, leaf, low: leaf.between[0], high: leaf.between[1] });
}

/**
 * At which value of this input is this reserve used up?
 *
 * Linear workings are solved exactly: `x = -r(0) / slope`. Others are scanned over what the input may be and the sign change
 * nearest to the spec's own value is bracketed.
 *
 * @param base a spec as JSON
 * @param path the input, such as `cargo.0.weight`
 * @param choose picks the reserve from the assessment
 * @returns Left `UnknownPath`, or `NoSolution` when the reserve is nowhere zero
 * @example orThrow(solveFor(spec, 'cargo.0.weight', (a) => a.checks[0].reserve)).value // 10,350 lb
 * @source the working of `assess`, solved for one of its inputs
 */
export function solveFor(base: unknown, path: string, choose: (assessment: Assessment) => { readonly why: Node } | undefined): Either<TrailerError, Solution> {
  const given = ready(base, path);
  if (isLeft(given)) return given;
  const { assessment, leaf, low, high } = given.right;
  const reserve = choose(assessment);
  const none = (found: string): Either<TrailerError, never> => left({ chapter: 'study', tag: 'NoSolution', path, what: reserve?.why.symbol ?? 'the reserve', found });
  if (reserve === undefined) return none('no such reserve in this assessment');
  const { at, how } = zerosOf(reserve.why, path, low, high);
  const own = leaf.value.value;
  const [nearest] = [...at].sort((a, b) => a.minus(own).abs().comparedTo(b.minus(own).abs()));
  return nearest === undefined ? none('the same sign everywhere') : right({ path, value: ofDecimal(nearest, leaf.value.unit), how });
}

/**
 * Between which values of this input do all checks hold?
 *
 * @returns the interval around the spec's own value, or the nearest one that holds; Left `NoSolution` when there is none
 * @example orThrow(holdingInterval(spec, 'cargo.0.weight')).setBy.to[0] // gross against GVWR
 * @source the working of `assess`, solved for one of its inputs
 */
export function holdingInterval(base: unknown, path: string): Either<TrailerError, HoldingInterval> {
  const given = ready(base, path);
  if (isLeft(given)) return given;
  const { assessment, leaf, low, high } = given.right;
  const reserves = reservesOf(assessment);
  const zeros = reserves.map(({ what, node }) => ({ what, ...zerosOf(node, path, low, high) }));
  const cuts = [low, ...zeros.flatMap(({ at }) => at), high].sort((a, b) => a.comparedTo(b));
  const holdsAt = (x: Decimal): boolean => reserves.every(({ node }) => valueAt(node, path, x).gte(0));
  const pieces = cuts.slice(1).map((to, i) => ({ from: cuts[i] as Decimal, to })).filter(({ from, to }) => to.gt(from) && holdsAt(from.plus(to).div(2)));
  const own = leaf.value.value;
  const far = ({ from, to }: { from: Decimal; to: Decimal }): Decimal => (own.lt(from) ? from.minus(own) : own.gt(to) ? own.minus(to) : zero);
  const [best] = pieces.sort((a, b) => far(a).comparedTo(far(b)));
  if (best === undefined) return left({ chapter: 'study', tag: 'NoSolution', path, what: 'every reserve', found: 'no value at which all checks hold' });
  const names = (end: Decimal): readonly string[] => zeros.filter(({ at }) => at.some((x) => compareDecimals(x, end) === 0)).map(({ what }) => what);
  return right({
    path, from: ofDecimal(best.from, leaf.value.unit), to: ofDecimal(best.to, leaf.value.unit),
    setBy: { from: names(best.from), to: names(best.to) }, how: zeros.every(({ how }) => how === 'exact') ? 'exact' : 'bracketed',
  });
}
