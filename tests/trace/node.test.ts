/** Replay, exact fractions, decisions, footing: what holds of every working. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  arcSine,
  asDerived,
  bases,
  constant,
  converted,
  type Derived,
  decide,
  difference,
  fromTable,
  given,
  greatestOf,
  holdsFor,
  leastOf,
  nodesOf,
  pathsBehind,
  power,
  product,
  quotient,
  replay,
  rounded,
  squareRoot,
  statics,
  sum,
  weaker,
  weakestInputs,
} from '../../src/trace/index.js';
import {
  compare,
  foot,
  inch2,
  kg,
  lb,
  type Quantity,
  quantity,
  ratio,
  roundLoadUp,
  show,
  type Unit,
} from '../../src/units/index.js';
import { expectReplays } from '../helpers/working.js';

const figures = fc
  .tuple(fc.integer({ min: -30_000, max: 30_000 }), fc.constantFrom(1, 2, 4, 8, 10, 100))
  .map(([n, over]) => n / over);
const divisors = fc.constantFrom(2, 3, 5, 6, 7, 9, 11, 13, 17, 1.1);

/** A random working in pounds: leaves, and every rational step over what was made before; ties and cancellations are common. */
const workings = fc
  .tuple(
    fc.array(figures, { minLength: 1, maxLength: 4 }),
    fc.array(fc.tuple(fc.nat(8), fc.nat(40), fc.nat(40), divisors), { maxLength: 25 }),
  )
  .map(([leaves, steps]) => {
    const made: Derived<'lb'>[] = leaves.map((figure, i) =>
      given(`leaf ${i}`, lb(figure), bases[i % bases.length], `leaf.${i}`),
    );
    for (const [kind, first, second, by] of steps) {
      const [a, b] = [made[first % made.length] as Derived<'lb'>, made[second % made.length] as Derived<'lb'>];
      const n = constant(ratio(by));
      const next = [
        () => sum('sum', [a, b, a]),
        () => difference('difference', a, b),
        () => product('times', a, n),
        () => quotient('over', a, n),
        () => leastOf('least', [a, b]),
        () => greatestOf('greatest', [a, b]),
        () => converted('back', converted('there', a, 'kg'), 'lb'),
        () => rounded('down', a, lb(by), 'down'),
        () => difference('nothing', product(null, quotient(null, a, n), n), a),
      ][kind] as () => Derived<'lb'>;
      made.push(next());
    }
    return made;
  });

describe('a working', () => {
  it('replays node for node and agrees with exact fractions, for any working', () => {
    fc.assert(
      fc.property(workings, (made) => {
        for (const derived of made) expect(compare(replay(derived), derived.value)).toBe(0);
        expectReplays(...made);
      }),
      { numRuns: 400 },
    );
  });
  it('replays with other figures at its leaves', () => {
    const gross = sum('gross', [
      given('trailer', lb(3200), 'scale', 'trailer'),
      given('machine', lb(9200), 'stated', 'cargo.0.weight'),
    ]);
    const share = product('tongue', gross, constant(ratio('0.12')));
    expect(show(replay(share, new Map([['cargo.0.weight', lb(6800).value]])))).toBe('1,200 lb');
    expect(show(replay(share, new Map([['elsewhere', lb(6800).value]])))).toBe('1,488 lb');
  });
  it('shares what is shared, leaves first', () => {
    const a = given('a', lb(1));
    const b = sum('b', [a, a]);
    const nodes = nodesOf([sum('c', [b, a]).why, b.why]);
    expect(nodes.map(({ symbol }) => symbol)).toEqual(['a', 'b', 'c']);
  });
  it('comes to exactly nothing where the exact figures do', () => {
    const a = given('a', lb(7000));
    for (const parts of [3, 6, 7, 9, 11, 13, 17, 19]) {
      const share = quotient('share', a, constant(ratio(parts)));
      const again = product('again', share, constant(ratio(parts)));
      const all = sum(
        'all',
        Array.from({ length: parts }, () => share),
      );
      for (const nothing of [
        difference('d', again, a),
        difference('d', a, again),
        difference('d', all, a),
        sum('s', [again, given('minus a', lb(-7000))]),
      ]) {
        expect(show(nothing.value)).toBe('0 lb');
        expectReplays(nothing);
      }
    }
  });
  it('keeps the first of what ties as least and as greatest, replayed too', () => {
    const whole = given('whole', lb(7000));
    const again = product('again', quotient(null, whole, constant(ratio(3))), constant(ratio(3)));
    expect(again.value.value.eq(7000)).toBe(false);
    for (const terms of [
      [whole, again],
      [again, whole],
    ])
      for (const picked of [leastOf('least', terms), greatestOf('greatest', terms)]) {
        expect(picked.value).toBe(terms[0]?.value);
        expectReplays(picked);
      }
  });
  it('goes on from a figure that was rounded outside it', () => {
    const third = quotient('third', given('ten', lb(10)), constant(ratio(3)));
    const whole = sum('whole', [given('rounded', roundLoadUp(third.value, lb(1))), given('tenth', lb('0.1'))]);
    expect(whole.value.value.toFixed()).toBe('4.1');
  });
  it('throws for the slips that a caller must rule out, and lets no NaN or Infinity through', () => {
    const [zero, minus] = [constant(ratio(0)), constant(ratio(-2))];
    const slips = [
      () => quotient('q', given('a', lb(1)), zero),
      () => quotient('q', zero, zero),
      () => squareRoot('r', minus),
      () => power('p', minus, constant(ratio('0.5'))),
      () => power('p', zero, minus),
      () => arcSine('s', minus),
      () => rounded('r', given('a', lb(1)), lb(0), 'up'),
      () => sum<'lb'>('s', []),
      () => leastOf<'lb'>('l', []),
      () => greatestOf<'lb'>('g', []),
    ];
    for (const slip of slips) expect(slip).toThrow(RangeError);
    const feet = given('f', foot(1) as Quantity<Unit> as Quantity<'lb'>);
    for (const mix of [sum, leastOf, greatestOf])
      expect(() => mix('m', [given('a', lb(1)), feet])).toThrow('ft is not lb: convert it by name first');
    expect(() => difference('d', given('a', lb(1)), feet)).toThrow(TypeError);
    expect(() => decide(given('a', lb(1)), '<', feet)).toThrow(TypeError);
  });
  it('converts only where there is something to convert', () => {
    const a = given('a', lb(1));
    expect(converted('same', a, 'lb')).toBe(a);
    expect(asDerived('other name', a)).toBe(a);
    expect(asDerived('weight', kg(2)).why).toMatchObject({ kind: 'given', symbol: 'weight', basis: 'stated' });
  });
});

