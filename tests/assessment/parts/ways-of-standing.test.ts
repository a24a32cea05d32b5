/** What axles and tires carry in each way of standing, in a whole assessment: level, off level, bars set, the heavier side; payload and pressures with them. */
import { describe, expect, it } from 'vitest';
import { type Assessment, assess } from '../../../src/assessment/index.js';
import { report } from '../../../src/print/index.js';
import { plain, rightOf } from '../../helpers/either.js';
import { changed, tiltDeck } from '../../helpers/specs.js';
import { expectReplays } from '../../helpers/working.js';

const change = (...changes: readonly (readonly [string, unknown])[]): Assessment =>
  rightOf(assess(changes.reduce((spec, [path, value]) => changed(spec, path, value), tiltDeck())));
const loadOf = ({ checks }: Assessment, what: string): number => {
  const found = checks.find((check) => check.what === what);
  expect(found, `${what}, among ${checks.map((check) => check.what).join('; ')}`).toBeDefined();
  return plain(found!.load);
};
const bound = ({ payload: carry }: Assessment, name: string): number =>
  plain(carry!.anywhere!.limits.find((each) => each.name === name)!.limit);

// Tongue load, ball to axles, wheelbase and overhang of the example; half of what the front axle lost comes back.
const [T, a, o] = [12650 - 2276520 / 204, 204, 54];
const shareReturnedByBars = (0.5 * o) / (a + o);

