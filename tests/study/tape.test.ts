/** Each operation of the tape against the decimal reading of the same working, in every form, alone and in random workings. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applyRounding } from '../../src/study/float-rounding.js';
import { enoughColumns, isVaried, runBlock, tapeOf } from '../../src/study/tape.js';
import {
  arcSine,
  arcTangent,
  constant,
  converted,
  type Derived,
  decimalReading,
  difference,
  given,
  greatestOf,
  leastOf,
  type Node,
  nodesOf,
  power,
  product,
  quotient,
  readNode,
  rounded,
  sine,
  squareRoot,
  sum,
  tangent,
  weightAsForce,
} from '../../src/trace/index.js';
import { degree, lb, quantity, type RoundingMode, ratio, type Unit } from '../../src/units/index.js';

type Figures = Readonly<Record<string, readonly number[]>>;
type R = Derived<'ratio'>;

/** What the tape gives for each output, row by row. */
function onTape(outputs: readonly Node[], inputs: Figures): readonly (readonly number[])[] {
  const paths = Object.keys(inputs);
  const rows = Object.values(inputs)[0]?.length ?? 0;
  const tape = tapeOf(outputs, paths);
  const columns = enoughColumns([], tape, rows);
  paths.forEach((path, k) => columns[k]?.set(inputs[path] as readonly number[]));
  runBlock(tape, columns, rows);
  paths.forEach((path, k) =>
    expect([...(columns[k] as Float64Array)], `the input ${path} is left as it was`).toEqual(inputs[path]),
  );
  return tape.outputs.map((at) =>
    Array.from({ length: rows }, (_, i) =>
      isVaried(at) ? ((columns[at.column] as Float64Array)[i] as number) : at.value,
    ),
  );
}

/** What the decimals give. */
function inDecimals(outputs: readonly Node[], inputs: Figures): readonly (readonly number[])[] {
  const rows = Object.values(inputs)[0]?.length ?? 0;
  const read = Array.from({ length: rows }, (_, i) => {
    const memo = new Map<Node, ReturnType<typeof decimalReading.leaf>>();
    return outputs.map((node) =>
      readNode(node, decimalReading, memo, (leaf) => {
        const column = leaf.kind === 'given' && leaf.path !== undefined ? inputs[leaf.path] : undefined;
        return column === undefined ? undefined : ratio(column[i] as number).value;
      }).toNumber(),
    );
  });
  return outputs.map((_, k) => read.map((row) => row[k] as number));
}

function expectSame(outputs: readonly Derived<Unit>[], inputs: Figures): void {
  const nodes = outputs.map(({ why }) => why);
  const [tape, exact] = [onTape(nodes, inputs), inDecimals(nodes, inputs)];
  tape.forEach((column, k) =>
    column.forEach((x, i) => {
      const y = exact[k]?.[i] as number;
      expect(Math.abs(x - y), `${outputs[k]?.why.symbol ?? k}, row ${i}: ${x} for ${y}`).toBeLessThanOrEqual(
        1e-9 * Math.max(1, Math.abs(y)),
      );
    }),
  );
}

const input = (path: string, value = 1): R => given(path, ratio(value), 'stated', path);
const x = input('x', 3);
const y = input('y', 5);
const fixed = constant(ratio('2.5'));
const rows = { x: [1, 0.25, 7.125, 300, 0.001], y: [2, 7.125, 0.5, 299, 12] };

const binary: Readonly<Record<string, (a: R, b: R) => R>> = {
  sum: (a, b) => sum('s', [a, b]),
  difference: (a, b) => difference('d', a, b),
  product: (a, b) => product('p', a, b),
  quotient: (a, b) => quotient('q', a, b),
  least: (a, b) => leastOf('l', [a, b]),
  greatest: (a, b) => greatestOf('g', [a, b]),
  power: (a, b) => power('w', a, b),
};

describe.each(Object.entries(binary))('%s', (name, step) => {
  const small = name === 'power' ? { x: [1, 0.25, 7.125, 3, 0.001], y: [2, 1.5, 0.5, 2.25, 3] } : rows;
  it('of a column and a column', () => expectSame([step(x, y), step(y, x)], small));
  it('of a column and a number', () => expectSame([step(x, fixed)], small));
  it('of a number and a column', () => expectSame([step(fixed, y)], small));
  it('of a column and itself', () => expectSame([step(x, x)], small));
  it('of two numbers, folded', () => {
    expect(tapeOf([step(fixed, fixed).why], ['x']).steps).toEqual([]);
    expectSame([step(fixed, fixed)], small);
  });
});

describe('operations of one figure', () => {
  it('convert', () =>
    expectSame(
      [
        converted('k', given('x', lb(1), 'stated', 'x'), 'kg'),
        converted('t', given('y', quantity(1, 'ft'), 'stated', 'y'), 'mm'),
      ],
      rows,
    ));
  it('relabel', () => expectSame([weightAsForce('f', given('x', lb(1), 'stated', 'x'))], rows));
  it('square root', () => expectSame([squareRoot('r', x)], rows));
  it('sine, tangent', () =>
    expectSame([sine('s', given('x', degree(1), 'stated', 'x')), tangent('t', given('x', degree(1), 'stated', 'x'))], {
      x: [0, 0.5, 12, 45, 89, -30],
    }));
  it('arc sine, arc tangent', () =>
    expectSame([arcSine('s', input('x', 0.5)), arcTangent('t', input('x', 0.5))], { x: [0, 0.5, -0.75, 1, -1] }));
  it.each(['down', 'up', 'nearest', 'nearest-down'] as const)(
    'round %s, on the step, between steps, on the half',
    (mode) => {
      for (const step of ['1', '5', '0.1', '0.25'])
        expectSame([rounded('r', x, ratio(step), mode)], {
          x: [0, 0.1, 0.2, 0.3, 0.5, 1.5, 2.5, 2.4999, 7, 12.5, 17.5, 299.99, -0.5, -2.5, -1.2, -7],
        });
    },
  );
  it('round as decimals do, for any figure of few digits', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -1e6, max: 1e6 }),
        fc.constantFrom(0.01, 0.1, 0.5, 1, 5, 25),
        fc.constantFrom<RoundingMode>('down', 'up', 'nearest', 'nearest-down'),
        (n, step, mode) => {
          const figure = n / 1000;
          expect(applyRounding(figure, step, mode)).toBeCloseTo(
            decimalReading.round(ratio(figure).value, ratio(step).value, mode).toNumber(),
            8,
          );
        },
      ),
      {
        examples: [
          [-129445, 0.01, 'nearest'],
          [129445, 0.01, 'nearest-down'],
        ],
        numRuns: 2000,
      },
    );
  });
});

describe('lists', () => {
  it.each([1, 2, 3, 4, 5, 9])('of %i terms, some of them numbers', (count) => {
    const terms = Array.from({ length: count }, (_, i) => input(`v${i}`, i + 1));
    const figures = Object.fromEntries(terms.map(({ why }, i) => [why.symbol as string, [i + 0.5, 10 - i, i * i]]));
    expectSame(
      [
        sum('a', terms),
        leastOf('b', terms),
        greatestOf('c', terms),
        sum('d', [...terms, fixed, fixed]),
        leastOf('e', [fixed, ...terms]),
        greatestOf('f', [fixed, ...terms]),
      ],
      figures,
    );
  });
});

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
        tape.forEach((values, k) =>
          values.forEach((value, i) =>
            expect(Math.abs(value - (exact[k]?.[i] as number))).toBeLessThanOrEqual(1e-9 * size),
          ),
        );
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
