import { describe, expect, it } from 'vitest';
import { assessJson } from '../../src/assessment/index.js';
import {
  arcSine,
  arcTangent,
  constant,
  cosine,
  type Derived,
  derivatives,
  fromTable,
  given,
  greatestOf,
  leastOf,
  power,
  product,
  quotient,
  rounded,
  sine,
  slopesText,
  squareRoot,
  statics,
  sum,
  tangent,
} from '../../src/trace/index.js';
import { degree, inch, inch2, lb, quantity, ratio } from '../../src/units/index.js';
import { rightOf } from '../helpers/either.js';
import { changed, tiltDeck } from '../helpers/specs.js';
import { proveDerivatives } from '../proofs/derivatives.js';

describe('derivatives', () => {
  it('are exact over random specs: forward in fractions, and by central differences of the replay', () => {
    const { figures, against } = proveDerivatives(400, 16);
    expect(against).toEqual([]);
    expect(figures['exact in fractions']).toBeGreaterThan(4000);
    expect(figures['by central differences']).toBeGreaterThan(4000);
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
  it('tells no tie where there is none, and four decimals of a slope', () => {
    const c = given('c', lb(12));
    expect(slopesText(derivatives(greatestOf('most', [a, c])))).toBe('c: 1 lb/lb');
    expect(slopesText(derivatives(quotient('third', c, constant(ratio(3)))))).toBe('c: 0.3333 lb/lb');
  });
  it('leaves out steps that do not reach the answer: roundings and ties of a part that does not govern', () => {
    const far = rounded('far', sum(null, [greatestOf('tie', [a, b]), given('c', lb(12))]), lb(5), 'up');
    const answer = derivatives(leastOf('least', [given('near', lb(1)), far]));
    expect(answer.rounded).toEqual([]);
    expect(answer.taken.map(({ step }) => step.symbol)).toEqual(['least']);
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
    ['tangent', derivatives(tangent('y', given('x', degree(60)))), (4 * Math.PI) / 180],
    ['arc sine', derivatives(arcSine('y', given('x', ratio('0.6')))), 180 / Math.PI / 0.8],
    ['arc tangent', derivatives(arcTangent('y', given('x', ratio(2)))), 180 / Math.PI / 5],
    ['root', derivatives(squareRoot('y', given('x', inch2(16)))), 1 / 8],
    ['power', derivatives(power('y', given('x', ratio(4)), constant(ratio('1.5')))), 3],
    ['exponent', derivatives(power('y', constant(ratio(4)), given('x', ratio('1.5')))), 8 * Math.log(4)],
    ['power of zero', derivatives(power('y', given('x', ratio(0)), constant(ratio(1)))), 1],
  ])('%s', (_, { slopes }, slope) => expect(slopes[0]?.slope.toNumber()).toBeCloseTo(slope, 12));
  it('has no slope by an exponent of a base of zero, nor by a base to the power of zero', () => {
    expect(derivatives(power('y', constant(ratio(0)), given('x', ratio(2)))).slopes).toEqual([]);
    expect(derivatives(power('y', given('x', ratio(3)), constant(ratio(0)))).slopes).toEqual([]);
  });
  it('names an input by its path, or by its name where it has none', () => {
    const load = fromTable('tire load', lb(3), { table: 'tires', key: 'D', source: statics });
    const whole = sum('whole', [given('trailer', lb(1), 'scale', 'trailer.weight'), given('machine', lb(2)), load]);
    expect(slopesText(derivatives(whole))).toBe('trailer.weight: 1 lb/lb\nmachine: 1 lb/lb\ntire load: 1 lb/lb');
    expect(slopesText(derivatives(sum('whole', [leastOf([a, b]), load])))).toContain('tie in a step: a, b');
  });
  it('of a product of inputs with a unit over another has that unit in brackets', () => {
    const rate = given('rate', quantity(3, 'lb/in'), 'stated', 'rate');
    expect(derivatives(product('load', rate, given('way', inch(2)))).slopes.map(({ unit }) => unit)).toEqual([
      'lb/(lb/in)',
      'lb/in',
    ]);
  });
  it('writes the unit of each slope', () => {
    const length = given('x', inch(3), 'stated', 'x');
    expect(derivatives(sine('y', given('x', degree(60)))).slopes[0]?.unit).toBe('1/deg');
    expect(derivatives(product('y', length, given('k', ratio(2)))).slopes.map(({ unit }) => unit)).toEqual([
      'in/in',
      'in',
    ]);
  });
});
