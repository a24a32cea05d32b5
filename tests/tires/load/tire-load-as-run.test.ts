/** What one tire may carry at the pressure it is run at. */
import { describe, expect, it } from 'vitest';
import {
  inflationTables,
  type Service,
  type Tire,
  tireLoadAsRun,
  tireLoadRating,
  tirePressureForLoad,
} from '../../../src/tires/index.js';
import { given, type Known } from '../../../src/trace/index.js';
import { kPa, lb, psi } from '../../../src/units/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';
import { expectReplays } from '../../helpers/working.js';

const single: Service = { fitment: 'single', on: 'trailer' };
const run = (tire: Tire, at: number, service = single): [number, string, string[]] => {
  const found = rightOf(tireLoadAsRun(tire, service, psi(at)));
  expectReplays(found.load);
  expect(found.load.value.value.lte(found.rating.rating.value.value)).toBe(true);
  return [found.load.value.value.toDecimalPlaces(2).toNumber(), found.from, found.notes.map(({ tag }) => tag)];
};

describe('tireLoadAsRun', () => {
  it('is the rating at the rated pressure and above, with a note above', () => {
    expect(run({ designation: 'ST225/75R15 LRD' }, 65)).toEqual([2540, 'rating', []]);
    expect(run({ designation: 'ST225/75R15 LRD' }, 70)).toEqual([2540, 'rating', ['PressureAboveRated']]);
  });
  it('is the printed load below it (ST-2)', () => {
    expect(run({ designation: 'ST225/75R15 LRD' }, 62)).toEqual([2380, 'table', []]);
  });
  it('keeps to the table that is named: below 62 psi ST-1 prints this size at 50, ST-2 at 60', () => {
    const of = (table: string) => run({ designation: 'ST225/75R15 LRD', table }, 62);
    expect([of('ST-1'), of('ST-2')]).toEqual([
      [2150, 'table', []],
      [2380, 'table', []],
    ]);
  });
  it('is an estimate where nothing is printed, and says so', () => {
    const tire = { designation: 'ST235/85R16 LRG', molded: { single: lb(4400), pressure: psi(110) } };
    expect(run(tire, 90)).toEqual([3740, 'estimate', ['MoldedDiffersFromTable', 'TablesDisagree', 'Estimate']]);
    expect(rightOf(tireLoadAsRun(tire, single, psi(90))).load.why.basis).toBe('estimated');
  });
  it('stays at the rating when a table gives more than the molding', () => {
    expect(run({ designation: 'ST225/75R15 LRD', molded: { single: lb(2000), pressure: psi(65) } }, 60)[0]).toBe(2000);
  });
  it('gives a weak tire no whole load below its molded pressure, and none less at more pressure', () => {
    const tire = { designation: 'LT235/85R16 LRD', molded: { single: lb(2368), pressure: psi(80) } };
    // LT-1 prints 2,623 lb at 65 psi for load range D; this tire carries 2,368 lb at 80 psi.
    expect(run(tire, 65)).toEqual([2000, 'estimate', ['MoldedDiffersFromTable', 'Estimate']]);
    const loads = Array.from({ length: 61 }, (_, i) => run(tire, 30 + i)[0]);
    expect(loads).toEqual([...loads].sort((a, b) => a - b));
    const strong = { ...tire, molded: { single: lb(3042), pressure: psi(80) } };
    const above = Array.from({ length: 31 }, (_, i) => run(strong, 60 + i)[0]);
    expect([above[5], above[6], above[20]]).toEqual([2623, 2623, 3042]);
    expect(above).toEqual([...above].sort((a, b) => a - b));
    const needed = tirePressureForLoad(rightOf(tireLoadRating(tire, single)), lb(2200));
    expect(rightOf(needed).pressure.value.value.toNumber()).toBe(80);
  });
  it('divides the printed load of a passenger tire as its rating', () => {
    const tire = { designation: 'P235/75R15 XL' };
    expect(run(tire, 41)[0]).toBe(1984.55);
    expect(run(tire, 38, single)[1]).toBe('estimate');
  });
  it('takes a dual load at a lower pressure from the dual column', () => {
    expect(run({ designation: '295/75R22.5 LRG' }, 90, { fitment: 'dual', on: 'trailer' })).toEqual([
      5000,
      'table',
      [],
    ]);
    expect(run({ designation: '295/75R22.5 LRG' }, 100, { fitment: 'dual', on: 'trailer' })).toEqual([
      5675,
      'rating',
      [],
    ]);
  });
  it('hands back every decision, and keeps the path of the pressure out of a table load', () => {
    const pressure = given('cold pressure', kPa(420), 'stated', 'axles.0.tire.pressure');
    const found = rightOf(tireLoadAsRun({ designation: 'ST225/75R15 LRD' }, single, pressure));
    expect(found.from).toBe('table');
    const molded = { designation: 'ST225/75R15 117/112N LRE', molded: { single: lb(2830), pressure: psi(80) } };
    const asMolded = rightOf(tireLoadAsRun(molded, single, psi(60)));
    expect(asMolded.rating.decisions.length).toBeGreaterThan(0);
    expect(asMolded.decisions).toEqual(expect.arrayContaining([...asMolded.rating.decisions]));
    expect(found.decisions.some(({ left }) => JSON.stringify(left).includes('axles.0.tire.pressure'))).toBe(true);
  });
  it('needs a rated pressure, and a pressure', () => {
    expect(
      leftOf(tireLoadAsRun({ designation: 'ST225/75R15', molded: { single: lb(2540) } }, single, psi(50))),
    ).toMatchObject({ tag: 'LoadRangeNeeded' });
    expect(leftOf(tireLoadAsRun({ designation: '11R22.5 144/142L LRG' }, single, psi(90)))).toMatchObject({
      tag: 'NotTabulated',
    });
    expect(leftOf(tireLoadAsRun({ designation: 'ST225/75R15 LRD' }, single, psi(0)))).toMatchObject({
      tag: 'NotPositive',
    });
  });
});

