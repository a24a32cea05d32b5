/** Slopes of a working: against forward differentiation in exact fractions, central differences, and changed specs. */
import fc from 'fast-check';
import { isRight } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { assessJson } from '../../src/assessment/index.js';
import {
  arcSine,
  constant,
  cosine,
  type Derived,
  derivatives,
  given,
  greatestOf,
  leastOf,
  type Node,
  power,
  product,
  type Reading,
  readNode,
  replay,
  rounded,
  sine,
  slopesText,
  squareRoot,
  sum,
  tangent,
} from '../../src/trace/index.js';
import { degree, inch, inch2, lb, ratio, type Unit } from '../../src/units/index.js';
import { Decimal } from '../../src/units/internal.js';
import { rightOf } from '../helpers/either.js';
import { type Fraction, fractionReading as f, fraction, NotRational, relativeGap } from '../helpers/fractions.js';
import { changed, tiltDeck } from '../helpers/specs.js';
import { spec as randomSpec } from '../study/random-specs.js';

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
  least: (terms) => terms.reduce((best, term) => (f.difference(term.at, best.at).top < 0n ? term : best)),
  greatest: (terms) => terms.reduce((best, term) => (f.difference(term.at, best.at).top > 0n ? term : best)),
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

const reservesOf = (input: unknown): readonly Derived<Unit>[] => {
  const assessed = assessJson(input);
  return isRight(assessed)
    ? [...assessed.right.checks, ...assessed.right.partChecks].map((check) => check.reserve)
    : [];
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

/** How many random specs; `LONG=1` asks thousands. */
const specs = process.env.LONG === undefined ? 400 : 10_000;

describe('derivatives', () => {
  it('are exact: forward differentiation in fractions gives the same, over random specs', () => {
    let asked = 0;
    for (const input of fc.sample(randomSpec, { numRuns: specs, seed: 16 }))
      for (const reserve of reservesOf(input))
        for (const { leaf, slope } of derivatives(reserve).slopes) {
          const exact = exactSlope(reserve, leaf);
          if (exact === undefined) continue;
          expect(Math.abs(relativeGap(slope.toFixed(), exact)), leaf.symbol).toBeLessThan(1e-24);
          asked += 1;
        }
    expect(asked).toBeGreaterThan(specs * 10);
  });

  it('agree with central differences of the replay, leaf by leaf', () => {
    const step = new Decimal('1e-10');
    let asked = 0;
    for (const input of fc.sample(randomSpec, { numRuns: specs, seed: 17 }))
      for (const reserve of reservesOf(input)) {
        const { slopes, taken, rounded: roundings } = derivatives(reserve);
        if (roundings.length > 0 || taken.some(({ tied }) => tied.length > 0)) continue;
        for (const { leaf, slope } of slopes) {
          if (leaf.kind !== 'given' || leaf.path === undefined) continue;
          const at = (by: Decimal): Decimal =>
            replay(reserve, new Map([[leaf.path as string, leaf.value.value.plus(by)]])).value;
          const central = at(step).minus(at(step.negated())).div(step.times(2));
          const gap = central.minus(slope).abs().toNumber();
          expect(gap / Math.max(1, slope.abs().toNumber()), leaf.path).toBeLessThan(1e-9);
          asked += 1;
        }
      }
    expect(asked).toBeGreaterThan(specs * 10);
  });

  it('tell what an inch and a pound do to the tongue of the example, as two assessments do', () => {
    const tongueOf = (input: unknown): Derived<'lb'> =>
      rightOf(assessJson(input)).checks.find(({ what }) => what.startsWith('tongue against'))!.load;
    const { slopes } = derivatives(tongueOf(tiltDeck()));
    const slopeBy = (path: string) => slopes.find(({ leaf }) => leaf.kind === 'given' && leaf.path === path)!;
    const between = (path: string, low: string, high: string): number =>
      tongueOf(changed(tiltDeck(), path, high))
        .value.value.minus(tongueOf(changed(tiltDeck(), path, low)).value.value)
        .toNumber() / 2;
    expect(slopeBy('cargo.0.front').unit).toBe('lb/in');
    expect(slopeBy('cargo.0.front').slope.toNumber()).toBeCloseTo(between('cargo.0.front', '121 in', '123 in'), 8);
    expect(slopeBy('cargo.0.front').slope.toFixed(1)).toBe('-44.1');
    expect(slopeBy('cargo.0.weight').unit).toBe('lb/lb');
    expect(slopeBy('cargo.0.weight').slope.toNumber()).toBeCloseTo(
      between('cargo.0.weight', '8,999 lb', '9,001 lb'),
      8,
    );
  });
});

describe('pieces, ties and steps without a slope', () => {
  const a = given('a', lb(10), 'stated', 'a');
  const b = given('b', lb(10), 'stated', 'b');
  it('takes the piece that governs', () => {
    const { slopes, taken } = derivatives(greatestOf('most', [a, given('c', lb(12), 'stated', 'c')]));
    expect(slopes.map(({ leaf }) => leaf.symbol)).toEqual(['c']);
    expect(taken.map(({ piece, tied }) => [piece.symbol, tied.length])).toEqual([['c', 0]]);
  });
  it('marks a tie', () => {
    const answer = derivatives(leastOf('least', [a, b]));
    expect(answer.taken[0]?.tied.map(({ symbol }) => symbol)).toEqual(['a', 'b']);
    expect(slopesText(answer)).toBe('a: 1 lb/lb\ntie in least: a, b');
  });
  it('says where it rounded, and takes the slope before', () => {
    const answer = derivatives(rounded('printed', product(null, a, constant(ratio(3))), lb(5), 'nearest'));
    expect(answer.rounded).toHaveLength(1);
    expect(answer.slopes[0]?.slope.toFixed()).toBe('3');
  });
  it('adds up an input that comes in twice under one path', () => {
    expect(derivatives(sum('twice', [a, given('again', lb(10), 'stated', 'a')])).slopes[0]?.slope.toFixed()).toBe('2');
  });
  it('names an input at which there is no slope', () => {
    const answer = derivatives(squareRoot('side', given('area', inch2(0), 'stated', 'area')));
    expect(answer.unbounded.map(({ symbol }) => symbol)).toEqual(['area']);
    expect(answer.slopes).toEqual([]);
  });
  it('leaves out what does not move the answer', () => {
    expect(derivatives(product('none', a, given('zero', ratio(0)))).slopes.map(({ leaf }) => leaf.symbol)).toEqual([
      'zero',
    ]);
  });
  // Derivatives of the elementary functions: any table of them.
  it.each([
    ['sine', derivatives(sine('y', given('x', degree(60)))), (Math.cos(Math.PI / 3) * Math.PI) / 180],
    ['cosine', derivatives(cosine('y', given('x', degree(30)))), (-Math.sin(Math.PI / 6) * Math.PI) / 180],
    ['tangent', derivatives(tangent('y', given('x', degree(45)))), (2 * Math.PI) / 180],
    ['arc sine', derivatives(arcSine('y', given('x', ratio('0.6')))), 180 / Math.PI / 0.8],
    ['root', derivatives(squareRoot('y', given('x', inch2(16)))), 1 / 8],
    ['power', derivatives(power('y', given('x', ratio(4)), constant(ratio('1.5')))), 3],
  ])('%s', (_, { slopes }, slope) => expect(slopes[0]?.slope.toNumber()).toBeCloseTo(slope, 12));
  it('writes the unit of each slope', () => {
    const length = given('x', inch(3), 'stated', 'x');
    expect(derivatives(sine('y', given('x', degree(60)))).slopes[0]?.unit).toBe('1/deg');
    expect(derivatives(product('y', length, given('k', ratio(2)))).slopes.map(({ unit }) => unit)).toEqual([
      'in/in',
      'in',
    ]);
  });
});
