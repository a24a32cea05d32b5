import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  hitchedAxleLoads,
  readScaleTickets,
  scaleDivision,
  type TicketQuestion,
  type Tickets,
  tongueByDifference,
  tongueFromTickets,
  weightDistribution,
  wordsForTowing,
} from '../../../src/towing/index.js';
import { weakestInputs } from '../../../src/trace/index.js';
import { inch, kg, lb, show, showBrief } from '../../../src/units/index.js';
import { compareDecimals } from '../../../src/units/internal.js';
import { leftOf, rightOf } from '../../helpers/either.js';
import { expectReplays } from '../../helpers/working.js';

// constructed: truck 4,300 / 3,100, wheelbase 160, overhang 52, trailer 12,400 with 1,400 on the ball, axles 190 in behind it, bars of 30,400 lb in
const barsOn = { steer: lb(4087), drive: lb(4553), trailer: lb(11160) };
const barsOff = { steer: lb(3845), drive: lb(4955), trailer: lb(11000) };
const truckAlone = { steer: lb(4300), drive: lb(3100) };
const trailerAlone = lb(12400);
const ask = (tickets: Tickets, more: Partial<TicketQuestion> = {}) =>
  readScaleTickets({ tickets, division: scaleDivision, ...more });
const shown = (read: object): Record<string, string> =>
  Object.fromEntries(
    Object.entries(read).flatMap(([name, figure]) =>
      typeof figure === 'object' && 'why' in figure ? [[name, showBrief(figure.value, 4)]] : [],
    ),
  );

