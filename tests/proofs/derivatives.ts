/** Slopes of workings: forward differentiation in exact fractions and central differences of the replay give the same. */
import fc from 'fast-check';
import { isRight } from 'fp-ts/lib/Either.js';
import { assessJson } from '../../src/assessment/index.js';
import { type Derived, derivatives, type Node, type Reading, readNode, replay } from '../../src/trace/index.js';
import type { Unit } from '../../src/units/index.js';
import { Decimal } from '../../src/units/internal.js';
import { type Fraction, fractionReading as f, fraction, NotRational, relativeGap } from '../helpers/fractions.js';
import { spec as randomSpec } from '../study/random-specs.js';
import type { Proof } from './proof.js';

/** A figure and its slope, both exact: carried forward through every step, where the code goes backward. */
interface Dual {
  readonly at: Fraction;
  readonly slope: Fraction;
}
const none = fraction(0n);
const irrational = (): never => {
  throw new NotRational('not a rational step');
};
const forward: Reading<Dual> = {
  leaf: (value) => ({ at: f.leaf(value), slope: none }),
  sum: (terms) => ({ at: f.sum(terms.map(({ at }) => at)), slope: f.sum(terms.map(({ slope }) => slope)) }),
  difference: (a, b) => ({ at: f.difference(a.at, b.at), slope: f.difference(a.slope, b.slope) }),
  product: (a, b) => ({
    at: f.product(a.at, b.at),
    slope: f.sum([f.product(a.slope, b.at), f.product(a.at, b.slope)]),
  }),
  quotient: (a, b) => ({
    at: f.quotient(a.at, b.at),
    slope: f.quotient(f.difference(f.product(a.slope, b.at), f.product(a.at, b.slope)), f.product(b.at, b.at)),
  }),
  least: (terms) => terms.reduce((best, term) => (term.at.lt(best.at) ? term : best)),
  greatest: (terms) => terms.reduce((best, term) => (term.at.gt(best.at) ? term : best)),
  convert: (a, factor) => ({ at: f.convert(a.at, factor), slope: f.convert(a.slope, factor) }),
  round: irrational,
  squareRoot: irrational,
  power: irrational,
  sine: irrational,
  cosine: irrational,
  tangent: irrational,
  arcSine: irrational,
  arcTangent: irrational,
};

/** The slope by one leaf in fractions; nothing where the working leaves them. */
function exactSlope(answer: Derived<Unit>, leaf: Node): Fraction | undefined {
  const path = leaf.kind === 'given' ? leaf.path : undefined;
  const isIt = (node: Node): boolean =>
    node === leaf || (node.kind === 'given' && path !== undefined && node.path === path);
  const seed = (node: Node): Dual | undefined =>
    isIt(node) ? { at: f.leaf(node.value.value), slope: fraction(1n) } : undefined;
  try {
    return readNode(answer.why, forward, new Map(), seed).slope;
  } catch (problem) {
    if (problem instanceof NotRational) return undefined;
    throw problem;
  }
}

const step = new Decimal('1e-10');

/** How far a slope misses the central difference, as a share of itself or of 1. */
function missOf(answer: Derived<Unit>, path: string, at: Decimal, slope: Decimal): number {
  const replayed = (by: Decimal): Decimal => replay(answer, new Map([[path, at.plus(by)]])).value;
  const central = replayed(step).minus(replayed(step.negated())).div(step.times(2));
  return central.minus(slope).abs().toNumber() / Math.max(1, slope.abs().toNumber());
}

const reservesOf = (input: unknown): readonly Derived<Unit>[] => {
  const assessed = assessJson(input);
  return isRight(assessed)
    ? [...assessed.right.checks, ...assessed.right.partChecks].map((check) => check.reserve)
    : [];
};

interface Found {
  exact: number;
  central: number;
  readonly against: string[];
}

/** Every slope of one reserve, both ways. */
function askSlopes(reserve: Derived<Unit>, found: Found, told: string): void {
  const { slopes, taken, rounded } = derivatives(reserve);
  const isSmooth = rounded.length === 0 && taken.every(({ tied }) => tied.length === 0);
  for (const { leaf, slope } of slopes) {
    const exact = exactSlope(reserve, leaf);
    if (exact !== undefined) {
      found.exact += 1;
      if (Math.abs(relativeGap(slope.toFixed(), exact)) >= 1e-24)
        found.against.push(`${leaf.symbol}: ${slope} in fractions: ${told}`);
    }
    if (!isSmooth || leaf.kind !== 'given' || leaf.path === undefined) continue;
    found.central += 1;
    if (missOf(reserve, leaf.path, leaf.value.value, slope) >= 1e-9)
      found.against.push(`${leaf.path}: ${slope} by differences: ${told}`);
  }
}

/** All reserves of `specs` random specs, leaf by leaf. */
export function proveDerivatives(specs: number, seed: number): Proof {
  const found: Found = { exact: 0, central: 0, against: [] };
  let reserves = 0;
  for (const input of fc.sample(randomSpec, { numRuns: specs, seed }))
    for (const reserve of reservesOf(input)) {
      reserves += 1;
      askSlopes(reserve, found, JSON.stringify(input));
    }
  const { exact, central, against } = found;
  return { figures: { specs, reserves, 'exact in fractions': exact, 'by central differences': central }, against };
}