describe('spring bars set (statics)', () => {
  const set = change(['tow.bars', { restore: '50 %' }]);
  it('load each axle and its tires besides: the part p o / (a + o) of the tongue load goes back on the axles', () => {
    const axles = 12650 - T + shareReturnedByBars * T;
    expect(loadOf(set, 'axle load against axle 1 GAWR, bars on')).toBeCloseTo(axles / 2, 6);
    expect(loadOf(set, 'tire load against axle 2 tire, bars on')).toBeCloseTo(axles / 4, 6);
    expectReplays(...set.checks.flatMap(({ load, reserve, used }) => [load, reserve, used]));
  });
  it('name the load of each axle by its number and the way of standing', () => {
    for (const axle of [1, 2])
      expect(
        set.checks.find(({ what }) => what === `axle load against axle ${axle} GAWR, bars on`)?.load.why.symbol,
      ).toBe(`axle ${axle} load, bars on`);
  });
  it('come onto both sides alike', () => {
    const level = loadOf(set, 'tire load against axle 1 heavier side tire');
    expect(level).toBeCloseTo((12650 - T) / 4 + (9000 * 1) / 90 / 2, 6);
    expect(loadOf(set, 'tire load against axle 1 heavier side tire, bars on')).toBeCloseTo(
      level + (shareReturnedByBars * T) / 4,
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
    expect(bound(set, 'GAWR bars on')).toBeCloseTo(14000 / (1 - 0.12 * (1 - shareReturnedByBars)) - 3650, 6);
    expect(bound(set, 'GVWR')).toBe(10350);
    expect(bound(change(), 'GAWR')).toBeCloseTo(14000 / 0.88 - 3650, 6);
  });
  it('bound the window too', () => {
    const names = ({ placement }: Assessment): string[] => placement.pieces[0]!.window.limits.map(({ name }) => name);
    expect(names(set)).toEqual(expect.arrayContaining(['GAWR', 'GAWR bars on', 'tires bars on']));
    expect(names(change()).filter((name) => name.includes('bars'))).toEqual([]);
  });
});

describe('tires at the pressure they run', () => {
  const low = [
    ['trailer.axles.0.tires.pressure', '65 psi'],
    ['trailer.axles.1.tires.pressure', '65 psi'],
  ] as const;
  it('set the rear end of the window when they carry less than the ratings (3,000 lb a tire at 65 psi, table ST-3)', () => {
    const { placement: place } = change(
      ...low,
      ['trailer.guideline', { low: '1 %', high: '15 %', source: 'none of weight' }],
      ['cargo.0.weight', '9,800 lb'],
      ['trailer.track', undefined],
    );
    expect(place.pieces[0]!.window.upper.setBy.map(({ name }) => name)).toEqual(['tires']);
    expect(plain(place.pieces[0]!.window.upper.axleLoad)).toBeCloseTo(12000, 9);
  });
  it('limit payload and window where the pressure of one axle alone is known', () => {
    // Axles that share alike: the soft tires of the front one fill first, and the group carries twice what they carry.
    const soft = [
      ['trailer.axles.0.tires.pressure', '45 psi'],
      ['trailer.axles.1.tires.pressure', undefined],
      ['trailer.track', undefined],
    ] as const;
    const spec = change(...soft, ['trailer.guideline', { low: '1 %', high: '15 %', source: 'none of weight' }]);
    const each = plain(spec.runningGear.tires[0]!.asRun!);
    expect(each).toBeLessThan(3000);
    expect(bound(spec, 'tires')).toBeCloseTo((4 * each) / 0.88 - 3650, 6);
    expect(plain(spec.payload!.anywhere!.weight)).toBe(bound(spec, 'tires'));
    expect(spec.placement.pieces[0]!.window.limits.map(({ name }) => name)).toContain('tires');
    expectReplays(spec.payload!.anywhere!.weight, ...spec.placement.pieces[0]!.window.limits.map(({ at }) => at));
    // Loaded to it at that share, no tire is over; ten pounds more, and the soft ones are.
    const tires = (more: number) => {
      const weight = plain(spec.payload!.anywhere!.weight) + more;
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
    expect(bound(spec, 'tires')).toBeCloseTo((4 * plain(spec.runningGear.tires[0]!.asRun!)) / 0.88 - 3650, 6);
    const sprung = change(
      ['trailer.axles.0.tires.pressure', '45 psi'],
      ['trailer.axles.1.tires', undefined],
      ['trailer.sharing', 'independent'],
      ['trailer.axles.0.rate', '2,000 lb/in'],
      ['trailer.axles.1.rate', '3,000 lb/in'],
    );
    expect(bound(sprung, 'tires')).toBeCloseTo((2 * plain(sprung.runningGear.tires[0]!.asRun!) * 2.5) / 0.88 - 3650, 6);
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
    const rear = plain(spec.stance.offLevel!.loads[1]!);
    expect(loadOf(spec, 'axle load against axle 2 GAWR, off level')).toBe(rear);
    expect(loadOf(spec, 'tire load against axle 2 tire, off level')).toBeCloseTo(rear / 2, 9);
    expect(loadOf(spec, 'tire load against axle 2 heavier side tire, off level')).toBeCloseTo(rear / 2 + 50, 6);
  });
});

describe('the hitch with the ball off level (statics)', () => {
  // Two axles of rate k at 187 and 221 in: what both lose the tongue takes, k dh (2 - (a1 + a2)^2 / (a1^2 + a2^2)).
  const change1 = (dh: number): number => 2000 * dh * (2 - 408 ** 2 / (187 ** 2 + 221 ** 2));
  const sprung = (ball: string) =>
    [
      ['trailer.sharing', 'independent'],
      ['trailer.axles.0.rate', '2,000 lb/in'],
      ['trailer.axles.1.rate', '2,000 lb/in'],
      ['trailer.ballAboveLevel', ball],
    ] as const;
  const high = change(...sprung('4 in'));
  const tongue = T + change1(4);
  it('asks every rating that the tongue load presses on', () => {
    const onBall = tongue + 60;
    const loads: readonly (readonly [string, number])[] = [
      ['tongue against coupler tongue', tongue],
      ['tongue against receiver tongue', tongue],
      ['tongue against ball mount tongue', tongue],
      ['tongue against tow vehicle tongue', tongue],
      ['tow vehicle hitched against tow vehicle GVWR', 8800 + onBall],
      ['tow vehicle front axle against tow vehicle front GAWR', 5150 - (onBall * 54) / 176],
      ['tow vehicle rear axle against tow vehicle rear GAWR', 3650 + onBall * (1 + 54 / 176)],
      ['tow vehicle load against occupant and cargo placard', 650 + onBall],
    ];
    for (const [what, load] of loads) expect(loadOf(high, `${what}, off level`), what).toBeCloseTo(load, 6);
    expect(high.checks.filter(({ what }) => what.includes('gross') && what.includes('off level'))).toEqual([]);
    expect(plain(high.tow.offLevel!.tongue)).toBeCloseTo(tongue, 6);
    expectReplays(...high.checks.flatMap(({ load, reserve, used }) => [load, reserve, used]));
    expect(report(high)).toMatch(/tongue load, ball off level \.+ +1,601 lb/);
  });
  it('finds a coupler over its tongue rating that is within level, with a tow vehicle and without', () => {
    for (const without of [[], [['tow', undefined]]] as const) {
      const spec = change(
        ...sprung('4 in'),
        ['trailer.coupler.tongue', '1,500 lb'],
        ['tow.ballMount.tongue', '1,700 lb'],
        ...without,
      );
      expect([
        spec.verdict !== 'over',
        spec.checks.filter(({ verdict }) => verdict === 'over').map(({ what }) => what),
      ]).toEqual([false, ['tongue against coupler tongue, off level']]);
    }
  });
  it('finds the ball lifted that presses level', () => {
    const low = change(...sprung('-2 in'), ['cargo.0.front', '155 in']);
    expect(plain(low.weights.balance!.tongue)).toBeGreaterThan(0);
    expect(plain(low.tow.offLevel!.tongue)).toBeCloseTo(520 - (9000 * 11) / 204 + change1(-2), 6);
    expect([low.verdict !== 'over', low.uplift.lifted.map(({ what }) => what)]).toEqual([false, ['tongue off level']]);
    expect(report(low).replace(/\s+/g, ' ')).toContain(
      'OVER: no rating is exceeded, but tongue off level lifts. Lifts tongue off level: ',
    );
    expect(change(...sprung('-1 in'), ['cargo.0.front', '155 in']).uplift.lifted).toEqual([]);
  });
  it('takes half of what the tongue takes off each side', () => {
    const { uplift, stance: attitude } = high;
    for (const side of ['left', 'right'] as const)
      expect(plain(uplift.mustPress.find(({ what }) => what === `${side} side off level`)!.load)).toBeCloseTo(
        plain(attitude.sides![side]) - change1(4) / 2,
        6,
      );
  });
  it('does not refuse a tongue that would weigh more than the trailer', () => {
    const stiff = change(
      ...sprung('60 in'),
      ['trailer.axles.0.rate', '20,000 lb/in'],
      ['trailer.axles.1.rate', '20,000 lb/in'],
    );
    expect(plain(stiff.tow.offLevel!.tongue)).toBeGreaterThan(12650);
    expect(stiff.uplift.lifted.map(({ what }) => what)).toContain('tow vehicle front axle off level');
  });

  describe('and the bars set', () => {
    const both = change(...sprung('2 in'), ['tow.bars', { restore: '50 %' }]);
    const onto = shareReturnedByBars * T;
    it('puts what the bars put on the axles on top of what stands there off level', () => {
      const rear = plain(both.stance.offLevel!.loads[1]!) + onto / 2;
      expect(loadOf(both, 'axle load against axle 2 GAWR, bars on and off level')).toBeCloseTo(rear, 6);
      expect(loadOf(both, 'tire load against axle 2 tire, bars on and off level')).toBeCloseTo(rear / 2, 6);
      expect(loadOf(both, 'tire load against axle 2 heavier side tire, bars on and off level')).toBeCloseTo(
        rear / 2 + 50,
        6,
      );
      const front = 5150 - ((T + change1(2) + 60) * 54) / 176 + (0.5 * T * 54) / 176;
      expect(loadOf(both, 'tow vehicle front axle against tow vehicle front GAWR, bars on and off level')).toBeCloseTo(
        front,
        6,
      );
      expect(both.notes.filter(({ tag }) => tag === 'BarsOffLevel')).toHaveLength(1);
      expectReplays(
        ...both.checks.flatMap(({ load, reserve, used }) => [load, reserve, used]),
        ...both.uplift.mustPress.map(({ load }) => load),
      );
    });
    it('finds an axle over that is within with either alone', () => {
      const over = change(
        ...sprung('2 in'),
        ['tow.bars', { restore: '50 %' }],
        ['trailer.axles.1.gawr', '5,940 lb'],
      ).checks.filter(({ verdict }) => verdict === 'over');
      expect(over.map(({ what }) => what)).toEqual(['axle load against axle 2 GAWR, bars on and off level']);
    });
    it('finds the rear axle of the tow vehicle that the bars lift', () => {
      // Set for a tongue of 1,491 lb they take p T o (a + o + b) / ((a + o) b) = 767 lb off it, p 99 %; with the ball 50 in low the tongue brings back 115 lb and the rest of the front's loss.
      const lifts = (restore: string) =>
        change(...sprung('-50 in'), ['tow.bars', { restore }], ['tow.rear', '500 lb'], ['tow.hitchHardware', '0 lb']);
      const rear = (p: number): number =>
        500 + (T + change1(-50)) * (1 + 54 / 176) - (p * T * 54 * (204 + 54 + 176)) / ((204 + 54) * 176);
      const loadOn = ({ uplift }: Assessment): number =>
        plain(uplift.mustPress.find(({ what }) => what === 'tow vehicle rear axle bars on and off level')!.load);
      expect([loadOn(lifts('99 %')), loadOn(lifts('50 %'))]).toEqual([
        expect.closeTo(rear(0.99), 6),
        expect.closeTo(rear(0.5), 6),
      ]);
      expect(
        ['99 %', '50 %'].map((restore) =>
          lifts(restore).uplift.lifted.some(({ what }) => what.startsWith('tow vehicle rear axle')),
        ),
      ).toEqual([true, false]);
    });
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