describe('scale tickets', () => {
  it('tell everything from three passes', () => {
    const read = rightOf(ask({ barsOn, barsOff, truckAlone }, { axlesAt: inch(190) }));
    expect(shown(read)).toEqual({
      tongue: '1,400 lb',
      tongueWithin: '40 lb',
      gross: '12,400 lb',
      combination: '19,800 lb',
      towVehicleAlone: '7,400 lb',
      offFront: '455 lb',
      ontoRear: '1,855 lb',
      overhangOverWheelbase: '0.325',
      trailerGain: '160 lb',
      frontGain: '242 lb',
      restored: '0.5319',
      moment: '30,400 lb\u00b7in',
    });
    expect(read.cannotTell).toEqual([]);
    expect(read.closures.map(({ gap, allowed }) => [show(gap.value), show(allowed.value)])).toEqual([
      ['0 lb', '60 lb'],
    ]);
    expect(weakestInputs(read.tongue!).basis).toBe('scale');
    expectReplays(
      read.tongue!,
      read.gross!,
      read.overhangOverWheelbase!,
      read.restored!,
      read.moment!,
      read.tongueWithin!,
      ...read.closures.flatMap(({ gap, allowed }) => [gap, allowed]),
    );
  });
  it('are what the statics say of the same rig', () => {
    const rig = { front: lb(4300), rear: lb(3100), tongue: lb(1400), wheelbase: inch(160), overhang: inch(52) };
    const hitched = rightOf(hitchedAxleLoads({ hitch: 'ball behind', ...rig }));
    expect([hitched.front, hitched.rear].map(({ value }) => show(value))).toEqual([
      show(barsOff.steer),
      show(barsOff.drive),
    ]);
    const wd = rightOf(
      weightDistribution({ ...rig, gross: lb(12400), axlesAt: inch(190), bars: { trailerGain: lb(160) } }),
    );
    expect([wd.barsOn.front, wd.barsOn.rear, wd.barsOn.trailerAxles].map(({ value }) => showBrief(value))).toEqual([
      show(barsOn.steer),
      show(barsOn.drive),
      show(barsOn.trailer),
    ]);
  });
  it('warn of bars on only where no pass has them off, and name the least the tongue can be', () => {
    const noteOf = (tickets: Tickets) => rightOf(ask(tickets)).notes.find(({ tag }) => tag === 'BarsOnUnderReads');
    expect([noteOf({ barsOn, barsOff, truckAlone }), noteOf({ barsOff, truckAlone })]).toEqual([undefined, undefined]);
    expect(noteOf({ barsOn, truckAlone })?.figures?.map(({ value }) => show(value))).toEqual(['1,240 lb']);
    expect(noteOf({ barsOn })).toMatchObject({ tag: 'BarsOnUnderReads' });
    expect(noteOf({ barsOn })?.figures).toBeUndefined();
  });
  it('tell tongue, gross and leverage from two passes with bars off', () => {
    const read = rightOf(ask({ barsOff, truckAlone }));
    expect(shown(read)).toMatchObject({ tongue: '1,400 lb', gross: '12,400 lb', overhangOverWheelbase: '0.325' });
    expect(read.cannotTell.map(({ what }) => what)).toEqual([
      'what the bars move',
      'share of the front axle load restored',
      'moment of the bars',
    ]);
  });
  it('tell the gross but not the tongue from bars on and truck alone', () => {
    const read = rightOf(ask({ barsOn, truckAlone }));
    expect(shown(read)).toEqual({
      gross: '12,400 lb',
      combination: '19,800 lb',
      towVehicleAlone: '7,400 lb',
      tongueAtLeast: '1,240 lb',
    });
    expect(read.notes.map(({ tag }) => tag)).toEqual(['BarsOnUnderReads']);
    expect(read.cannotTell[0]).toEqual({
      figure: 'tongue',
      what: 'tongue load',
      needs: 'a pass coupled with bars off, and the truck alone or the trailer alone',
    });
    expectReplays(read.gross!, read.tongueAtLeast!);
  });
  it('tell tongue and truck from the trailer alone and a pass with bars off', () => {
    const read = rightOf(ask({ barsOff, trailerAlone }));
    expect(shown(read)).toEqual({
      tongue: '1,400 lb',
      tongueWithin: '20 lb',
      gross: '12,400 lb',
      combination: '19,800 lb',
      towVehicleAlone: '7,400 lb',
    });
    expect(shown(rightOf(ask({ barsOn, trailerAlone })))).toMatchObject({
      tongueAtLeast: '1,240 lb',
      gross: '12,400 lb',
    });
    expectReplays(read.tongue!, read.towVehicleAlone!);
  });
  it('tell what the bars move, and no tongue, from two coupled passes', () => {
    const read = rightOf(ask({ barsOn, barsOff }, { axlesAt: inch(190) }));
    expect(shown(read)).toEqual({
      combination: '19,800 lb',
      trailerGain: '160 lb',
      frontGain: '242 lb',
      moment: '30,400 lb\u00b7in',
    });
  });
  it('do not state a ratio over a weight that is within the rounding of the scale', () => {
    const read = rightOf(
      ask({
        barsOff: { steer: lb(4280), drive: lb(3160), trailer: lb(2000) },
        barsOn: { steer: lb(4290), drive: lb(3140), trailer: lb(2010) },
        truckAlone,
      }),
    );
    expect(shown(read)).toMatchObject({ tongue: '40 lb', tongueWithin: '40 lb' });
    expect(read.overhangOverWheelbase).toBeUndefined();
    expect(read.restored).toBeUndefined();
  });
  it('answer for a negative tongue with a note', () => {
    const read = rightOf(ask({ barsOff: { steer: lb(4400), drive: lb(2800), trailer: lb(5000) }, truckAlone }));
    expect(shown(read)).toMatchObject({ tongue: '-200 lb' });
    expect(read.notes.map(({ tag }) => tag)).toEqual(['NegativeTongue']);
  });
  it('say so when they do not close', () => {
    const error = leftOf(ask({ barsOn: { ...barsOn, steer: lb(4148) }, barsOff, truckAlone }));
    expect(error).toMatchObject({ tag: 'TicketsDoNotClose', what: 'the rig with bars on and with bars off' });
    expect(wordsForTowing(error)).toBe(
      'the difference between the rig with bars on and with bars off (19,861 lb and 19,800 lb) is 61 lb; it must be at most 60 lb; weigh again',
    );
    expect(rightOf(ask({ barsOn: { ...barsOn, steer: lb(4147) }, barsOff, truckAlone })).closures).toHaveLength(1);
    expect(leftOf(ask({ barsOff, truckAlone, trailerAlone: lb(12500) })).tag).toBe('TicketsDoNotClose');
    expect(leftOf(ask({ barsOn, truckAlone, trailerAlone: lb(12300) })).tag).toBe('TicketsDoNotClose');
    expect(rightOf(ask({ barsOn, barsOff, truckAlone, trailerAlone })).closures).toHaveLength(2);
  });
  it('refuse what cannot be', () => {
    expect(leftOf(ask({})).tag).toBe('TicketsCannotTell');
    expect(leftOf(ask({ barsOff: { ...barsOff, drive: lb(-20) } }))).toMatchObject({
      tag: 'BelowZero',
      what: 'drive, coupled, bars off',
    });
    expect(leftOf(ask({ trailerAlone: lb(-1) })).tag).toBe('BelowZero');
    expect(leftOf(ask({ barsOff }, { division: lb(0) })).tag).toBe('NotAboveZero');
    expect(leftOf(ask({ barsOff }, { axlesAt: inch(0) })).tag).toBe('NotAboveZero');
  });
  it('give the tongue that the statics put there, whatever the rig', () => {
    const rig = fc.record({
      steer: fc.integer({ min: 2000, max: 5000 }),
      drive: fc.integer({ min: 2000, max: 5000 }),
      off: fc.integer({ min: 30, max: 900 }),
      tongue: fc.integer({ min: 200, max: 2500 }),
      axles: fc.integer({ min: 1000, max: 20000 }),
    });
    fc.assert(
      fc.property(rig, (r) => {
        const read = rightOf(
          ask({
            barsOff: { steer: lb(r.steer - r.off), drive: lb(r.drive + r.tongue + r.off), trailer: lb(r.axles) },
            truckAlone: { steer: lb(r.steer), drive: lb(r.drive) },
            trailerAlone: lb(r.axles + r.tongue),
          }),
        );
        expect(show(read.tongue!.value)).toBe(show(lb(r.tongue)));
        expect(show(read.gross!.value)).toBe(show(lb(r.axles + r.tongue)));
        expect(compareDecimals(read.overhangOverWheelbase!.value.value.times(r.tongue), lb(r.off).value)).toBe(0);
        expectReplays(read.tongue!, read.overhangOverWheelbase!);
      }),
    );
  });
});

