import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { largestTrailer, type TowVehicle, towChecks, weakestHitchPart } from '../../../src/towing/index.js';
import { given, product } from '../../../src/trace/index.js';
import { inch, lb, percent, ratio, show } from '../../../src/units/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';
import { expectReplays } from '../../helpers/working.js';

const truck: TowVehicle = {
  hitch: 'ball behind',
  front: lb(4300),
  rear: lb(3100),
  wheelbase: inch(160),
  overhang: inch(52),
  gvwr: lb(10000),
  rearGawr: lb(6200),
  gcwr: lb(23500),
};

describe('the largest trailer', () => {
  it('names every limit that ties', () => {
    const answer = rightOf(
      largestTrailer({
        vehicle: { ...truck, ball: { gross: lb(14000) }, receiver: { tongue: lb(1400) } },
        tongueShare: percent(10),
      }),
    );
    expect(show(answer.trailer.value)).toBe('14,000 lb');
    expect(answer.governing.map(({ name }) => name)).toEqual(['receiver tongue', 'ball gross']);
    expectReplays(answer.trailer, answer.tongue);
  });
  it('says nothing fits when the truck is over by itself', () => {
    const answer = rightOf(
      largestTrailer({
        vehicle: { ...truck, placard: { limit: lb(1000), people: lb(700), cargo: lb(400) } },
        tongueShare: percent(10),
      }),
    );
    expect(show(answer.trailer.value)).toBe('0 lb');
    expect(answer.governing.map(({ name, limit }) => `${name} ${show(limit.value)}`)).toEqual([
      'occupant and cargo placard -1,000 lb',
    ]);
    expect(answer.notes.map(({ tag }) => tag)).toContain('OverBeforeTheTrailer');
  });
  it('says so where the truck stands exactly at a limit, and not where a pound is left', () => {
    const at = (cargo: number): string[] =>
      rightOf(
        largestTrailer({
          vehicle: { ...truck, placard: { limit: lb(1000), people: lb(700), cargo: lb(cargo) } },
          tongueShare: percent(10),
        }),
      ).notes.map(({ tag }) => tag);
    expect(at(300)).toContain('OverBeforeTheTrailer');
    expect(at(299)).not.toContain('OverBeforeTheTrailer');
  });
  it('asks the coupler, whatever tows', () => {
    const by = (coupler: Parameters<typeof largestTrailer>[0]['coupler']) =>
      rightOf(largestTrailer({ vehicle: truck, coupler, tongueShare: percent(10) }));
    expect(by({ gross: lb(3000) }).governing.map(({ name }) => name)).toEqual(['coupler gross']);
    const byTongue = by({ tongue: lb(250) });
    expect([byTongue.governing.map(({ name }) => name), show(byTongue.trailer.value)]).toEqual([
      ['coupler tongue'],
      '2,500 lb',
    ]);
    expect(by(undefined).notChecked.map(({ what }) => what)).toEqual(
      expect.arrayContaining(['largest trailer by coupler gross', 'largest trailer by coupler tongue']),
    );
  });
  it('says what it took the overhang for', () => {
    const { notes } = rightOf(
      largestTrailer({ vehicle: { ...truck, overhang: 'unknown', hitchHardware: lb(0) }, tongueShare: percent(10) }),
    );
    expect(notes.map(({ tag }) => tag)).toEqual(['OverhangUnknown']);
  });
  it('asks receiver and ball mount behind a truck always, of a gooseneck only where they are told', () => {
    const neck = { ...truck, hitch: 'gooseneck', overhang: inch(-8) } as const;
    const asked = (vehicle: TowVehicle): string[] => {
      const { bounds, notChecked } = rightOf(largestTrailer({ vehicle, tongueShare: percent(20) }));
      const names = [
        ...bounds.map(({ name }) => name),
        ...notChecked.map(({ what }) => what.replace('largest trailer by ', '')),
      ];
      return names.filter((name) => /^(receiver|ball mount)/.test(name)).sort();
    };
    const four = ['ball mount gross', 'ball mount tongue', 'receiver gross', 'receiver tongue'];
    expect(asked(truck)).toEqual(four);
    expect(asked(neck)).toEqual([]);
    expect(asked({ ...neck, receiver: { gross: lb(20000) } })).toEqual(four.slice(2));
    expect(asked({ ...neck, ballMount: { gross: lb(20000) } })).toEqual(four.slice(0, 2));
  });
  it('asks the front axle of a gooseneck, and not of a ball behind', () => {
    const neck = { ...truck, hitch: 'gooseneck', overhang: inch(-8), frontGawr: lb(4350) } as const;
    const answer = rightOf(largestTrailer({ vehicle: neck, tongueShare: percent(20) }));
    expect(answer.governing.map(({ name, limit }) => `${name} ${show(limit.value)}`)).toEqual([
      'tow vehicle front GAWR 5,000 lb',
    ]);
    expect(
      rightOf(largestTrailer({ vehicle: { ...neck, overhang: inch(0) }, tongueShare: percent(20) })).bounds.map(
        ({ name }) => name,
      ),
    ).not.toContain('tow vehicle front GAWR');
    // The same place as a share of the wheelbase: 8 in of 160 in.
    const byShare = (share: string) =>
      rightOf(
        largestTrailer({
          vehicle: { ...neck, overhang: { ofWheelbase: ratio(share) }, wheelbase: undefined },
          tongueShare: percent(20),
        }),
      );
    expect(byShare('-0.05').governing.map(({ name, limit }) => `${name} ${show(limit.value)}`)).toEqual([
      'tow vehicle front GAWR 5,000 lb',
    ]);
    expect(byShare('0').bounds.map(({ name }) => name)).not.toContain('tow vehicle front GAWR');
    expectReplays(...byShare('-0.05').bounds.map(({ limit }) => limit));
    expect(
      rightOf(largestTrailer({ vehicle: { ...truck, frontGawr: lb(1) }, tongueShare: percent(20) })).bounds.map(
        ({ name }) => name,
      ),
    ).not.toContain('tow vehicle front GAWR');
    expectReplays(...answer.bounds.map(({ limit }) => limit));
  });
  it('lists the limits it was not given', () => {
    const { notChecked } = rightOf(
      largestTrailer({ vehicle: { ...truck, rear: undefined, trailerRating: lb(9000) }, tongueShare: percent(10) }),
    );
    const by = Object.fromEntries(notChecked.map(({ what, missing }) => [what, missing]));
    expect(by['largest trailer by tow vehicle rear GAWR']).toEqual(['rear axle, truck alone']);
    expect(by['largest trailer by ball gross']).toEqual(['ball gross']);
  });
  it('refuses a share of nothing, a rating of nothing and no limit at all', () => {
    expect(leftOf(largestTrailer({ vehicle: truck, tongueShare: percent(0) })).tag).toBe('NotAShare');
    expect(leftOf(largestTrailer({ vehicle: truck, tongueShare: ratio('1.01') })).tag).toBe('NotAShare');
    expect(leftOf(largestTrailer({ vehicle: { ...truck, gvwr: lb(0) }, tongueShare: percent(10) })).tag).toBe(
      'NotAboveZero',
    );
    expect(
      leftOf(largestTrailer({ vehicle: { hitch: 'ball behind', front: lb(1), rear: lb(1) }, tongueShare: percent(10) }))
        .tag,
    ).toBe('NothingLimits');
    const nothing = leftOf(
      largestTrailer({ vehicle: { hitch: 'ball behind', front: lb(1), rear: lb(1) }, tongueShare: percent(10) }),
    );
    expect(nothing).toMatchObject({ missing: expect.arrayContaining(['GCWR', 'tow vehicle GVWR', 'ball gross']) });
    expect(leftOf(weakestHitchPart([])).tag).toBe('NothingLimits');
    expect(leftOf(weakestHitchPart([{ part: 'ball', rating: lb(0) }])).tag).toBe('NotAboveZero');
  });
  it('is within every check, and a pound more is over one', () => {
    const trucks = fc.record({
      front: fc.integer({ min: 2500, max: 4500 }),
      rear: fc.integer({ min: 2000, max: 4000 }),
      overhang: fc.integer({ min: 30, max: 70 }),
      hardware: fc.integer({ min: 0, max: 120 }),
      gvwr: fc.integer({ min: 9500, max: 12000 }),
      rearGawr: fc.integer({ min: 5000, max: 8000 }),
      gcwr: fc.integer({ min: 15000, max: 30000 }),
      share: fc.integer({ min: 7, max: 25 }),
      tongue: fc.integer({ min: 500, max: 2000 }),
    });
    fc.assert(
      fc.property(trucks, (t) => {
        const vehicle: TowVehicle = {
          hitch: 'ball behind',
          front: lb(t.front),
          rear: lb(t.rear),
          wheelbase: inch(150),
          overhang: inch(t.overhang),
          hitchHardware: lb(t.hardware),
          gvwr: lb(t.gvwr),
          rearGawr: lb(t.rearGawr),
          gcwr: lb(t.gcwr),
          tongueRating: lb(t.tongue),
          trailerRating: lb(16000),
        };
        const answer = rightOf(largestTrailer({ vehicle, tongueShare: percent(t.share) }));
        expectReplays(answer.trailer);
        const towed = (gross: typeof answer.trailer) =>
          rightOf(
            towChecks(vehicle, { gross, tongue: product('tongue', gross, given('share', ratio(t.share / 100))) }),
          );
        expect(
          towed(answer.trailer)
            .checks.filter(({ verdict }) => verdict === 'over')
            .map(({ kind }) => kind),
        ).toEqual([]);
        const more = given('more', lb(answer.trailer.value.value.plus(1).toFixed()));
        const over = towed(more)
          .checks.filter(({ verdict }) => verdict === 'over')
          .map(({ kind }) => kind);
        expect(answer.governing.every(({ name }) => (over as readonly string[]).includes(name))).toBe(true);
      }),
    );
  });
});
