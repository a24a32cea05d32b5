/** Checks at the limit, a pound below, a pound above; ties; margins that are exactly zero. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Check, capacity, checkLoad, checkPart, note, rating, tightest, weight } from '../../src/ratings/index.js';
import {
  constant,
  converted,
  type Derived,
  decide,
  explain,
  given,
  product,
  quotient,
  sum,
  weakestInputs,
} from '../../src/trace/index.js';
import { lb, ratio, show, showBrief } from '../../src/units/index.js';
import { expectReplays } from '../helpers/working.js';

const gross = (limit: number | string, load: number | string): Check =>
  checkLoad(rating('GVWR', lb(limit)), weight('gross', lb(load)));

describe('check', () => {
  it.each([
    // limit, load, verdict, reserve, share used
    [14000, 13999, 'within', '1 lb', '99.99 %'],
    [14000, 14000, 'within', '0 lb', '100 %'],
    [14000, 14001, 'over', '-1 lb', '100.01 %'],
    [14000, '14000.0000001', 'over', '-0.0000001 lb', '100 %'],
    [14000, 0, 'within', '14,000 lb', '0 %'],
  ] as const)('%s against %s is %s', (limit, load, verdict, reserve, used) => {
    const answer = gross(limit, load);
    expect([answer.verdict, show(answer.reserve.value), showBrief(converted('used', answer.used, '%').value)]).toEqual([
      verdict,
      reserve,
      used,
    ]);
    expectReplays(answer.reserve, answer.used);
  });
  it('says what was asked, of which part, under which clause, and what the weight rests on', () => {
    const clause = { id: 'x', title: 'Invented rule', grade: 'A' } as const;
    const answer = checkLoad(
      rating('GAWR', lb(5200), { part: 'axle 1', clause }),
      weight('axle load', given('axle 1 load', lb(5000), 'scale')),
    );
    expect(answer).toMatchObject({ what: 'axle load against axle 1 GAWR', kind: 'GAWR', part: 'axle 1', clause });
    expect([
      weakestInputs(answer.limit).basis,
      weakestInputs(answer.load).basis,
      weakestInputs(answer.reserve).basis,
    ]).toEqual(['label', 'scale', 'label']);
    expect(explain(answer.reserve)).toBe(
      'axle 1 GAWR = 5,200 lb  [label]\naxle 1 load = 5,000 lb  [scale]\nreserve, axle load against axle 1 GAWR\n  = axle 1 GAWR - axle 1 load\n  = 5,200 lb - 5,000 lb\n  = 200 lb',
    );
  });
  it('asks of a part whether it bears the rating', () => {
    // 2 x 2,540 lb of tires under a 5,200 lb axle: arithmetic of our own on the published table load.
    const short = checkPart(capacity('tires', lb(5080), 'axle 1'), rating('GAWR', lb(5200)));
    expect([short.what, short.verdict, show(short.reserve.value)]).toEqual([
      'axle 1 tires against GAWR',
      'over',
      '-120 lb',
    ]);
    expect(checkPart(capacity('beam', lb(5200)), rating('GAWR', lb(5200), { part: 'axle 2' }))).toMatchObject({
      part: 'axle 2',
      verdict: 'within',
    });
    expectReplays(short.reserve, short.used);
  });
  it('refuses a rating of nothing or less: nothing is rated at nothing', () => {
    for (const none of [0, -0, -1]) {
      expect(() => rating('GVWR', lb(none))).toThrow(RangeError);
      expect(() => capacity('hubs', lb(none))).toThrow(RangeError);
    }
  });
});

describe('margins that are exactly nothing', () => {
  /** The load of one axle, taken as an equal share and added up again, against a label that is just that. */
  const shares = (
    total: number,
    axles: number,
  ): { again: Derived<'lb'>; added: Derived<'lb'>; share: Derived<'lb'> } => {
    const n = constant(ratio(axles));
    const share = quotient('share', given('total', lb(total)), n);
    return {
      share,
      again: product('again', share, n),
      added: sum(
        'added',
        Array.from({ length: axles }, () => share),
      ),
    };
  };
  it('are within and zero for every equal share: 6,858 of them', () => {
    let wrong = 0;
    let asked = 0;
    for (let axles = 2; axles <= 10; axles += 1) {
      for (let total = 2_000; total < 2_381; total += 1) {
        const { again, added } = shares(total, axles);
        for (const load of [again, added]) {
          const answer = checkLoad(rating('GVWR', lb(total)), weight('gross', load));
          const nothing =
            decide(answer.reserve, '=', constant(lb(0))).holds &&
            !answer.reserve.value.value.isNegative() &&
            show(answer.reserve.value) === '0 lb';
          if (answer.verdict !== 'within' || !nothing) wrong += 1;
          asked += 1;
        }
      }
    }
    expect([asked, wrong]).toEqual([6858, 0]);
  });
  it('do not hide a real pound', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 60_000 }),
        fc.integer({ min: 2, max: 24 }),
        fc.constantFrom(-1, 0, 1),
        (total, axles, off) => {
          const { again, added } = shares(total, axles);
          for (const load of [again, added])
            expect(checkLoad(rating('GVWR', lb(total + off)), weight('gross', load)).verdict).toBe(
              off < 0 ? 'over' : 'within',
            );
        },
      ),
      { numRuns: 1000 },
    );
  });
  it('have labels that round half up, as the exact fraction does', () => {
    let ties = 0;
    for (const axles of [3, 6, 7, 9, 11]) {
      for (const limit of [2000, 4000, 6000, 8000, 9600, 14000]) {
        for (let load = 1; load <= 1200; load += 1) {
          const used = checkLoad(rating('GVWR', lb(limit)), weight('gross', shares(load, axles).again)).used;
          const tenths = 1000n * BigInt(load);
          if ((2n * tenths) % BigInt(limit) === 0n && tenths % BigInt(limit) !== 0n) {
            ties += 1;
            const halfUp = (2n * tenths + BigInt(limit)) / (2n * BigInt(limit));
            expect(showBrief(converted(null, used, '%').value, 1)).toBe(`${Number(halfUp) / 10} %`);
          }
        }
      }
    }
    expect(ties).toBeGreaterThan(1000);
  });
});

