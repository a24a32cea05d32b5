import { describe, expect, it } from 'vitest';
import { type TowedTrailer, type TowVehicle, towChecks } from '../../../src/towing/index.js';
import { inch, lb, show } from '../../../src/units/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';
import { expectReplays } from '../../helpers/working.js';

const full: TowVehicle = {
  hitch: 'ball behind',
  front: lb(4300),
  rear: lb(3100),
  gvwr: lb(10000),
  frontGawr: lb(4800),
  rearGawr: lb(6200),
  gcwr: lb(23500),
  wheelbase: inch(160),
  overhang: inch(52),
  receiver: { gross: lb(15000), tongue: lb(1500) },
  ballMount: { gross: lb(14000), tongue: lb(1400) },
  ball: { gross: lb(14000) },
  trailerRating: lb(14000),
  tongueRating: lb(1400),
  hitchHardware: lb(0),
  placard: { limit: lb(2600), people: lb(400), cargo: lb(300) },
};
const trailer: TowedTrailer = {
  gross: lb(12400),
  tongue: lb(1400),
  coupler: { gross: lb(14000), tongue: lb(1400) },
  chains: { each: lb(18000), count: 2 },
};

describe('the chain of checks', () => {
  it('hands on what the axles as hitched were compared with', () => {
    const { decisions } = rightOf(towChecks(full, trailer));
    const compared = decisions.map(({ left, comparison }) => `${left.symbol} ${comparison}`);
    expect(compared.filter((each) => each.startsWith('front axle, hitched'))).toEqual(['front axle, hitched <']);
    expect(compared.filter((each) => each.startsWith('wheelbase'))).toEqual(['wheelbase >']);
  });
  it('asks every link, each with its reserve', () => {
    const { checks, notChecked, notes } = rightOf(towChecks(full, trailer));
    expect(checks.map(({ what, verdict, reserve }) => `${what}: ${verdict} ${show(reserve.value)}`)).toEqual([
      'tow vehicle hitched against tow vehicle GVWR: within 1,200 lb',
      'tow vehicle front axle against tow vehicle front GAWR: within 955 lb',
      'tow vehicle rear axle against tow vehicle rear GAWR: within 1,245 lb',
      'combination against GCWR: within 3,700 lb',
      'gross against receiver gross: within 2,600 lb',
      'tongue against receiver tongue: within 100 lb',
      'gross against ball mount gross: within 1,600 lb',
      'tongue against ball mount tongue: within 0 lb',
      'gross against ball gross: within 1,600 lb',
      'gross against coupler gross: within 1,600 lb',
      'tongue against coupler tongue: within 0 lb',
      'gross against safety chains, together: within 23,600 lb',
      'gross against safety chains, each: within 5,600 lb',
      'gross against trailer tow rating: within 1,600 lb',
      'tongue against tow vehicle tongue: within 0 lb',
      'tow vehicle load against occupant and cargo placard: within 500 lb',
    ]);
    expect(notChecked).toEqual([]);
    expect(notes).toEqual([]);
    expectReplays(...checks.flatMap(({ reserve, used }) => [reserve, used]));
  });
  it('passes nothing for want of a fact', () => {
    const { checks, notChecked } = rightOf(towChecks({ hitch: 'ball behind' }, { gross: lb(12400) }));
    expect(checks).toEqual([]);
    expect(notChecked).toHaveLength(15);
    expect(notChecked.map(({ missing }) => missing).every((facts) => facts.length > 0)).toBe(true);
    const by = Object.fromEntries(notChecked.map(({ what, missing }) => [what, missing]));
    expect(by['tow vehicle rear axle against tow vehicle rear GAWR']).toEqual([
      'tow vehicle rear GAWR',
      'front axle, truck alone',
      'rear axle, truck alone',
      'tongue load',
      'overhang',
      'wheelbase',
    ]);
    expect(by['tow vehicle load against occupant and cargo placard']).toEqual([
      'occupant and cargo placard',
      'people aboard',
      'cargo aboard',
      'tongue load',
    ]);
    expect(by['gross against safety chains']).toEqual(['safety chains']);
  });
  it('takes away one fact at a time and never gains a check', () => {
    const all = rightOf(towChecks(full, trailer)).checks.length;
    const facts = Object.keys(full).filter((fact) => fact !== 'hitch' && fact !== 'hitchHardware');
    for (const fact of facts) {
      const { checks, notChecked } = rightOf(towChecks({ ...full, [fact]: undefined }, trailer));
      expect(checks.length + notChecked.length, fact).toBe(all);
      expect(notChecked.length, fact).toBeGreaterThan(0);
    }
  });
  it('hangs hitch parts that were not scaled on the ball, and counts them in the truck', () => {
    const { checks } = rightOf(towChecks({ ...full, hitchHardware: lb(80) }, trailer));
    const reserve = Object.fromEntries(checks.map(({ kind, reserve: left }) => [kind, show(left.value)]));
    expect(reserve).toMatchObject({
      'tow vehicle GVWR': '1,120 lb',
      'tow vehicle front GAWR': '981 lb',
      'tow vehicle rear GAWR': '1,139 lb',
      GCWR: '3,620 lb',
      'occupant and cargo placard': '420 lb',
    });
    expect(rightOf(towChecks({ ...full, hitchHardware: undefined }, trailer)).notes.map(({ tag }) => tag)).toEqual([
      'HitchHardwareTakenAsScaled',
    ]);
  });
  it('does not ask a gooseneck for a receiver, and does not guess its place', () => {
    const neck: TowVehicle = {
      ...full,
      hitch: 'gooseneck',
      overhang: 'unknown',
      receiver: undefined,
      ballMount: undefined,
    };
    const { checks, notChecked } = rightOf(towChecks(neck, trailer));
    expect(checks.some(({ kind }) => kind.startsWith('receiver') || kind.startsWith('ball mount'))).toBe(false);
    expect(notChecked.map(({ missing }) => missing)).toEqual([['overhang'], ['overhang']]);
  });
  it('says over when a link is over, and answers for a negative tongue', () => {
    const { checks } = rightOf(towChecks({ ...full, ball: { gross: lb(12399) } }, trailer));
    expect(checks.filter(({ verdict }) => verdict === 'over').map(({ kind }) => kind)).toEqual(['ball gross']);
    const up = rightOf(towChecks(full, { ...trailer, tongue: lb(-50) }));
    expect(up.notes.map(({ tag }) => tag)).toEqual(['NegativeTongue']);
    const lifted = rightOf(towChecks({ ...full, front: lb(400) }, trailer));
    expect(lifted.notes.map(({ tag }) => tag)).toEqual(['FrontAxleLifts']);
  });
  it('refuses what cannot be', () => {
    const tag = (vehicle: Partial<TowVehicle>, towed: Partial<TowedTrailer> = {}): string =>
      leftOf(towChecks({ ...full, ...vehicle }, { ...trailer, ...towed })).tag;
    expect(tag({ gcwr: lb(0) })).toBe('NotAboveZero');
    expect(tag({ wheelbase: inch(0) })).toBe('NotAboveZero');
    expect(tag({ rear: lb(-5) })).toBe('BelowZero');
    expect(tag({ overhang: inch(-5) })).toBe('HitchContradicts');
    expect(tag({}, { gross: lb(0) })).toBe('NotAboveZero');
    expect(tag({}, { chains: { each: lb(0), count: 2 } })).toBe('NotAboveZero');
  });
});
