/** A working written out as a list: each node once, operands first, figures in the digits of their decimals. */
import { describe, expect, it } from 'vitest';
import { figureText, nodeList } from '../../../src/assessment/answer/node-list.js';
import { constant, converted, given, product, quotient, rounded, type Source, sum } from '../../../src/trace/index.js';
import { lb, ratio } from '../../../src/units/index.js';

const three = constant(ratio(3));

describe('a figure as text', () => {
  it('has the digits of its decimal and its unit, if it has one', () => {
    expect(figureText(lb(12000))).toBe('12000 lb');
    expect(figureText(lb('0.50'))).toBe('0.5 lb');
    expect(figureText(ratio(-7))).toBe('-7');
    expect(figureText(lb('1e21'))).toBe('1000000000000000000000 lb');
  });
  it('is not the double, where that is a whole number and the decimal is not', () => {
    const third = quotient(null, constant(ratio(1)), three);
    expect(figureText(product(null, third, three).value)).toMatch(/^0\.9{20,}$/);
    expect(figureText(ratio('5.00000000000000000001'))).toBe('5.00000000000000000001');
  });
});

describe('a list of nodes', () => {
  const source: Source = { id: 'here', title: 'a print', clause: '4.2', grade: 'memory' } as Source;
  const weight = given('weight', lb(500), 'scale', 'cargo.0.weight');
  it('has operands before the steps that use them, and every node once', () => {
    const { placeOf, working } = nodeList();
    const twice = sum('twice', [weight, weight]);
    const whole = rounded('whole', sum(null, [twice, weight]), lb(1), 'up');
    expect(placeOf(whole.why)).toBe(3);
    expect(placeOf(twice.why)).toBe(1);
    expect(working.nodes).toEqual([
      { basis: 'scale', figure: '500 lb', is: 'given', name: 'weight', path: 'cargo.0.weight' },
      { basis: 'scale', figure: '1000 lb', is: 'sum', name: 'twice', of: [0, 0] },
      { basis: 'scale', figure: '1500 lb', is: 'sum', of: [1, 0] },
      { basis: 'scale', figure: '1500 lb', is: 'round', name: 'whole', of: [2], rounding: { mode: 'up', step: '1' } },
    ]);
  });
  it('writes equal leaves once, and each source once by its clause', () => {
    const { placeOf, working } = nodeList();
    const alike = () => given('weight', lb(500), 'scale', 'cargo.0.weight');
    expect([placeOf(alike().why), placeOf(alike().why)]).toEqual([0, 0]);
    expect(placeOf(given('weight', lb(500), 'scale').why)).toBe(1);
    const from = (each: Source) => constant(ratio(2), 'two', each);
    expect([placeOf(from(source).why), placeOf(from({ ...source }).why)]).toEqual([2, 2]);
    expect(placeOf(from({ ...source, clause: '4.3' } as Source).why)).toBe(3);
    expect(placeOf(converted('kg', weight, 'kg').why)).toBe(4);
    expect(working.nodes.map((node) => 'source' in node && node.source)).toEqual([false, false, 0, 1, false]);
    expect(working.sources).toEqual([source, { ...source, clause: '4.3' }]);
    expect(working.nodes[2]).toEqual({ figure: '2', is: 'constant', name: 'two', source: 0 });
  });
});
