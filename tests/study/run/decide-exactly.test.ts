/** Single rows that doubles cannot decide: what a block makes of loads, limits and reserves that are known exactly. */
import { describe, expect, it } from 'vitest';
import { checkLoad, rating, weight } from '../../../src/ratings/index.js';
import type { AnsweredBlock } from '../../../src/study/run/block.js';
import { breakTie, decideReserve, decideShares, judgeOnABound } from '../../../src/study/run/decide-exactly.js';
import { DecisionMemo } from '../../../src/study/run/decision-memo.js';
import { ExactRows } from '../../../src/study/run/exact-rows.js';
import { mark, verdictsFor } from '../../../src/study/run/row-marks.js';
import { guardShare } from '../../../src/study/tape/bounds.js';
import { difference, given, type Node } from '../../../src/trace/index.js';
import { lb } from '../../../src/units/index.js';

const limit = given('limit', lb(1000), 'stated', 'limit');
const load = (path: string) => given(path, lb(500), 'stated', path);

/** One row of loads against a limit of 1,000 lb each, exact to the digits written, and loads that must press down. */
function rowOf(loads: Readonly<Record<string, string>>, presses: Readonly<Record<string, string>> = {}): AnsweredBlock {
  const all = Object.entries({ ...loads, ...presses });
  const figures = new Map(all.map(([path, text]) => [path, lb(text).value]));
  const column = (path: string): number => all.findIndex(([each]) => each === path);
  const shares = Object.keys(loads).map((path) => ({
    named: [],
    check: checkLoad(rating('GVWR', limit), weight('gross', load(path))),
    at: { column: column(path) },
    times: 1 / 1000,
    plus: 0,
    line: undefined,
  }));
  const pressing = Object.keys(presses).map((path) => ({
    node: load(path).why,
    at: { column: column(path) },
    edge: 0.5,
    line: undefined,
  }));
  const varies = (node: Node): boolean => node.kind === 'computed' || (node.kind === 'given' && node.path !== 'limit');
  const verdicts = verdictsFor(1);
  verdicts.holds.fill(1);
  return {
    branch: { shares, pressing, ranked: shares.length } as unknown as AnsweredBlock['branch'],
    columns: all.map(([, text]) => Float64Array.of(Number(text))),
    rows: 1,
    verdicts,
    exact: new ExactRows(varies, () => figures, new DecisionMemo([...figures.keys()])),
  };
}

/** What is known of the row afterwards. */
function found(block: AnsweredBlock, ask: (block: AnsweredBlock) => void) {
  ask(block);
  const { holds, governs, marks, ties } = block.verdicts;
  return { holds: holds[0], governs: governs[0], exact: marks[0] === mark.exact, tied: ties.get(0) };
}
const within = { holds: 1, governs: 0, exact: true, tied: undefined };
/** So little over 1,000 lb that doubles do not tell. */
const hair = '1000.0000000000000000001';

describe('a row near a limit', () => {
  const decided = (...loads: readonly string[]) =>
    found(rowOf(Object.fromEntries(loads.map((text, i) => [`load ${i}`, text]))), (block) => decideShares(block, 0));
  it('is over by a load that is over by a hair, whichever it is', () => {
    expect(decided('1000')).toEqual(within);
    expect(decided(hair)).toEqual({ ...within, holds: 0 });
    expect(decided('999', hair, '1000')).toEqual({ ...within, holds: 0 });
    expect(decided('1000', '999.9999999999999999999')).toEqual(within);
  });
  it('is asked of shares within three guards of one, on either side; what is farther over is known already', () => {
    expect(decided(String(1000 * (1 + 2.9 * guardShare)))).toMatchObject({ holds: 0 });
    expect(decided(String(1000 * (1 + 3.1 * guardShare)))).toMatchObject({ holds: 1 });
  });
});