describe('tirePressureForLoad', () => {
  const asked = (tire: Tire, load: Known<'lb'>, service = single) =>
    tirePressureForLoad(rightOf(tireLoadRating(tire, service)), load);
  const needs = (tire: Tire, load: number, service = single): [number, number] => {
    const { pressure, carries } = rightOf(asked(tire, lb(load), service));
    expectReplays(pressure, carries);
    return [pressure.value.value.toNumber(), carries.value.value.toNumber()];
  };
  it('is the next printed step (ST-2)', () => {
    expect([needs({ designation: 'ST225/75R15 LRD' }, 2380), needs({ designation: 'ST225/75R15 LRD' }, 2381)]).toEqual([
      [60, 2380],
      [65, 2540],
    ]);
  });
  it('is the molded pressure above the last step below it, and what is molded with it, not the row of a stronger tire (ST-3: 65 psi 3,000 lb, 90 psi 3,500 lb)', () => {
    const tire = { designation: 'ST235/80R16 LRE', molded: { single: lb(3520), pressure: psi(80) } };
    expect([needs(tire, 3000), needs(tire, 3001), needs(tire, 3520)]).toEqual([
      [65, 3000],
      [80, 3520],
      [80, 3520],
    ]);
  });
  it('counts a passenger tire on a trailer for 1.10 times the load (49 CFR 571.120 S5.1.2)', () => {
    const at41 = rightOf(tireLoadAsRun({ designation: 'P235/75R15 XL' }, single, psi(41))).load.value.value.toNumber();
    expect(needs({ designation: 'P235/75R15 XL' }, Math.floor(at41))).toEqual([41, at41]);
  });
  it('takes the dual column for duals', () => {
    const onDuals = (load: number): [number, number] =>
      needs({ designation: '295/75R22.5 LRG' }, load, { fitment: 'dual', on: 'trailer' });
    expect([onDuals(5000), onDuals(5001)]).toEqual([
      [85, 5000],
      [100, 5675],
    ]);
  });
  it('is the rated pressure where nothing is printed below it', () => {
    expect(needs({ designation: 'ST205/90R15 LRE', molded: { single: lb(2830), pressure: psi(80) } }, 1000)).toEqual([
      80, 2830,
    ]);
  });
  it('refuses a load above the rating, a load of nothing, and a tire whose rated pressure nobody says', () => {
    const ask = (tire: Tire, load: number) => leftOf(asked(tire, lb(load)));
    expect(ask({ designation: 'ST225/75R15 LRD' }, 2541)).toEqual({
      chapter: 'tires',
      tag: 'LoadAboveRating',
      load: '2,541 lb',
      rating: '2,540 lb',
    });
    expect(ask({ designation: '185R14C 98N' }, 1653.5)).toMatchObject({ load: '1,654 lb', rating: '1,653 lb' });
    expect(ask({ designation: 'ST225/75R15 LRD' }, 0).tag).toBe('NotPositive');
    expect(ask({ designation: 'ST235/80R16', molded: { single: lb(3520) } }, 2000).tag).toBe('LoadRangeNeeded');
  });
  it('agrees with the load as run over every printed row: the tire carries the load at the pressure it needs', () => {
    const rows = inflationTables.flatMap(({ rows: printed }) => printed).filter(([, letter]) => letter !== '');
    let rowsAsked = 0;
    for (const [size, letter, pressure] of rows) {
      const tire = { designation: `${size} LR${letter}` };
      const run = tireLoadAsRun(tire, single, psi(pressure));
      if (run._tag === 'Left' || run.right.from === 'estimate') continue;
      const load = run.right.load;
      const needed = rightOf(asked(tire, load));
      expect(needed.pressure.value.value.lte(pressure), `${size} ${letter} at ${pressure}`).toBe(true);
      expect(
        rightOf(tireLoadAsRun(tire, single, needed.pressure)).load.value.value.gte(
          load.value.value.times('0.999999999999'),
        ),
        `${size} ${letter}`,
      ).toBe(true);
      rowsAsked += 1;
    }
    expect(rowsAsked).toBeGreaterThan(40);
  });
});
