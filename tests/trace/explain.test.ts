/** The working as a reader sees it: written out here by hand, line for line. */
import { describe, expect, it } from 'vitest';
import { assessJson } from '../../src/assessment/index.js';
import { orThrow } from '../../src/errors.js';
import {
  arcSine,
  arcTangent,
  commonPractice,
  constant,
  converted,
  cosine,
  type Derived,
  difference,
  explain,
  fromMemory,
  fromTable,
  given,
  greatestOf,
  inPounds,
  leastOf,
  power,
  product,
  quotient,
  renamed,
  rounded,
  roundedDown,
  sine,
  squareRoot,
  statics,
  sum,
  tangent,
  weightAsForce,
  workingLines,
} from '../../src/trace/index.js';
import { degree, inch2, kg, lb, ratio, type Unit } from '../../src/units/index.js';
import { wrapText } from '../../src/units/internal.js';
import { tiltDeck } from '../helpers/specs.js';
import { expectReplays } from '../helpers/working.js';

const yearbook = { id: 'invented', title: 'Invented yearbook', grade: 'B', edition: '2020', clause: 'page 7' } as const;
const [a, b, c] = [given('a', lb(9)), given('b', lb(4)), given('c', lb(2))];
const [x, two] = [given('x', ratio('0.5')), constant(ratio(2))];
const slope = given('angle', degree(30));

