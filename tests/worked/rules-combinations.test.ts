/** Combination rating, commercial line and licence group: cases from guidance, trade press and the printed operators. */
import { describe, expect, it } from 'vitest';
import {
  type CombinationWeights,
  commercialByWeight,
  gcwrByDefinition,
  licenceGroup,
  type VehicleWeights,
} from '../../src/rules/index.js';
import { lb, show } from '../../src/units/index.js';
import { expectReplays } from '../helpers/working.js';
import { orFail } from '../rules/helpers.js';

const rated = (gvwr: number): VehicleWeights => ({ gvwr: lb(gvwr), gross: 'not above GVWR' });
const pair = (truck: number, trailer: number): CombinationWeights => ({
  powerUnit: rated(truck),
  towed: trailer === 0 ? [] : [rated(trailer)],
  labelGcwr: 'not shown',
});

describe('licence group by weight, 49 CFR 383.91(a)', () => {
  it.each([
    // FMCSA guidance to 383.91, question 2; the case from a question page.
    [8000, 15000, '23,000 lb', 'none by weight'],
    // The printed operators applied.
    [26000, 10000, '36,000 lb', 'none by weight'],
    [26001, 10000, '36,001 lb', 'B'],
    [26001, 0, '26,001 lb', 'B'],
    [16000, 10000, '26,000 lb', 'none by weight'],
    [15999, 10001, '26,000 lb', 'none by weight'],
    [16000, 10001, '26,001 lb', 'A'],
    [26001, 10001, '36,002 lb', 'A'],
  ])('truck %i, trailer %i: GCWR %s, group %s', (truck, trailer, gcwr, group) => {
    const found = orFail(licenceGroup(pair(truck, trailer)));
    expect(show(found.rating.gcwr.value)).toBe(gcwr);
    expect(found.group).toBe(group);
    expect(found.caution).toMatch(/^By weight only/);
    expect(found.decisions).toHaveLength(3);
    expectReplays(found.rating.gcwr, ...found.distances);
  });
  it('adds up what is towed: two trailers of 6,000 lb are over 10,000 lb', () => {
    expect(
      orFail(licenceGroup({ powerUnit: rated(20000), towed: [rated(6000), rated(6000)], labelGcwr: 'not shown' }))
        .group,
    ).toBe('A');
  });
});

describe('commercial motor vehicle by weight, 49 CFR 390.5T', () => {
  it('a 9,000 lb truck that weighs 10,001 lb is one (trade press on the carrier line)', () => {
    const found = orFail(
      commercialByWeight({ powerUnit: { gvwr: lb(9000), gross: lb(10001) }, towed: [], labelGcwr: 'not shown' }),
    );
    expect(found.reachesLine).toBe(true);
    expect(show(found.distance.value)).toBe('0 lb');
    expectReplays(found.distance);
  });
  // The printed operator applied.
  it.each([
    [3000, '10,000 lb', false],
    [3001, '10,001 lb', true],
  ])('truck 7,000, trailer %i', (trailer, gcwr, reaches) => {
    const found = orFail(commercialByWeight(pair(7000, trailer)));
    expect(show(found.greatest.value)).toBe(gcwr);
    expect(found.reachesLine).toBe(reaches);
    expectReplays(found.greatest, found.distance);
  });
});

describe('GCWR by its definition, 79 FR 15245', () => {
  const mixed: CombinationWeights = {
    powerUnit: { gvwr: lb(9900), gross: lb(9000) },
    towed: [{ gvwr: lb(7000), gross: lb(7600) }],
    labelGcwr: lb(17000),
  };
  it('mixes rating and weight unit by unit: 9,900 + 7,600 beats the label', () => {
    const { gcwr } = orFail(gcwrByDefinition(mixed));
    expect(show(gcwr.value)).toBe('17,500 lb');
    expectReplays(gcwr);
  });
  it('takes the label when it is greater', () => {
    expect(show(orFail(gcwrByDefinition({ ...mixed, labelGcwr: lb(17501) })).gcwr.value)).toBe('17,501 lb');
  });
  it('leaves the label out when nothing is towed', () => {
    const alone = orFail(gcwrByDefinition({ ...mixed, towed: [] }));
    expect([show(alone.gcwr.value), show(alone.towed.value)]).toEqual(['9,900 lb', '0 lb']);
  });
  it('is not the cargo of the trailer added to its own weight: 12,000 + 4,200 behind 10,500 (common mistake)', () => {
    // A trailer labelled 14,000 lb: the combination is 24,500 lb, not 26,700.
    expect(show(orFail(gcwrByDefinition(pair(10500, 14000))).gcwr.value)).toBe('24,500 lb');
  });
});
