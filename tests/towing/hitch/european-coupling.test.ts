/** European coupling values: the formulas of UN R55 as they are remembered (grade: memory), in floating point against the recorded steps. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CouplingQuestion, europeanCoupling } from '../../../src/towing/index.js';
import { convert, kg, mm, quantity } from '../../../src/units/index.js';
import { rightOf } from '../../helpers/either.js';
import { expectReplays } from '../../helpers/working.js';

const kN = (figure: number | string) => quantity(figure, 'kN');
const neededKilonewtons = (question: CouplingQuestion, id: string): number => {
  const check = rightOf(europeanCoupling(question)).checks.find((each) => each.id === id);
  if (check === undefined) throw new Error(`no ${id}`);
  expectReplays(check.reserve);
  return (convert(check.load.value, 'kg').value.toNumber() * 9.80665) / 1000;
};

describe('the values', () => {
  // Worked by hand with g = 9.81: 9.81 x 3.5 x 3.5 / 7 = 17.1675 kN; 9.81 x 2.5 x 3.5 / 6 = 14.30625 kN (from memory, no text at hand).
  it('D of two vehicles of 3.5 t is 17.17 kN, of 2.5 t before 3.5 t 14.31 kN', () => {
    const of = (t: number, r: number) =>
      neededKilonewtons({ plate: { d: kN(20) }, towVehicle: kg(t), trailer: kg(r) }, 'coupler/d');
    expect(of(3500, 3500)).toBeCloseTo(17.1675, 9);
    expect(of(2500, 3500)).toBeCloseTo(14.30625, 9);
  });
  it('V counts the square of X over L as 1 at least, and 1.8 with air springs', () => {
    const v = (deck: number, drawbar: number, suspension: 'air' | 'other') =>
      neededKilonewtons(
        { plate: { v: kN(40) }, onAxles: kg(9000), deckLength: mm(deck), drawbar: mm(drawbar), suspension },
        'coupler/v',
      );
    expect(v(7000, 5000, 'other')).toBeCloseTo(2.4 * 1.96 * 9, 9);
    expect(v(7000, 5000, 'air')).toBeCloseTo(1.8 * 1.96 * 9, 9);
    expect(v(4000, 5000, 'other')).toBeCloseTo(2.4 * 9, 9);
  });
  it('agree with the formulas in doubles for masses and lengths of any size', () => {
    const mass = fc.integer({ min: 500, max: 40_000 });
    const length = fc.integer({ min: 1000, max: 12_000 });
    fc.assert(
      fc.property(mass, mass, mass, length, length, (t, r, c, x, l) => {
        const question: CouplingQuestion = {
          plate: { d: kN(500), dc: kN(500), v: kN(900) },
          towVehicle: kg(t),
          trailer: kg(r),
          onAxles: kg(c),
          deckLength: mm(x),
          drawbar: mm(l),
        };
        const near = (id: string, wanted: number): void =>
          expect(neededKilonewtons(question, id) / wanted).toBeCloseTo(1, 9);
        near('coupler/d', (9.81 * t * r) / (t + r) / 1000);
        near('coupler/dc', (9.81 * t * c) / (t + c) / 1000);
        if (c > 3500) near('coupler/v', (2.4 * Math.max(1, (x / l) ** 2) * c) / 1000);
      }),
      { numRuns: 100, seed: 55 },
    );
  });
});

describe('the checks', () => {
  const pair = { towVehicle: kg(3500), trailer: kg(3500) };
  it('hold on the value itself and fail a hair below it', () => {
    const verdict = (d: string) => rightOf(europeanCoupling({ ...pair, plate: { d: kN(d) } })).checks[0]?.verdict;
    expect([verdict('17.1675'), verdict('17.1674'), verdict('17.2')]).toEqual(['within', 'over', 'within']);
  });
  it('compare S with the tongue load', () => {
    const verdict = (tongue: number) =>
      rightOf(europeanCoupling({ plate: { s: kg(150) }, tongue: kg(tongue) })).checks[0]?.verdict;
    expect([verdict(150), verdict(151)]).toEqual(['within', 'over']);
  });
  it('ask V above 3.5 t only, and say so', () => {
    const small = rightOf(
      europeanCoupling({ plate: { v: kN(10) }, onAxles: kg(3500), deckLength: mm(4000), drawbar: mm(3000) }),
    );
    expect([small.checks, small.notes.map(({ tag }) => tag)]).toEqual([[], ['VNotAsked']]);
    expect(small.decisions.at(-1)).toMatchObject({ comparison: '>', holds: false });
    const notes = (plate: object, onAxles: number) =>
      rightOf(europeanCoupling({ plate, onAxles: kg(onAxles), deckLength: mm(4000), drawbar: mm(3000) })).notes;
    expect([notes({ v: kN(99) }, 3501), notes({ dc: kN(99) }, 3500)]).toEqual([[], []]);
  });
  it('name what is missing and never pass it', () => {
    const { checks, notChecked } = rightOf(
      europeanCoupling({ plate: { d: kN(20), dc: kN(20), v: kN(20), s: kg(100) }, trailer: kg(3500) }),
    );
    expect(checks).toEqual([]);
    expect(notChecked.map(({ what }) => what)).toEqual([
      'drawbar pull against coupling D',
      'drawbar pull against coupling Dc',
      'drawbar bounce against coupling V',
      'tongue against coupling S',
    ]);
    // Any one of the three facts of V wanting, V is not asked.
    const facts = { onAxles: kg(9000), deckLength: mm(7000), drawbar: mm(5000) };
    for (const fact of ['onAxles', 'deckLength', 'drawbar'] as const) {
      const without = rightOf(europeanCoupling({ plate: { v: kN(40) }, ...facts, [fact]: undefined }));
      expect([without.checks, without.notChecked.map(({ what }) => what)]).toEqual([
        [],
        ['drawbar bounce against coupling V'],
      ]);
    }
    // So with D and Dc, of which each wants two masses.
    const of = (plate: object, facts: object) => {
      const { checks, notChecked } = rightOf(europeanCoupling({ plate, ...facts }));
      return [checks.length, notChecked.length];
    };
    const [truck, trailer, onAxles] = [{ towVehicle: kg(3500) }, { trailer: kg(3500) }, { onAxles: kg(3500) }];
    expect([of({ d: kN(20) }, truck), of({ d: kN(20) }, trailer)]).toEqual([
      [0, 1],
      [0, 1],
    ]);
    expect([of({ dc: kN(20) }, truck), of({ dc: kN(20) }, onAxles)]).toEqual([
      [0, 1],
      [0, 1],
    ]);
    expect(of({ d: kN(20), dc: kN(20) }, { ...truck, ...trailer, ...onAxles })).toEqual([2, 0]);
    expect(rightOf(europeanCoupling({ plate: {} }))).toMatchObject({ checks: [], notChecked: [] });
  });
});
