/** What one tire may carry at the pressure it is run at. */
import { describe, expect, it } from 'vitest';
import { type Service, type Tire, tireLoadAsRun } from '../../src/tires/index.js';
import { given } from '../../src/trace/index.js';
import { kPa, lb, psi } from '../../src/units/index.js';
import { leftOf, rightOf } from '../helpers/either.js';
import { expectReplays } from '../helpers/working.js';

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
  it('is an estimate where nothing is printed, and says so', () => {
    const tire = { designation: 'ST235/85R16 LRG', molded: { single: lb(4400), pressure: psi(110) } };
    expect(run(tire, 90)).toEqual([3740, 'estimate', ['Estimate']]);
    expect(rightOf(tireLoadAsRun(tire, single, psi(90))).load.why.basis).toBe('estimated');
  });
  it('stays at the rating when a table gives more than the molding', () => {
    expect(run({ designation: 'ST225/75R15 LRD', molded: { single: lb(2000), pressure: psi(65) } }, 60)[0]).toBe(2000);
  });
  it('divides the printed load of a passenger tire as its rating', () => {
    const tire = { designation: 'P235/75R15 XL' };
    expect(run(tire, 41)[0]).toBe(1984.55);
    expect(run(tire, 38, single)[1]).toBe('estimate');
  });
  it('takes a dual load at a lower pressure from the dual column', () => {
    expect(run({ designation: '295/75R22.5 LRG' }, 90, { fitment: 'dual', on: 'trailer' })).toEqual([5000, 'table', []]);
    expect(run({ designation: '295/75R22.5 LRG' }, 100, { fitment: 'dual', on: 'trailer' })).toEqual([5675, 'rating', []]);
  });
  it('hands back every decision, and keeps the path of the pressure out of a table load', () => {
    const pressure = given('cold pressure', kPa(420), 'stated', 'axles.0.tire.pressure');
    const found = rightOf(tireLoadAsRun({ designation: 'ST225/75R15 LRD' }, single, pressure));
    expect(found.from).toBe('table');
    expect(found.decisions.some(({ left }) => JSON.stringify(left).includes('axles.0.tire.pressure'))).toBe(true);
  });
  it('needs a rated pressure, and a pressure', () => {
    expect(leftOf(tireLoadAsRun({ designation: 'ST225/75R15', molded: { single: lb(2540) } }, single, psi(50)))).toMatchObject({ tag: 'LoadRangeNeeded' });
    expect(leftOf(tireLoadAsRun({ designation: '11R22.5 144/142L LRG' }, single, psi(90)))).toMatchObject({ tag: 'NotTabulated' });
    expect(leftOf(tireLoadAsRun({ designation: 'ST225/75R15 LRD' }, single, psi(0)))).toMatchObject({ tag: 'NotPositive' });
  });
});
