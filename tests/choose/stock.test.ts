import { describe, expect, it } from 'vitest';
import { type Assessment, assessJson, ruleFindings } from '../../src/assessment/index.js';
import { dutyOf, linesAsLimits } from '../../src/choose/index.js';
import { payloadOf } from '../../src/choose/payload-of.js';
import { changed as changedAll } from '../../src/study/index.js';
import { lb } from '../../src/units/index.js';
import { leftOf, plain, rightOf } from '../helpers/either.js';
import { heavier, tiltDeck } from '../helpers/specs.js';
import { fitStock } from '../helpers/untyped.js';
import { proveStock } from '../proofs/stock.js';

const legs = { 'trailer.rearLegs': '12,000 lb' };
const yard = (): unknown => changedAll(tiltDeck(), legs);
const { tow, cargo } = tiltDeck() as unknown as { tow: unknown; cargo: readonly Record<string, unknown>[] };
const excavator = cargo[0] as Record<string, unknown>;

describe('fitStock', () => {
  it('gives the best verdict of all places at whole inches, of one piece and of two', () => {
    const { figures, against } = proveStock(8, 51, 7);
    expect(against).toEqual([]);
    expect(Math.min(figures.within ?? 0, figures['not within'] ?? 0)).toBeGreaterThan(0);
  }, 300_000);

  it('sorts what fits by size, names the unreadable, and tells the payload at the share of the place', () => {
    const stock = {
      sixteen: changedAll(heavier(), legs),
      fourteen: yard(),
      torn: { trailer: { hitch: 'ball' } },
      short: changedAll(yard(), { 'trailer.deck.rear': '200 in' }),
    };
    const { fits, others, failed } = rightOf(fitStock({ stock, tow, cargo: [excavator] }));
    expect(fits.map(({ name }) => name)).toEqual(['fourteen', 'sixteen']);
    expect(failed.map(({ name }) => name)).toEqual(['torn']);
    expect(others.map(({ name, reason }) => [name, reason])).toEqual([
      ['short', 'the pieces are longer than the deck'],
    ]);
    const one = fits[0]!;
    const share = one.assessment.weights.balance!.tongueShare;
    const again = assessJson(
      changedAll(stock.fourteen, {
        tow,
        cargo: [{ ...excavator, front: `${one.fronts?.[0]} in` }],
        tongueShare: `${share.value.value.times(100).toDecimalPlaces(4).toFixed()} %`,
      }),
    );
    expect(plain(one.payload!)).toBe(plain(payloadOf(rightOf(again))!));
  });

  it('wants a payload with something left of it', () => {
    const ask = (payload: number, reserve = 0) =>
      rightOf(
        fitStock({
          stock: { it: yard() },
          tow,
          cargo: [excavator],
          want: { payload: lb(payload), reserve: lb(reserve) },
        }),
      );
    const carries = Math.floor(plain(ask(1).fits[0]!.payload!));
    expect(ask(carries).fits).toHaveLength(1);
    expect(ask(carries, 1).others[0]?.reason).toBe('its payload falls short by 1 lb');
    expect(ask(carries, 101).others[0]?.reason).toBe('its payload falls short by 101 lb');
  });

  it('says of a payload that is wanted and not known that it is not known', () => {
    const stock = { it: changedAll(yard(), { 'trailer.curb': undefined }) };
    const asked = (want: object) => rightOf(fitStock({ stock, tow, cargo: [excavator], want })).others[0]?.reason;
    expect(asked({ payload: lb(1) })).toBe('its payload is not known');
    expect(asked({})).not.toBe('its payload is not known');
  });

  it('keeps to lines that are named', () => {
    const applies = ruleFindings(rightOf(assessJson(yard())).rules).find(({ outcome }) => outcome === 'applies')!;
    const { others } = rightOf(
      fitStock({ stock: { it: yard() }, tow, cargo: [excavator], want: { lines: [applies.rule.id] } }),
    );
    expect(others[0]?.reason).toMatch(/^crosses /);
  });

  it('a limit that is named is one line as long as it is kept, and a reason once it is crossed', () => {
    const wide = (width: string) =>
      rightOf(
        fitStock({
          stock: { it: changedAll(yard(), { 'trailer.width': width }) },
          tow,
          cargo: [excavator],
          want: { lines: ['width'] },
        }),
      );
    expect(wide('102 in').others.map(({ reason }) => reason)).toEqual([]);
    expect(wide('103 in').others[0]?.reason).toMatch(/^crosses overall width, National Network \(overall width 103 in/);
  });

  it('names the part that is too weak wherever the pieces stand, and no load of a bad place', () => {
    const weak = (i: number) => ({ [`trailer.axles.${i}.brakes`]: { left: '2,000 lb', right: '2,000 lb' } });
    const stock = { it: changedAll(yard(), { ...weak(0), ...weak(1), 'trailer.jack': undefined }) };
    const [it] = rightOf(fitStock({ stock, tow, cargo: [excavator] })).others;
    // Four brakes for 2,000 lb each against the GVWR; it is 1.75 times their capacity wherever the machine stands.
    expect(it?.reason).toBe('braked weight against brake capacity: 14,000 lb on 8,000 lb');
  });

  it('names what is over where the pieces would lift the tongue on the whole deck', () => {
    // A deck behind the axles: the tongue would be 520 - 9,000 x (266 - 204) / 204 lb at the best.
    const behind = changedAll(yard(), {
      'trailer.deck': { front: '206 in', rear: '380 in' },
      'trailer.curb': { weight: '3,650 lb', tongue: '520 lb' },
      'trailer.length': undefined,
    });
    const { others, failed } = rightOf(fitStock({ stock: { behind }, tow, cargo: [excavator] }));
    expect(failed).toEqual([]);
    expect(others.map(({ verdict, fronts }) => [verdict, fronts])).toEqual([['over', [206]]]);
  });

  it('says what a hitch part would have to be rated for where that alone puts it right', () => {
    const weak = changedAll(tow, { 'ballMount.tongue': '900 lb' });
    const { others } = rightOf(fitStock({ stock: { it: yard() }, tow: weak, cargo: [excavator] }));
    expect(others[0]?.reason).toMatch(/^tongue against ball mount tongue: /);
    expect(others[0]?.hitchPart).toMatch(
      /^fit another ball mount rated for at least 1,\d00 lb tongue|^fit another ball mount/,
    );
  });

  it('places two pieces that stand clear of each other', () => {
    const pair = [
      { ...excavator, weight: '5,000 lb', length: '120 in', balancePoint: '50 in' },
      { name: 'roller', weight: '2,600 lb', length: '90 in', balancePoint: '45 in' },
    ];
    const { fits, others } = rightOf(fitStock({ stock: { it: yard() }, tow, cargo: pair }));
    const [a, b] = (fits[0] ?? others[0])!.fronts as readonly [number, number];
    expect(a < b ? a + 120 <= b : b + 90 <= a).toBe(true);
    expect(Math.min(a, b)).toBeGreaterThanOrEqual(62);
    expect(fits).toHaveLength(1);
  });

  it('refuses a yard without trailers', () =>
    expect(leftOf(fitStock({ stock: {}, cargo: [] }))).toMatchObject({ tag: 'NothingToAnswer', path: 'stock' }));
});

describe('lines as limits', () => {
  const assessment = rightOf(assessJson(tiltDeck()));
  it('gives the most that stays on this side: at that weight the answer stands, a pound beyond it turns', () => {
    let asked = 0;
    const saidBy = ({ rules }: Assessment) =>
      new Map(
        ruleFindings(rules).flatMap(({ rows }) =>
          rows.map(({ rule, answers }) => [rule.id, answers.map(({ holds }) => holds).join()]),
        ),
      );
    const outcomes = (path: string, weight: number) =>
      saidBy(rightOf(assessJson(changedAll(tiltDeck(), { [path]: `${weight} lb` }))));
    const now = saidBy(assessment);
    for (const { id, most, room, lineIncluded } of linesAsLimits(assessment)) {
      const machine = most.find(({ path }) => path === 'cargo.0.weight');
      if (machine === undefined || room.value.lte(0) || room.value.gt(6000) || !now.has(id)) continue;
      const line = machine.most.value.toNumber();
      const beyond = lineIncluded ? line + 0.01 : line;
      expect(outcomes(machine.path, Number((line - 0.01).toFixed(4))).get(id), id).toBe(now.get(id));
      expect(outcomes(machine.path, Number(beyond.toFixed(4))).get(id), id).not.toBe(now.get(id));
      asked += 1;
    }
    expect(asked).toBeGreaterThan(0);
  });
  it('says of each line whether a duty begins or a limit ends there, and what it says now', () => {
    const lines = linesAsLimits(assessment);
    const says = (id: string) =>
      lines.filter((line) => line.id === id).map(({ kind, outcome = '' }) => `${kind} ${outcome}`);
    expect(says('gross-80')).toEqual(['limit kept']);
    expect(new Set(says('rig'))).toEqual(new Set(['duty applies']));
    expect(new Set(says('cdl-A'))).toEqual(new Set(['duty does not apply']));
    expect(new Set(lines.filter(({ kind }) => kind === 'steps').map(({ outcome }) => outcome))).toEqual(
      new Set([undefined]),
    );
    // The line of 10,001 lb is the commercial vehicle's own, not one more of every rule that binds such a vehicle.
    expect(lines.filter(({ topic }) => topic === 'yearly inspection')).toEqual([]);
  });
  it('tells the pounds to the next class of a table of steps', () => {
    const step = linesAsLimits(assessment).find(({ id }) => id === 'registration class by combined weight (invented)')!;
    // By hand: truck 8,800 lb and trailer 12,650 lb and 60 lb of hitch make 21,510 lb; class 4 ends at 26,000 lb.
    expect(step.topic).toBe('registration class by combined weight (invented): class 4, then class 5');
    const last = linesAsLimits(assessment).find(({ id }) => id === 'registration class by gross weight (invented)')!;
    expect(last.topic).toBe('registration class by gross weight (invented): heavy');
    expect(step.most.some(({ path }) => path === 'cargo.0.weight')).toBe(true);
  });
});

describe('duty', () => {
  const trips = [
    { name: 'excavator', cargo: [excavator], count: 30 },
    { name: 'small one', cargo: [{ ...excavator, weight: '5,000 lb' }], count: 70 },
  ];
  it('counts the trips above nine tenths of a limit', () => {
    const { share, trips: found } = rightOf(dutyOf({ trailer: yard(), tow, trips }));
    expect(found.map(({ above }) => above)).toEqual([true, false]);
    for (const { used, above } of found) expect(used.value.gt('0.9')).toBe(above);
    const above = found.filter((trip) => trip.above).reduce((all, { count }) => all + count, 0);
    expect(share.value.toNumber()).toBeCloseTo(above / 100, 12);
    expect(found.map(({ name }) => name)).toEqual(['excavator', 'small one']);
    expect(found[0]!.used.value.gt(found[1]!.used.value)).toBe(true);
  });
  it('refuses no trips and counts of nothing', () => {
    expect(leftOf(dutyOf({ trailer: yard(), trips: [] })).tag).toBe('NothingToAnswer');
    expect(leftOf(dutyOf({ trailer: yard(), trips: [{ name: 'x', cargo: [], count: 0 }] })).tag).toBe('UnusableFigure');
  });
});