describe('explain', () => {
  it('writes inputs with what they rest on, then each step once', () => {
    const trailer = given('trailer weight', lb(3200), 'scale', 'trailer.curb.weight');
    const machine = given('machine weight', kg(4150), 'stated', 'cargo.0.weight');
    const gross = sum('gross', [trailer, converted(null, machine, 'lb')]);
    const tongue = product('tongue load', gross, constant(ratio('0.12')), commonPractice);
    const axles = difference('axle load', gross, tongue, statics);
    const tire = fromTable('tire load', lb(2540), { table: 'tire loads', key: 'ST225/75R15 D', source: yearbook });
    const can = roundedDown(
      'tires carry',
      leastOf(null, [product(null, tire, two), given('axle rating', lb(5200), 'label')]),
      lb(10),
    );
    const reserve = difference('reserve of an axle', can, quotient('load on each axle', axles, two));
    expectReplays(reserve, tongue);
    expect(explain(reserve, tongue)).toBe(
      `
tire load = 2,540 lb  [tire loads, ST225/75R15 D: Invented yearbook, 2020, page
    7]
axle rating = 5,200 lb  [label]
tires carry
  = least of (tire load x 2, axle rating) rounded down to steps of 10 lb
  = least of (2,540 lb x 2, 5,200 lb) rounded down to steps of 10 lb
  = 5,080 lb
trailer weight = 3,200 lb  [scale, trailer.curb.weight]
machine weight = 4,150 kg  [stated, cargo.0.weight]
gross
  = trailer weight + (machine weight in lb)
  = 3,200 lb + (4,150 kg in lb)
  = 12,349.18 lb
tongue load
  = gross x 0.12
  = 12,349.18 lb x 0.12
  = 1,481.9 lb  [common practice, no source]
axle load
  = gross - tongue load
  = 12,349.18 lb - 1,481.9 lb
  = 10,867.28 lb  [static equilibrium, derived]
load on each axle
  = axle load / 2
  = 10,867.28 lb / 2
  = 5,433.64 lb
reserve of an axle
  = tires carry - load on each axle
  = 5,080 lb - 5,433.64 lb
  = -353.64 lb`.trimStart(),
    );
  });

  it.each([
    [sum('s', [a, b, c]), 'a + b + c'],
    [sum('s', [a, product(null, b, x), quotient(null, c, x)]), 'a + b x x + c / x'],
    [sum('s', [a, leastOf([b, c]), greatestOf([b, c])]), 'a + least of (b, c) + greatest of (b, c)'],
    [sum('s', [x, squareRoot(null, two), power(null, x, two)]), 'x + square root of (2) + x ^ 2'],
    [
      sum('s', [x, sine(null, slope), cosine(null, slope), tangent(null, slope)]),
      'x + sin angle + cos angle + tan angle',
    ],
    [sum('s', [slope, arcSine(null, x), arcTangent(null, x)]), 'angle + arcsin x + arctan x'],
    [sum('s', [a, difference(null, b, c), sum(null, [b, c])]), 'a + b - c + b + c'],
    [difference('s', a, product(null, b, x)), 'a - b x x'],
    [difference('s', x, power(null, x, two)), 'x - x ^ 2'],
    [difference('s', x, quotient(null, a, b)), 'x - a / b'],
    [difference('s', a, leastOf([b, c])), 'a - least of (b, c)'],
    [difference('s', x, sine(null, slope)), 'x - (sin angle)'],
    [product('s', leastOf([a, b]), product(null, x, two)), 'least of (a, b) x x x 2'],
    [product('s', quotient(null, a, b), x), '(a / b) x x'],
    [product('s', power(null, x, two), squareRoot(null, x)), 'x ^ 2 x square root of (x)'],
    [quotient('s', leastOf([a, b]), greatestOf([b, c])), 'least of (a, b) / greatest of (b, c)'],
    [quotient('s', a, product(null, x, two)), 'a / (x x 2)'],
    [quotient('s', power(null, x, two), squareRoot(null, x)), 'x ^ 2 / square root of (x)'],
    [power('s', x, product(null, x, two)), 'x ^ (x x 2)'],
    [difference('s', a, sum(null, [b, c])), 'a - (b + c)'],
    [difference('s', sum(null, [a, b]), c), 'a + b - c'],
    [difference('s', a, difference(null, b, c)), 'a - (b - c)'],
    [product('s', sum(null, [a, b]), x), '(a + b) x x'],
    [quotient('s', a, quotient(null, b, x)), 'a / (b / x)'],
    [quotient('s', product(null, a, x), two), 'a x x / 2'],
    [difference('s', a, rounded(null, b, lb(5), 'up')), 'a - (b rounded up to steps of 5 lb)'],
    [rounded('s', difference(null, a, b), lb(5), 'up'), '(a - b) rounded up to steps of 5 lb'],
    [rounded('s', a, lb('0.5'), 'nearest'), 'a rounded to the nearest 0.5 lb'],
    [rounded('s', a, lb(5), 'nearest-down'), 'a rounded to the nearest 5 lb, halves down'],
    [sum('s', [converted(null, given('m', kg(2)), 'lb'), b]), '(m in lb) + b'],
    [
      greatestOf('s', [a, sum(null, [b, c]), converted(null, given('m', kg(2)), 'lb')]),
      'greatest of (a, b + c, m in lb)',
    ],
    [weightAsForce('s', sum(null, [a, b])), '(a + b) as lbf'],
    [squareRoot('s', product(null, x, two)), 'square root of (x x 2)'],
    [power('s', sum(null, [x, two]), two), '(x + 2) ^ 2'],
    [product('s', b, sine(null, given('angle', degree(30)))), 'b x (sin angle)'],
    [tangent('s', given('angle', degree(30))), 'tan angle'],
    [arcSine('s', x), 'arcsin x'],
    [arcTangent('s', quotient(null, a, b)), 'arctan (a / b)'],
    [converted('s', x, '%'), 'x in %'],
    [converted('s', given('share', converted(null, x, '%').value), 'ratio'), 'share'],
  ] as [Derived<Unit>, string][])('brackets what would read another way (%#: %s)', (derived, written) => {
    expectReplays(derived);
    expect(workingLines([derived.why]).at(-1)?.formula).toBe(written);
  });

  it('uses the new name of a figure that was named again', () => {
    expect(explain(difference('rest', renamed('gross weight', a), b))).toContain('  = gross weight - b\n');
  });
  it('tells inputs, steps and answers apart, and an input that is asked for', () => {
    const step = sum('step', [a, b]);
    const groups = (...asked: readonly Derived<Unit>[]) =>
      workingLines(asked.map(({ why }) => why)).map(({ symbol, group }) => `${symbol}: ${group}`);
    expect(groups(difference('rest', step, c))).toEqual([
      'a: given',
      'b: given',
      'step: step',
      'c: given',
      'rest: answer',
    ]);
    expect(groups(step, c)).toEqual(['a: given', 'b: given', 'step: answer', 'c: answer']);
  });
  it('names the source of a constant that has one, and leaves out a constant without a name', () => {
    const line = (figure: Derived<Unit>) => workingLines([figure.why]).map(({ node: _, ...rest }) => rest);
    const plain = { group: 'answer', unit: 'ratio', symbol: 'divisor', result: '1.1' };
    expect(line(constant(ratio('1.10'), 'divisor'))).toEqual([plain]);
    expect(line(constant(ratio('1.10'), 'divisor', yearbook))).toEqual([
      { ...plain, from: 'Invented yearbook, 2020, page 7' },
    ]);
    expect(line(two)).toEqual([]);
  });
  it('has a step without numbers where they would only say the formula or the result again', () => {
    const numbersOf = (figure: Derived<Unit>) => workingLines([figure.why]).at(-1);
    expect(numbersOf(sum('whole', [a]))).toMatchObject({ formula: 'a', result: '9 lb' });
    expect(numbersOf(sum('whole', [a]))).not.toHaveProperty('numbers');
    expect(numbersOf(sum('whole', [a, b]))).toMatchObject({ numbers: '9 lb + 4 lb' });
    expect(numbersOf(sum('whole', [a, b]))).not.toHaveProperty('from');
  });
  it('writes four decimals below one, two from one on', () => {
    const shown = (figure: string) => explain(given('x', ratio(figure))).split(' ')[2];
    expect(['0.123456', '0.99994', '1', '1.00004', '1.23456', '-0.123456', '-1.23456'].map(shown)).toEqual([
      '0.1235',
      '0.9999',
      '1',
      '1',
      '1.23',
      '-0.1235',
      '-1.23',
    ]);
  });
  it('says what is from memory, and asks for it to be looked up', () => {
    const thumb = fromTable('thumb figure', lb(60), {
      table: 'parts',
      key: 'plank',
      source: fromMemory('weights of planks'),
    });
    expect(explain(thumb)).toBe('thumb figure = 60 lb  [parts, plank: weights of planks, from memory (verify)]');
  });
  it('stays within 80 columns, with no blanks at the ends of lines', () => {
    const long = sum(
      'a long name of a sum',
      Array.from({ length: 30 }, (_, i) => given(`part number ${i}`, lb(i + 1))),
    );
    for (const line of explain(long).split('\n')) {
      expect(line.length).toBeLessThanOrEqual(80);
      expect(line).toBe(line.trimEnd());
    }
    expect(
      wrapText('word '.repeat(40), 20, '  ')
        .split('\n')
        .every((line) => line.length <= 20 && line === line.trimEnd()),
    ).toBe(true);
    expect(wrapText(`start ${'x'.repeat(100)} end`, 20, '  ')).toBe(`start\n  ${'x'.repeat(100)}\n  end`);
  });
  it('explains hundreds of shared steps once each', () => {
    let figure = sum('step 0', [a, b]);
    for (let i = 1; i <= 200; i += 1) figure = leastOf(`step ${i}`, [sum(null, [figure, figure]), c]);
    expect(explain(figure).match(/^step \d+$/gm)?.length).toBe(201);
  });
});