describe('the tongue alone', () => {
  it('is refused to a coupled ticket', () => {
    // a coupled-only ticket: 2,740 + 2,820 + 5,140 = 10,700
    const coupled = { barsOff: { steer: lb(2740), drive: lb(2820), trailer: lb(5140) } };
    expect(show(rightOf(ask(coupled)).combination!.value)).toBe('10,700 lb');
    expect(leftOf(tongueFromTickets({ tickets: coupled, division: scaleDivision }))).toEqual({
      chapter: 'towing',
      tag: 'TicketsCannotTell',
      asked: 'the tongue load',
      passes: ['coupled, bars off'],
      needed: 'a pass coupled with bars off, and the truck alone or the trailer alone',
    });
    expect(leftOf(tongueFromTickets({ tickets: { barsOn, truckAlone }, division: lb(20) })).tag).toBe(
      'TicketsCannotTell',
    );
  });
  it('is read from two passes', () => {
    const tongue = rightOf(tongueFromTickets({ tickets: { barsOff, truckAlone }, division: lb(20) }));
    expect(show(tongue.value)).toBe('1,400 lb');
    expectReplays(tongue);
  });
  it('is the whole trailer less its axles', () => {
    expect(rightOf(tongueByDifference(lb(2000), lb(2100))).notes.map(({ tag }) => tag)).toEqual(['NegativeTongue']);
    expect(leftOf(tongueByDifference(kg(0), kg(0))).tag).toBe('NotAboveZero');
    expect(
      rightOf(tongueByDifference(lb(2000), lb(0))).decisions.map(({ left, comparison }) => [left.symbol, comparison]),
    ).toEqual([
      ['trailer gross', '>'],
      ['trailer axles, coupled', '>='],
      ['tongue load', '<'],
    ]);
    expect(leftOf(tongueByDifference(kg(10), kg(-1))).tag).toBe('BelowZero');
  });
});