describe('a row that two shares tie on', () => {
  const broken = (...loads: readonly string[]) =>
    found(rowOf(Object.fromEntries(loads.map((text, i) => [`load ${i}`, text]))), (block) => breakTie(block, 0));
  it('is governed by the greatest, however little greater, and by all that are equal', () => {
    expect(broken('900', '900')).toEqual({ ...within, tied: [0, 1] });
    expect(broken('900', '900.0000000000000000001')).toEqual({ ...within, governs: 1 });
    expect(broken('900.0000000000000000001', '900')).toEqual(within);
    expect(broken('100', '900', '899.999', '900')).toEqual({ ...within, governs: 1, tied: [1, 3] });
    expect(broken('900', '900', '900.0000000000000000001', '900')).toEqual({ ...within, governs: 2 });
  });
  it('is asked of all within two guards of the greatest', () => {
    const [near, far] = [1.9, 2.1].map((times) => String(900 * (1 - times * guardShare)));
    const asked: string[] = [];
    const block = rowOf({ a: near as string, b: '900', c: far as string });
    const orderOfShares = (...[, a, b]: Parameters<ExactRows['orderOfShares']>) => {
      asked.push(`${a.load.why.symbol} ${b.load.why.symbol}`);
      return 0 as const;
    };
    breakTie({ ...block, exact: { orderOfShares } as unknown as ExactRows }, 0);
    expect(asked).toEqual(['b a']);
  });
});

describe('a reserve near zero', () => {
  const decided = (text: string) =>
    found(rowOf({ x: text }), (block) => decideReserve(block, difference('r', limit, load('x')).why, 0)).holds;
  it('is over below zero, by the sides of its difference or by its own figure', () => {
    expect([decided(hair), decided('1000'), decided('999.999')]).toEqual([0, 1, 1]);
    const alone = (text: string) => found(rowOf({ x: text }), (block) => decideReserve(block, load('x').why, 0)).holds;
    expect([alone('-0.0000000000000000001'), alone('0'), alone('0.1')]).toEqual([0, 1, 1]);
  });
});

describe('a row on the bound of a decision', () => {
  const judged = (loads: Readonly<Record<string, string>>, presses: Readonly<Record<string, string>> = {}) =>
    found(rowOf(loads, presses), (block) => judgeOnABound(block, 0));
  const plain = { ...within, exact: false };
  it('is asked every share again', () => {
    expect(judged({ a: '100', b: '900', c: '899' })).toEqual({ ...plain, governs: 1 });
    expect(judged({ a: '899', b: '100', c: '900' })).toEqual({ ...plain, governs: 2 });
    expect(judged({ a: '1001', b: '100' })).toEqual({ ...plain, holds: 0 });
    expect(judged({ a: '1000', b: '100' })).toEqual(within);
    expect(judged({ a: hair, b: '100' })).toEqual({ ...within, holds: 0 });
    expect(judged({ a: '900', b: '900.0000000000000000001' })).toEqual({ ...within, governs: 1 });
    expect(judged({ a: '900', b: '900' })).toEqual({ ...within, tied: [0, 1] });
  });
  it('is asked every load that must press down, in decimals within its edge', () => {
    expect(judged({}, { p: '0.6' })).toEqual(plain);
    expect(judged({}, { p: '0.5' })).toEqual(within);
    expect(judged({}, { p: '-0.4' })).toEqual({ ...within, holds: 0 });
    expect(judged({}, { p: '-0.5' })).toEqual({ ...within, holds: 0 });
    expect(judged({}, { p: '-0.6' })).toEqual({ ...plain, holds: 0 });
    expect(judged({ a: '100' }, { p: '5', q: '-5' })).toEqual({ ...plain, holds: 0 });
    expect(judged({ a: '100' }, { p: '0', q: '5' })).toEqual(within);
  });
  it('is left alone where its tape does not answer it', () => {
    for (const other of [mark.elsewhere, mark.otherWay]) {
      const block = rowOf({ a: hair, b: hair });
      block.verdicts.marks[0] = other;
      decideShares(block, 0);
      breakTie(block, 0);
      decideReserve(block, difference('r', limit, load('a')).why, 0);
      expect([block.verdicts.holds[0], block.verdicts.marks[0], block.verdicts.ties.size]).toEqual([1, other, 0]);
    }
  });
});

it('shares of one load that does not press are compared as loads times limits', () => {
  const { exact } = rowOf({ x: '-5' });
  const pressing = load('x');
  const of = (pounds: number) =>
    checkLoad(rating('GVWR', given('rated', lb(pounds), 'stated')), weight('gross', pressing));
  const [large, small] = [of(2000), of(1000)];
  // -5 / 2,000 is greater than -5 / 1,000.
  expect([exact.orderOfShares(0, large, small), exact.orderOfShares(0, small, large)]).toEqual([1, -1]);
});
