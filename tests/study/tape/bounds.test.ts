/** Decisions as bounds: what a figure inside them may rely on, asked of the comparison itself. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bandOf,
  byColumn,
  type DecisionBound,
  guardShare,
  interiorOf,
  onColumn,
  outcomeFor,
  rangeOf,
  sureBounds,
  tightened,
} from '../../../src/study/tape/bounds.js';
import { tapeOf } from '../../../src/study/tape/tape.js';
import {
  type Comparison,
  constant,
  type Decision,
  decide,
  difference,
  given,
  holdsFor,
  product,
  sum,
} from '../../../src/trace/index.js';
import { ratio } from '../../../src/units/index.js';
import { input } from './on-tape.js';

const comparisons = ['<', '<=', '>', '>=', '='] as const satisfies readonly Comparison[];
const comparison = fc.constantFrom(...comparisons);
const band = 0.5;

/** A decision of two figures that differ by `gap`, and its bound on a column of that difference. */
function recorded(gap: number, how: Comparison, times = 1, plus = 0, column = 0, turn = 0): DecisionBound {
  const decision = decide(given('a', ratio(10 + gap), 'stated', 'a'), how, constant(ratio(10)));
  const line = { column, times, plus };
  return { ...onColumn(interiorOf(decision, band), line), ...line, decision, turn, band };
}

describe('a decision on a column', () => {
  it('holds as recorded inside its ends, for either slope of its line', () => {
    const gaps = fc.integer({ min: -4, max: 4 }).map((n) => n / 4);
    fc.assert(
      fc.property(gaps, comparison, gaps, fc.constantFrom(1, -1, 2, -0.5), gaps, (was, how, is, times, plus) => {
        const bound = recorded(was, how, times, plus);
        const x = (is - plus) / times;
        const sameSide = was !== 0 && is !== 0 && was < 0 === is < 0;
        const holds = holdsFor(Math.sign(is) as -1 | 0 | 1, how);
        const asRecorded = holds === bound.decision.holds;
        // Inside the ends: on the recorded outcome, clear of the band; where both sides have one outcome, on the recorded side.
        const bothSides = holdsFor(-1, how) === holdsFor(1, how);
        const inside = Math.abs(is) >= band && asRecorded && (!bothSides || sameSide);
        expect(x >= bound.low && x <= bound.high, JSON.stringify({ was, how, is })).toBe(inside);
        const clear = asRecorded ? 'as recorded' : 'another branch';
        expect(outcomeFor(bound, x)).toBe(Math.abs(is) <= band ? 'too near to tell' : clear);
      }),
      { numRuns: 2000 },
    );
  });
  it('is never as recorded for a figure that is none', () => {
    for (const how of comparisons)
      for (const gap of [-1, 0, 1]) expect(outcomeFor(recorded(gap, how), Number.NaN)).toBe('another branch');
  });
  it('has a band of four guards of the size of its parts, and never none', () => {
    expect(guardShare).toBe(1e-9);
    expect(bandOf(1000)).toBeCloseTo(4e-6, 18);
    expect(bandOf(0)).toBeGreaterThan(0);
  });
});

describe('bounds of one column', () => {
  const none = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY] as const;
  it('are its highest low end and its lowest high end', () => {
    expect(
      tightened([
        { column: 3, low: 1, high: 9 },
        { column: 1, low: 0, high: 5 },
        { column: 3, low: 2, high: 8 },
        { column: 3, low: 0, high: 9 },
      ]),
    ).toEqual([
      { column: 3, low: 2, high: 8 },
      { column: 1, low: 0, high: 5 },
    ]);
  });
  it('name their decisions in order; those of a tie alone are left out of the sure ones', () => {
    const [less, tie, other] = [recorded(-1, '<'), recorded(-1, '=', 1, 0, 0, 1), recorded(1, '>=', 1, 0, 2, 2)];
    const bounds = byColumn([less, tie, other]);
    expect(bounds.map(({ column, decisions }) => [column, decisions])).toEqual([
      [0, [less, tie]],
      [2, [other]],
    ]);
    expect(sureBounds(byColumn([tie]))).toEqual([]);
    expect(sureBounds(bounds)).toEqual([
      { column: 0, low: none[0], high: -band },
      { column: 2, low: band, high: none[1] },
    ]);
  });
  it('give the range of a straight line', () => {
    const bounds = [{ column: 1, low: -2, high: 5 }];
    expect(rangeOf({ column: 1, times: 2, plus: 1 }, bounds)).toEqual([-3, 11]);
    expect(rangeOf({ column: 1, times: -2, plus: 1 }, bounds)).toEqual([-9, 5]);
    expect(rangeOf({ column: 2, times: -1, plus: 1 }, bounds)).toEqual(none);
  });
});

describe('decisions on a tape', () => {
  const [x, y] = [input('x', 3), input('y', 5)];
  const boundsOf = (decisions: readonly Decision[]): readonly (readonly [number, readonly number[]])[] =>
    tapeOf([x.why, y.why], ['x', 'y'], decisions).bounds.map(({ column, decisions: on }) => [
      column,
      on.map(({ turn }) => turn),
    ]);
  const twelve = constant(ratio(12));
  it('stand on the input that they rest on, at their turn; those of no input have no bound', () => {
    expect(
      boundsOf([
        decide(constant(ratio(1)), '<', twelve),
        decide(y, '<', twelve),
        decide(product(null, x, twelve), '>', twelve),
        decide(twelve, '>', sum(null, [y, twelve])),
      ]),
    ).toEqual([
      [1, [1, 3]],
      [0, [2]],
    ]);
  });
  it('count once where they are told twice, and not where their sides differ by a number', () => {
    expect(
      boundsOf([
        decide(x, '<', twelve),
        decide(sum(null, [x, y]), '<', sum(null, [y, twelve])),
        decide(x, '<=', twelve),
        decide(sum(null, [x, twelve]), '>', x),
      ]),
    ).toEqual([[0, [0, 2]]]);
  });
  it('share a column where their sides are straight lines of each other', () => {
    const gap = difference(null, x, y);
    const [[column] = [-1], ...others] = boundsOf([
      decide(gap, '<', twelve),
      decide(product(null, gap, constant(ratio(-2))), '<', twelve),
      decide(y, '>', x),
    ]);
    expect(others).toEqual([]);
    expect(column).toBe(2);
  });
  it('have a band as wide as the parts of both sides ask', () => {
    const [bound] = tapeOf([x.why], ['x'], [decide(sum(null, [x, twelve]), '<', constant(ratio(100)))]).bounds;
    // 12 and 100 are the numbers of the sides, 15 and 100 the sides as recorded.
    expect(bound?.decisions[0]?.band).toBeCloseTo(4e-9 * (12 + 100 + 15 + 100), 18);
  });
});
