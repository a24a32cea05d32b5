/** Steps as an answer writes them: an operation that its operands do not allow has no figure, so that the answer does not follow. */
import { describe, expect, it } from 'vitest';
import type { ExactFigure } from '../../../src/assessment/answer/figures-read.js';
import type { ComputedNode } from '../../../src/assessment/answer/node-shape.js';
import { rationalOf } from '../../../src/assessment/answer/rational.js';
import { stepOf } from '../../../src/assessment/answer/step.js';

const figure = (text: string): ExactFigure => {
  const [digits, unit] = text.split(' ') as [string, ExactFigure['unit'] | undefined];
  return { value: rationalOf(digits) as ExactFigure['value'], unit: unit ?? 'ratio' };
};
const step = (
  is: ComputedNode['is'],
  operands: readonly string[],
  unit = 'lb',
  rounding?: ComputedNode['rounding'],
) => {
  const [first, ...others] = operands.map(figure);
  const node = { is, of: operands.map((_, i) => i), ...(rounding && { rounding }) } as unknown as ComputedNode;
  return stepOf(node, [first as ExactFigure, ...others], unit);
};

describe('a step that its operands allow', () => {
  it.each([
    ['sum', ['3 lb', '4 lb'], 'lb', '7 lb'],
    ['difference', ['3 lb', '4 lb'], 'lb', '-1 lb'],
    ['product', ['3 lb', '4 in'], 'lb*in', '12 lb*in'],
    ['quotient', ['12 lb*in', '4 in'], 'lb', '3 lb'],
    ['power', ['9', '0.5'], 'ratio', '3'],
    ['squareRoot', ['9 in2'], 'in', '3 in'],
    ['sine', ['30 deg'], 'ratio', '0.5'],
    ['cosine', ['60 deg'], 'ratio', '0.5'],
    ['tangent', ['45 deg'], 'ratio', '1'],
    ['arcSine', ['0.5'], 'deg', '30 deg'],
    ['arcTangent', ['1'], 'deg', '45 deg'],
    ['relabel', ['3 lb'], 'lbf', '3 lbf'],
    ['convert', ['3 ft'], 'in', '36 in'],
    ['least', ['3 lb', '2 lb', '5 lb'], 'lb', '2 lb'],
    ['greatest', ['3 lb', '2 lb', '5 lb'], 'lb', '5 lb'],
  ] as const)('%s of %j', (is, operands, unit, result) => {
    const found = step(is, operands, unit);
    const expected = figure(result);
    expect(found?.unit).toBe(expected.unit);
    const value = (each: ExactFigure | undefined): number =>
      each === undefined ? Number.NaN : Number(each.value.top) / Number(each.value.bottom);
    expect(value(found)).toBeCloseTo(value(expected), 12);
  });
});

describe('a step that they do not allow has no figure', () => {
  it.each([
    ['sum', ['3 lb', '4 in']],
    ['least', ['3 lb', '4 kg']],
    ['difference', ['3 lb', '4 in']],
    ['product', ['3 psi', '4 psi']],
    ['quotient', ['3 lb', '0 in']],
    ['quotient', ['3 psi', '4 deg']],
    ['power', ['3 lb', '2']],
    ['power', ['3', '2 lb']],
    ['squareRoot', ['9 lb']],
    ['squareRoot', ['-9 in2']],
    ['sine', ['30 lb']],
    ['cosine', ['30']],
    ['tangent', ['90 in']],
    ['arcSine', ['2']],
    ['arcTangent', ['1 deg']],
    ['relabel', ['3 kg']],
    ['convert', ['3 ft']],
    ['product', ['1', '2', '3']],
    ['product', ['1']],
    ['sine', ['1', '2']],
  ] as const)('%s of %j', (is, operands) => {
    expect(step(is, operands)).toBeUndefined();
  });
  it.each(['0', '-1', '', 'ten'])('a rounding to steps of %j', (size) => {
    expect(step('round', ['3 lb'], 'lb', { mode: 'up', step: size } as never)).toBeUndefined();
  });
});
