/** Studies, samples and solving that come without types: a typed Left at its key, never an exception. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { assessJson } from '../../src/assessment/index.js';
import { describeError } from '../../src/errors.js';
import * as studies from '../../src/study/index.js';
import { rightOf } from '../helpers/either.js';

/** The functions as a program without types sees them. */
const untyped = studies as unknown as Readonly<Record<string, (...given: readonly unknown[]) => unknown>>;
const ask = (name: string, ...given: readonly unknown[]) =>
  (untyped[name] as (...all: readonly unknown[]) => unknown)(...given);
const base = {
  trailer: {
    hitch: 'ball',
    gvwr: '7,000 lb',
    axles: [{ at: '120 in', gawr: '7,000 lb' }],
    curb: { weight: '2,000 lb', tongue: '300 lb' },
  },
  cargo: [{ name: 'loader', weight: '3,000 lb', at: '110 in' }],
};
const plan = { base, vary: { 'cargo.0.weight': studies.levels('2,000 lb') }, design: { kind: 'grid' } };
const made = rightOf(studies.study(plan as never));
const goal = { of: 'payload', want: 'most' };
const reserve = ({ checks }: studies.Measure extends (a: infer A) => unknown ? A : never) => checks[0]?.reserve;

/** Function, what is given, where the error points. */
const refused: readonly (readonly [name: string, given: readonly unknown[], path: string])[] = [
  ...[undefined, null, 3, 'a text', [], () => 1].flatMap(
    (nothing) =>
      [
        ['study', [nothing], ''],
        ['sample', [nothing, 'gross weight'], ''],
        ['oneAtATime', [nothing, 'gross weight'], ''],
        ['chances', [nothing], ''],
        ['pareto', [nothing, [goal]], ''],
        ['holdingInterval', [nothing, 'cargo.0.weight'], ''],
        ['solveFor', [nothing, 'cargo.0.weight', reserve], ''],
        ['solveForTarget', [nothing, 'cargo.0.weight', reserve, '1 lb'], ''],
      ] as const,
  ),
  ['study', [{ ...plan, design: { kind: 'monte carlo', runs: {}, seed: 1 } }], 'design.runs'],
  ['study', [{ ...plan, measure: () => null }], 'measure'],
  ['study', [{ ...plan, measure: () => 'all' }], 'measure'],
  ['study', [{ ...plan, measure: () => ({ gross: 9000 }) }], 'measure.gross'],
  ['study', [{ ...plan, measure: () => [null] }], 'measure.0'],
  ['sample', [plan, 'gross weight', null], 'shares'],
  ['sample', [plan, 'gross weight', [null]], 'shares'],
  ['sample', [plan, {}], 'figure'],
  ['oneAtATime', [plan, null], 'figure'],
  ['chances', [{ ...plan, runs: null, seed: 1 }], 'design.runs'],
  ['chances', [{ ...plan, runs: 3, seed: {} }], 'design.seed'],
  ['pareto', [made, null], 'goals'],
  ['pareto', [made, [null]], 'goals.0'],
  ['pareto', [made, [{ of: 3, want: 'most' }]], 'goals.0.of'],
  ['pareto', [made, [goal], null], 'verdicts'],
  ['pareto', [{}, [goal]], 'study.figures'],
  ['holdingInterval', [base, null], 'path'],
  ['solveFor', [base, 3, reserve], 'path'],
  ['solveFor', [base, 'cargo.0.weight', null], 'choose'],
  ['solveFor', [base, 'cargo.0.weight', () => null], 'cargo.0.weight'],
  ['solveFor', [base, 'cargo.0.weight', () => ({ why: 1 })], 'cargo.0.weight'],
  ['solveForTarget', [base, {}, reserve, '1 lb'], 'path'],
  ['solveForTarget', [base, 'cargo.0.weight', 'gross', '1 lb'], 'choose'],
  ['solveForTarget', [base, 'cargo.0.weight', () => 'gross', '1 lb'], 'cargo.0.weight'],
  ['solveForTarget', [base, 'cargo.0.weight', reserve, null], 'target'],
];

describe('is refused at its key', () => {
  it.each(refused.map((row, i) => [i, ...row] as const))('%i: %s', (_, name, given, path) => {
    const said = ask(name, ...given) as Parameters<typeof isLeft>[0];
    expect(isLeft(said), 'a Left').toBe(true);
    if (!isLeft(said)) return;
    expect((said.left as { readonly path?: string }).path ?? '').toContain(path);
    expect(describeError(said.left as never)).not.toMatch(/undefined|\[object|NaN/);
  });
});

describe('rows that are not there', () => {
  it.each([null, 'one', {}, -1, 0.5, 1e12])('%j', (row) => {
    for (const said of [made.specAt(row as never)])
      expect(isLeft(said) && describeError(said.left)).toMatch(/whole number/);
    expect(made.errorAt(row as never)).toMatchObject({ tag: 'UnusableVariation', path: 'row' });
  });
});

it('what is solved for can be read again: put back, the spec has an answer', () => {
  for (const path of ['cargo.0.weight', 'trailer.gvwr', 'trailer.curb.weight', 'trailer.curb.tongue', 'cargo.0.at']) {
    const found = studies.solveFor(base as never, path, ({ checks }) => checks[0]?.reserve);
    if (isLeft(found)) continue;
    const { value } = found.right;
    const again = studies.changed(base, { [path]: { value: value.value.toFixed(), unit: value.unit } });
    expect(isLeft(assessJson(again)), path).toBe(false);
  }
});
