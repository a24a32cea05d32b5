/** What axles and tires carry in each way of standing, in a whole assessment: level, off level, bars set, the heavier side; payload and pressures with them. */
import { describe, expect, it } from 'vitest';
import { type Assessment, assess, report } from '../../src/assessment/index.js';
import { plain, rightOf } from '../helpers/either.js';
import { changed, tiltDeck } from '../helpers/specs.js';
import { expectReplays } from '../helpers/working.js';

const change = (...changes: readonly (readonly [string, unknown])[]): Assessment =>
  rightOf(assess(changes.reduce((spec, [path, value]) => changed(spec, path, value), tiltDeck())));
const loadOf = ({ checks }: Assessment, what: string): number => {
  const found = checks.find((check) => check.what === what);
  expect(found, `${what}, among ${checks.map((check) => check.what).join('; ')}`).toBeDefined();
  return plain(found!.load);
};
const bound = ({ carry }: Assessment, name: string): number =>
  plain(carry!.payload.governed.bounds.find((each) => each.name === name)!.limit);

// Tongue load, ball to axles, wheelbase and overhang of the example; half of what the front axle lost comes back.
const [T, a, o] = [12650 - 2276520 / 204, 204, 54];
const putBack = (0.5 * o) / (a + o);

describe('spring bars set (statics)', () => {
  const set = change(['tow.bars', { restore: '50 %' }]);
  it('load each axle and its tires besides: the part p o / (a + o) of the tongue load goes back on the axles', () => {
    const axles = 12650 - T + putBack * T;
    expect(loadOf(set, 'axle load against axle 1 GAWR, bars on')).toBeCloseTo(axles / 2, 6);
    expect(loadOf(set, 'tire load against axle 2 tire, bars on')).toBeCloseTo(axles / 4, 6);
    expectReplays(...set.checks.flatMap(({ load, reserve, used }) => [load, reserve, used]));
  });
  it('come onto both sides alike', () => {
    const level = loadOf(set, 'tire load against axle 1 heavier side tire');
    expect(level).toBeCloseTo((12650 - T) / 4 + (9000 * 1) / 90 / 2, 6);
    expect(loadOf(set, 'tire load against axle 1 heavier side tire, bars on')).toBeCloseTo(
      level + (putBack * T) / 4,
      6,
    );
  });
  it('find an axle over its GAWR that is within with the bars off', () => {
    const gawr = '5,590 lb';
    const spec = change(
      ['tow.bars', { restore: '50 %' }],
      ['trailer.axles.0.gawr', gawr],
      ['trailer.axles.1.gawr', gawr],
    );
    expect(
      spec.checks.filter(({ verdict, what }) => verdict === 'over' && what.includes('GAWR')).map(({ what }) => what),
    ).toEqual(['axle load against axle 1 GAWR, bars on', 'axle load against axle 2 GAWR, bars on']);
  });
  it('leave the axles less for payload: limit / (1 - t (1 - k)) - W0', () => {
    expect(bound(set, 'GAWR')).toBeCloseTo(14000 / (1 - 0.12 * (1 - putBack)) - 3650, 6);
    expect(bound(set, 'GVWR')).toBe(10350);
    expect(bound(change(), 'GAWR')).toBeCloseTo(14000 / 0.88 - 3650, 6);
  });
  it('are said not to be in the window', () => {
    expect(set.notes.some(({ tag }) => tag === 'WindowWithBarsOff')).toBe(true);
    expect(change().notes.some(({ tag }) => tag === 'WindowWithBarsOff')).toBe(false);
  });
});