describe('tightest', () => {
  it('is empty for no checks, and one for one', () => {
    expect(tightest([])).toEqual([]);
    const only = gross(100, 1);
    expect(tightest([only])).toEqual([only]);
  });
  it('returns every check that ties, in the order given, however the shares were made', () => {
    const third = quotient('third', given('t', lb(7000)), constant(ratio(3)));
    const checks = [
      gross(21000, 7000),
      checkLoad(rating('GAWR', lb(7000)), weight('axle load', third)),
      gross(14000, 4000),
      checkLoad(rating('jack', product('limit', third, constant(ratio(3)))), weight('jack load', third)),
    ];
    expect(tightest(checks)).toEqual([checks[0], checks[1], checks[3]]);
  });
  it('is the greatest share, not the least reserve', () => {
    const small = checkLoad(rating('jack', lb(1000)), weight('jack load', lb(900)));
    expect(tightest([gross(14000, 13950), small, gross(100000, 89999)])).toHaveLength(1);
    expect(tightest([gross(14000, 12000), small])).toEqual([small]);
  });
  it('agrees with exact fractions for any checks', () => {
    const pairs = fc.array(fc.tuple(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 0, max: 40 })), {
      minLength: 1,
      maxLength: 12,
    });
    fc.assert(
      fc.property(pairs, (all) => {
        const made = all.map(([limit, load]) => gross(limit, load));
        const worst = all.filter(([limit, load]) =>
          all.every(([otherLimit, otherLoad]) => load * otherLimit >= otherLoad * limit),
        );
        expect(tightest(made)).toEqual(made.filter((_, i) => worst.includes(all[i] as [number, number])));
      }),
      { numRuns: 300 },
    );
  });
});

it('a note is a remark, with figures or without', () => {
  expect(note('Tag', 'It says so.')).toEqual({ tag: 'Tag', says: 'It says so.' });
  expect(note('Tag', 'It says so.', [constant(lb(1))]).figures).toHaveLength(1);
});