describe('decisions', () => {
  it('hold as the exact figures hold, and keep what was compared', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -500, max: 500 }),
        fc.integer({ min: -500, max: 500 }),
        divisors,
        fc.constantFrom('<', '<=', '>', '>=', '='),
        (n, m, by, comparison) => {
          const d = constant(ratio(by));
          const left = product('left', quotient(null, given('n', lb(n)), d), d);
          const right = given('m', lb(m));
          const decision = decide(left, comparison, right);
          expect(decision).toEqual({
            holds: { '<': n < m, '<=': n <= m, '>': n > m, '>=': n >= m, '=': n === m }[comparison],
            left: left.why,
            comparison,
            right: right.why,
          });
        },
      ),
      { numRuns: 500 },
    );
  });
  it('knows every order and comparison', () => {
    const table = (['<', '<=', '>', '>=', '='] as const).map((comparison) =>
      ([-1, 0, 1] as const).map((order) => holdsFor(order, comparison)),
    );
    expect(table).toEqual([
      [true, false, false],
      [true, true, false],
      [false, false, true],
      [false, true, true],
      [false, true, false],
    ]);
  });
});

describe('weakestInputs', () => {
  it('names the weakest basis and the inputs that have it; numbers of the formula do not count', () => {
    const weighed = given('weighed', lb(3200), 'scale');
    const said = given('said', lb(9200), 'stated', 'cargo.0.weight');
    const looked = fromTable('table', lb(2540), { table: 't', key: 'k', source: statics });
    const footing = weakestInputs(product('p', sum('s', [weighed, said, looked]), constant(ratio(2))));
    expect([footing.basis, footing.inputs.map(({ symbol }) => symbol)]).toEqual(['stated', ['said']]);
    expect(weakestInputs(sum('s', [weighed, looked]))).toMatchObject({
      basis: 'published',
      inputs: [{ symbol: 'table' }],
    });
    expect(
      weakestInputs(sum('s', [weighed, given('also weighed', lb(1), 'scale')])).inputs.map(({ symbol }) => symbol),
    ).toEqual(['weighed', 'also weighed']);
  });
  it('is never stronger than any input, for any working', () => {
    expect(
      bases
        .flatMap((basis, i) => bases.map((other, j) => weaker(basis, other) === bases[Math.max(i, j)]))
        .every(Boolean),
    ).toBe(true);
    fc.assert(
      fc.property(workings, (made) => {
        for (const derived of made) {
          const leaves = nodesOf([derived.why])
            .filter(({ kind }) => kind === 'given')
            .map(({ basis }) => bases.indexOf(basis));
          expect(bases.indexOf(weakestInputs(derived).basis)).toBe(Math.max(...leaves));
          expect(weakestInputs(derived).inputs.length).toBeGreaterThan(0);
        }
      }),
      { numRuns: 100 },
    );
  });
});

describe('pathsBehind', () => {
  it('names each key of a spec once, in the order of the working', () => {
    const machine = given('machine', lb(9200), 'stated', 'cargo.0.weight');
    const trailer = given('trailer', lb(3200), 'scale', 'trailer.weight');
    const gross = sum('gross', [machine, trailer, given('hand load', lb(1))]);
    expect(pathsBehind([gross, difference('rest', gross, machine)])).toEqual(['cargo.0.weight', 'trailer.weight']);
    expect(pathsBehind([constant(lb(1))])).toEqual([]);
  });
});

it('the square of a side is its area', () => {
  const area = given('area', inch2(quantity('12.25', 'ratio').value));
  const side = squareRoot('side', area);
  expect(show(side.value)).toBe('3.5 in');
  expectReplays(product('again', side, side));
});