describe('tires at the pressure they run', () => {
  const low = [
    ['trailer.axles.0.tires.pressure', '65 psi'],
    ['trailer.axles.1.tires.pressure', '65 psi'],
  ] as const;
  it('set the rear end of the window when they carry less than the ratings (3,000 lb a tire at 65 psi, table ST-3)', () => {
    const { place } = change(
      ...low,
      ['trailer.guideline', { low: '1 %', high: '15 %', source: 'none of weight' }],
      ['cargo.0.weight', '9,800 lb'],
    );
    expect(place.window?.upper.setBy.map(({ name }) => name)).toEqual(['tires of the axle group']);
    expect(plain(place.window!.upper.axleLoad)).toBeCloseTo(12000, 9);
  });
  it('limit payload and window where the pressure of one axle alone is known', () => {
    // Axles that share alike: the soft tires of the front one fill first, and the group carries twice what they carry.
    const soft = [
      ['trailer.axles.0.tires.pressure', '45 psi'],
      ['trailer.axles.1.tires.pressure', undefined],
    ] as const;
    const spec = change(...soft, ['trailer.guideline', { low: '1 %', high: '15 %', source: 'none of weight' }]);
    const each = plain(spec.stack.tires[0]!.asRun!);
    expect(each).toBeLessThan(3000);
    expect(bound(spec, 'tires')).toBeCloseTo((4 * each) / 0.88 - 3650, 6);
    expect(plain(spec.carry!.payload.most)).toBe(bound(spec, 'tires'));
    expect(spec.place.window!.limits.map(({ name }) => name)).toContain('tires of the axle group');
    expectReplays(spec.carry!.payload.most, ...spec.place.window!.limits.map(({ at }) => at));
    // Loaded to it at that share, no tire is over; ten pounds more, and the soft ones are.
    const tires = (more: number) => {
      const weight = plain(spec.carry!.payload.most) + more;
      const axles = 0.88 * (3650 + weight);
      const loaded = change(
        ...soft,
        ['cargo.0.weight', `${weight.toFixed(6)} lb`],
        ['cargo.0.at', `${(((axles - 3130) * 204) / weight).toFixed(6)} in`],
        ['cargo.0.front', undefined],
        ['cargo.0.balancePoint', undefined],
      );
      return loaded.checks
        .filter(({ what, verdict }) => what.startsWith('tire load') && !what.includes('heavier') && verdict === 'over')
        .map(({ what }) => what);
    };
    expect([tires(-1), tires(10)]).toEqual([[], ['tire load against axle 1 tire']]);
  });
  it('leave out an axle whose tires nobody rated, and not the others', () => {
    const spec = change(['trailer.axles.0.tires.pressure', '45 psi'], ['trailer.axles.1.tires', undefined]);
    expect(bound(spec, 'tires')).toBeCloseTo((4 * plain(spec.stack.tires[0]!.asRun!)) / 0.88 - 3650, 6);
    const sprung = change(
      ['trailer.axles.0.tires.pressure', '45 psi'],
      ['trailer.axles.1.tires', undefined],
      ['trailer.sharing', 'independent'],
      ['trailer.axles.0.rate', '2,000 lb/in'],
      ['trailer.axles.1.rate', '3,000 lb/in'],
    );
    expect(bound(sprung, 'tires')).toBeCloseTo((2 * plain(sprung.stack.tires[0]!.asRun!) * 2.5) / 0.88 - 3650, 6);
  });
  it('limit the payload of axles that share by their springs', () => {
    const sprung = [
      ['trailer.sharing', 'independent'],
      ['trailer.axles.0.rate', '2,000 lb/in'],
      ['trailer.axles.1.rate', '3,000 lb/in'],
    ] as const;
    // The rear axle takes three fifths: its tires are full at 6,000 lb, the group carries 10,000 lb.
    expect(bound(change(...low, ...sprung), 'tires')).toBeCloseTo(10000 / 0.88 - 3650, 6);
    expect(bound(change(...sprung), 'axle 2')).toBeCloseTo(7000 / 0.6 / 0.88 - 3650, 6);
  });
});

describe('independent axles off level', () => {
  it('are asked with their tires: what the axle is over the mean comes onto both of its tires', () => {
    const spec = change(
      ['trailer.sharing', 'independent'],
      ['trailer.axles.0.rate', '2,000 lb/in'],
      ['trailer.axles.1.rate', '2,000 lb/in'],
      ['trailer.ballAboveLevel', '2 in'],
    );
    const rear = plain(spec.attitude.offLevel!.loads[1]!);
    expect(loadOf(spec, 'axle load against axle 2 GAWR, off level')).toBe(rear);
    expect(loadOf(spec, 'tire load against axle 2 tire, off level')).toBeCloseTo(rear / 2, 9);
    expect(loadOf(spec, 'tire load against axle 2 heavier side tire, off level')).toBeCloseTo(rear / 2 + 50, 6);
  });
});

describe('the cold pressure needed', () => {
  const pressure = ({ pressures }: Assessment): readonly number[] =>
    pressures.map(({ needed }) => plain(needed.pressure));
  it('is that of the tire with the heaviest load: above the printed 3,000 lb at 65 psi the molded 80 psi, never the 90 psi of another tire (table ST-3)', () => {
    expect(pressure(change())).toEqual([65, 65]);
    const off = change(['cargo.0.rightOfMiddle', '5 in']);
    expect(loadOf(off, 'tire load against axle 1 tire')).toBeLessThan(3000);
    expect(loadOf(off, 'tire load against axle 1 heavier side tire')).toBeGreaterThan(3000);
    expect(off.pressures.map(({ needed: { pressure: at, carries } }) => [plain(at), plain(carries)])).toEqual([
      [80, 3520],
      [80, 3520],
    ]);
    expectReplays(...off.pressures.flatMap(({ needed }) => [needed.pressure, needed.carries]));
  });
  it('is not told of an overloaded tire, whose check is over', () => {
    const off = change(['cargo.0.rightOfMiddle', '16 in']);
    expect(off.pressures).toEqual([]);
    expect(off.checks.filter(({ verdict }) => verdict === 'over').map(({ what }) => what)).toEqual([
      'tire load against axle 1 heavier side tire',
      'tire load against axle 2 heavier side tire',
    ]);
  });
  it('is open, with the reason, where nothing says at what pressure the rating holds', () => {
    const tires = { designation: 'ST235/80R16', count: 2, fitment: 'single', molded: { single: '3,520 lb' } };
    const open = change(['trailer.axles.0.tires', tires]).notChecked.filter(({ what }) =>
      what.startsWith('cold pressure'),
    );
    expect(open.map(({ what, missing }) => `${what}: ${missing}`)).toEqual([
      expect.stringMatching(/^cold pressure axle 1 tires need: a printed figure \(.*no load range/),
    ]);
  });
  it('is printed beside the word that the placard governs', () => {
    expect(report(change()).replace(/\s+/g, ' ')).toContain('Tires run at the cold pressure of the placard');
  });
});