it('takes the sine of 30 degrees as a half', () => {
  expect(sine('s', given('angle', degree(30))).value.value.toFixed()).toBe('0.5');
  expect(tangent('t', given('angle', degree(45))).value.value.toFixed()).toBe('1');
  expect(squareRoot('side', given('area', inch2(9))).value.value.toFixed()).toBe('3');
});

describe('in metric units', () => {
  const trailer = given('trailer weight', lb(4000), 'scale', 'trailer.curb.weight');
  const machine = inPounds('machine weight', given('machine, as told', kg(3000), 'stated'));
  const gross = sum('gross weight', [trailer, machine]);
  const share = constant(ratio('0.12'));
  const tongue = product('tongue load', gross, share);
  it('prints every figure in them and computes nothing anew', () => {
    const text = explain(tongue, { units: 'metric' });
    expect(text).toBe(
      [
        'trailer weight = 1,814.37 kg  [scale, trailer.curb.weight]',
        'machine, as told = 3,000 kg  [stated]',
        'machine weight',
        '  = machine, as told',
        '  = 3,000 kg',
        'gross weight',
        '  = trailer weight + machine weight',
        '  = 1,814.37 kg + 3,000 kg',
        '  = 4,814.37 kg',
        'tongue load',
        '  = gross weight x 0.12',
        '  = 4,814.37 kg x 0.12',
        '  = 577.72 kg',
      ].join('\n'),
    );
    expect(explain(tongue, { units: 'us' })).toBe(explain(tongue));
    expect(explain(tongue)).toContain('machine, as told in lb');
  });
  it('tells a conversion that this reader sees as one, and no other', () => {
    const [x, deck] = [given('x', ratio('0.5')), given('deck', lb(2000))];
    const written = (figure: Derived<Unit>, units: 'us' | 'metric') =>
      workingLines([figure.why], { units }).at(-1)?.formula;
    expect([written(converted('s', x, '%'), 'metric'), written(converted('s', x, '%'), 'us')]).toEqual([
      'x in %',
      'x in %',
    ]);
    expect([written(converted('s', deck, 'kg'), 'metric'), written(converted('s', deck, 'kg'), 'us')]).toEqual([
      'deck',
      'deck in kg',
    ]);
  });
  it('leaves no pound, inch or psi in the workings of a whole answer, but where a step rounds by one', () => {
    const { checks, pressures } = orThrow(assessJson(tiltDeck()));
    const figures = [...checks.map(({ reserve }) => reserve), ...pressures.map(({ needed }) => needed.pressure)];
    const lines = workingLines(
      figures.map(({ why }) => why),
      { units: 'metric' },
    );
    expect(lines.length).toBeGreaterThan(80);
    const left = lines.filter(
      ({ numbers = '', operation, result }) =>
        operation !== 'round' && /\d (lb|in|ft|psi)\b/.test(`${numbers} ${result}`),
    );
    expect(left.map(({ symbol, numbers, result }) => [symbol, numbers, result])).toEqual([]);
  });
});
