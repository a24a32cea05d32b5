/** Random workings on the tape, and what the tape folds and merges. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tapeOf } from '../../../src/study/tape/tape.js';
import {
  constant,
  difference,
  greatestOf,
  leastOf,
  nodesOf,
  product,
  quotient,
  rounded,
  sum,
} from '../../../src/trace/index.js';
import { ratio } from '../../../src/units/index.js';
import { expectSame, fixed, inDecimals, input, onTape, type R, rows, x, y } from './on-tape.js';

/** A random working over x, y and z: each step takes figures made before it. */
const working = fc
  .array(
    fc.tuple(
      fc.constantFrom('sum', 'sum3', 'difference', 'product', 'quotient', 'least', 'greatest', 'round', 'number'),
      fc.nat(),
      fc.nat(),
      fc.nat(),
    ),
    { minLength: 1, maxLength: 40 },
  )
  .map((steps) => {
    const made: R[] = [input('x', 2), input('y', 3), input('z', 5)];
    const pick = (n: number): R => made[n % made.length] as R;
    const positive = (a: R): R => greatestOf(null, [a, constant(ratio('0.5'))]);
    for (const [kind, i, j, k] of steps) {
      const [a, b, c] = [pick(i), pick(j), pick(k)];
      switch (kind) {
        case 'sum':
          made.push(sum(null, [a, b]));
          break;
        case 'sum3':
          made.push(sum(null, [a, b, c]));
          break;
        case 'difference':
          made.push(difference(null, a, b));
          break;
        case 'product':
          made.push(leastOf(null, [product(null, a, b), constant(ratio(1e6))]));
          break;
        case 'quotient':
          made.push(quotient(null, a, positive(b)));
          break;
        case 'least':
          made.push(leastOf(null, [a, b, c]));
          break;
        case 'greatest':
          made.push(greatestOf(null, [a, b]));
          break;
        case 'round':
          made.push(rounded(null, a, ratio(1024), 'up'));
          break;
        default:
          made.push(constant(ratio((i % 9) + 0.5)));
      }
    }
    return made;
  });

describe('random workings', () => {
  it('give on the tape what they give in decimals', () => {
    const column = fc.array(
      fc.integer({ min: 1, max: 4000 }).map((n) => n / 8),
      { minLength: 6, maxLength: 6 },
    );
    fc.assert(
      fc.property(working, column, column, column, fc.nat(), (made, a, b, c, n) => {
        const outputs = [made.at(-1) as R, made[n % made.length] as R, made[Math.floor(made.length / 2)] as R];
        const nodes = outputs.map(({ why }) => why);
        const [tape, exact] = [onTape(nodes, { x: a, y: b, z: c }), inDecimals(nodes, { x: a, y: b, z: c })];
        const size = Math.max(
          1,
          ...nodesOf(nodes).map((node) => Math.abs(node.value.value.toNumber())),
          ...exact.flat().map(Math.abs),
        );
        for (const [k, values] of tape.entries())
          for (const [i, value] of values.entries())
            expect(Math.abs(value - (exact[k]?.[i] as number))).toBeLessThanOrEqual(1e-9 * size);
      }),
      { numRuns: 300, seed: 12 },
    );
  });
});

describe('the shape of a tape', () => {
  const chain = (length: number): R =>
    Array.from({ length }).reduce<R>(
      (last, _, i) => sum(null, [last, product(null, last, constant(ratio((i + 2) / 1000)))]),
      x,
    );
  it('folds a linear chain of two hundred steps into one', () => {
    const { why } = chain(100);
    const tape = tapeOf([why], ['x']);
    expect(tape.steps.length).toBe(1);
    expect(tape.registers).toBe(2);
    expectSame([chain(100)], { x: [1, 2, 3] });
  });
  it('makes a column of a form of many columns, once', () => {
    const all = ['a', 'b', 'c', 'd', 'e'].map((path) => input(path, 2));
    const total = sum('total', all);
    const outputs = [
      product('twice', total, constant(ratio(2))),
      quotient('half', total, constant(ratio(2))),
      difference('less', total, constant(ratio(7))),
    ];
    expect(
      tapeOf(
        outputs.map(({ why }) => why),
        ['a', 'b', 'c', 'd', 'e'],
      ).registers,
    ).toBe(5 + 1 + 3);
    expectSame(outputs, { a: [1, 2], b: [3, 4], c: [5, 6], d: [7, 8], e: [9, 10] });
  });
  it('lets a term that cancels go', () => {
    const tape = tapeOf([difference(null, sum(null, [x, y]), x).why], ['x', 'y']);
    expect(tape.steps).toEqual([]);
    expect(tape.outputs).toEqual([{ column: 1 }]);
  });
  it('keeps every output, also one that later steps read', () => {
    const first = sum('first', [x, y]);
    const second = product('second', first, first);
    const third = difference('third', second, first);
    expectSame([first, second, third, first, x], rows);
  });
  it('merges nodes that compute the same the same way, and no others', () => {
    const registers = (outputs: readonly R[], paths: readonly string[]): number =>
      tapeOf(
        outputs.map(({ why }) => why),
        paths,
      ).registers - paths.length;
    const twice = (): R => quotient('half', sum(null, [x, y]), constant(ratio(2)));
    expect(registers([twice(), twice()], ['x', 'y'])).toBe(1);
    expect(registers([sum(null, [x, y]), sum(null, [y, x])], ['x', 'y'])).toBe(1);
    expect(registers([difference(null, x, y), difference(null, y, x)], ['x', 'y'])).toBe(2);
    expect(registers([product(null, x, y), product(null, x, y)], ['x', 'y'])).toBe(1);
    expect(
      registers(
        [rounded(null, x, ratio(5), 'up'), rounded(null, x, ratio(5), 'down'), rounded(null, x, ratio(1), 'up')],
        ['x'],
      ),
    ).toBe(3);
    expect(registers([product(null, x, constant(ratio(2))), product(null, x, constant(ratio('2.0')))], ['x'])).toBe(1);
    const [ofX, ofY] = [product('same name', x, fixed), product('same name', y, fixed)];
    expect(registers([ofX, ofY], ['x', 'y'])).toBe(2);
    expect(registers([ofX, ofY], ['x'])).toBe(1);
  });
  it('keeps what does not depend on an input out of it', () => {
    const tape = tapeOf([sum('s', [product(null, y, y), x]).why, y.why], ['x']);
    expect(tape.steps.length).toBe(1);
    expect(tape.outputs[1]).toEqual({ value: 5 });
  });
});
