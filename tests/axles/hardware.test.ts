import { describe, expect, it } from 'vitest';
import {
  axlesTables,
  type BrakedAxle,
  boltCircle,
  brakeCapacity,
  brakeTorque,
  deceleration,
  stoppingDistance,
  usualBrake,
  usualBrakeSizes,
  usualHub,
  usualHubs,
  wheelNutTorque,
  wordsForAxles,
} from '../../src/axles/index.js';
import { describeError } from '../../src/errors.js';
import { gravity, inch, lb, lbf, mm, mph, percent, show, showBrief } from '../../src/units/index.js';
import { leftOf, rightOf } from '../helpers/either.js';
import { expectReplays } from '../helpers/working.js';

const pair = (of: string, gawr: number, left: number, right: number): BrakedAxle => ({
  of,
  gawr: lb(gawr),
  brakes: [lb(left), lb(right)],
});

describe('brake capacity', () => {
  it('is the sum of the brakes against the sum of the GAWRs, axle by axle and side by side', () => {
    const { total, checks, notes } = rightOf(
      brakeCapacity([pair('axle 1', 7000, 3500, 3500), pair('axle 2', 7000, 3500, 3500)]),
    );
    expect(show(total.value)).toBe('14,000 lb');
    expect(checks.map(({ what, verdict, reserve }) => `${what}: ${verdict} ${show(reserve.value)}`)).toEqual([
      'braked weight against brake capacity: within 0 lb',
      'axle 1 brakes against GAWR: within 0 lb',
      'braked weight against axle 1 left brake capacity: within 0 lb',
      'braked weight against axle 1 right brake capacity: within 0 lb',
      'axle 2 brakes against GAWR: within 0 lb',
      'braked weight against axle 2 left brake capacity: within 0 lb',
      'braked weight against axle 2 right brake capacity: within 0 lb',
    ]);
    expect(notes).toEqual([]);
    expectReplays(total, ...checks.flatMap(({ reserve, used }) => [reserve, used]));
  });
  it('does not let a strong brake make up for a weak one', () => {
    const { checks, notes } = rightOf(brakeCapacity([pair('axle 1', 7000, 4000, 3400)]));
    expect(checks.filter(({ verdict }) => verdict === 'over').map(({ part: of }) => of)).toEqual(['axle 1 right']);
    expect(notes.map(({ tag }) => tag)).toEqual(['UnequalBrakes']);
  });
  it('counts an axle without brakes against the rest', () => {
    const { checks, unbraked, notes } = rightOf(
      brakeCapacity([pair('axle 1', 3500, 1750, 1750), { of: 'axle 2', gawr: lb(3500) }]),
    );
    expect(checks[0]?.verdict).toBe('over');
    expect(show(checks[0]!.reserve.value)).toBe('-3,500 lb');
    expect(unbraked).toEqual(['axle 2']);
    expect(notes.map(({ tag }) => tag)).toEqual(['UnbrakedAxle']);
  });
  it('refuses what cannot be', () => {
    expect(leftOf(brakeCapacity([{ of: 'axle 1', gawr: lb(3500) }]))).toMatchObject({
      tag: 'NoBrakes',
      axles: ['axle 1'],
    });
    expect(wordsForAxles(leftOf(brakeCapacity([])))).toContain('no axles');
    expect(leftOf(brakeCapacity([pair('axle 1', 0, 1, 1)]))).toMatchObject({
      tag: 'HardwareNotAboveZero',
      what: 'axle 1 GAWR',
    });
    expect(leftOf(brakeCapacity([pair('axle 1', 3500, 0, 1750)]))).toMatchObject({ what: 'brake of axle 1' });
  });
});

describe('brake torque and stops', () => {
  // loads notes, section 10: recomputed from statics
  it('need 1,941 lb ft a brake for 43.5 % of 14,000 lb on four', () => {
    const torque = rightOf(
      brakeTorque({ braked: lb(14000), share: percent('43.5'), brakes: 4, loadedRadius: inch('15.3') }),
    );
    expect(showBrief(torque.value, 0)).toBe('1,941 lbf\u00b7ft');
    expectReplays(torque);
    expect(leftOf(brakeTorque({ braked: lb(1), share: percent(1), brakes: 0, loadedRadius: inch(1) }))).toMatchObject({
      what: 'number of brakes',
    });
    expect(
      leftOf(brakeTorque({ braked: lb(1), share: percent(1), brakes: Number.NaN, loadedRadius: inch(1) })).tag,
    ).toBe('HardwareNotAboveZero');
  });
  it('take 30.7 ft from 20 mph at 14 ft/s2', () => {
    const slowing = rightOf(deceleration(lbf(14), lb('32.17404855643044619422572178477690')));
    expect(showBrief(slowing.value, 6)).toBe('14 ft/s2');
    const stop = rightOf(stoppingDistance(mph(20), slowing));
    expect(showBrief(stop.value, 1)).toBe('30.7 ft');
    expectReplays(stop);
  });
  it('take 484 ft with the truck brakes alone, 201 ft at 0.6 g, from 60 mph', () => {
    const alone = rightOf(deceleration(lbf(5100), lb(20500)));
    const [weak, full] = [
      rightOf(stoppingDistance(mph(60), alone)),
      rightOf(stoppingDistance(mph(60), gravity('0.6'))),
    ];
    expect([weak, full].map(({ value }) => showBrief(value, 0))).toEqual(['484 ft', '201 ft']);
    expectReplays(weak, full);
  });
  it('refuse nothing to stop and nothing to stop with', () => {
    expect(leftOf(deceleration(lbf(0), lb(1))).tag).toBe('HardwareNotAboveZero');
    expect(leftOf(deceleration(lbf(1), lb(0))).tag).toBe('HardwareNotAboveZero');
    expect(leftOf(stoppingDistance(mph(0), gravity(1))).tag).toBe('HardwareNotAboveZero');
    expect(leftOf(stoppingDistance(mph(1), gravity(0))).tag).toBe('HardwareNotAboveZero');
  });
});

describe('wheel nuts', () => {
  it('keep both charts for 9/16 studs', () => {
    const { charts, disagree } = rightOf(wheelNutTorque('16 in and 16.5x6.75', '9/16'));
    expect(disagree).toBe(true);
    expect(charts.map(({ final }) => [final!.low, final!.high].map(({ value }) => show(value)).join(' to '))).toEqual([
      '120 lbf\u00b7ft to 130 lbf\u00b7ft',
      '90 lbf\u00b7ft to 120 lbf\u00b7ft',
    ]);
    expectReplays(charts[0]!.final!.low, charts[0]!.stage1!.high);
  });
  it('find a wheel without a stud, and no wheel that is not printed', () => {
    expect(rightOf(wheelNutTorque('16.5x9.75')).disagree).toBe(false);
    expect(leftOf(wheelNutTorque('16 in and 16.5x6.75', '1/2'))).toMatchObject({ tag: 'NotTabulated' });
    expect(leftOf(wheelNutTorque('16 in'))).toMatchObject({
      nearest: ['16 in, 5/8 stud', '16 in and 16.5x6.75, 9/16 stud', '16.5x9.75'],
    });
  });
});

describe('what usually sits on an axle', () => {
  it('is found by the rating, ends included', () => {
    expect([2000, 2200, 3500, 6000, 7000].map((rating) => rightOf(usualHub(lb(rating))).row.innerBearing)).toEqual([
      'L44649',
      'L44649',
      'L68149',
      '25580',
      '25580',
    ]);
    expect([2000, 3500, 5200, 7000, 8000, 10000].map((rating) => rightOf(usualBrake(lb(rating))).row.size)).toEqual([
      '10 x 2-1/4',
      '10 x 2-1/4',
      '12 x 2',
      '12 x 2',
      '12-1/4 heavy',
      '12-1/4 heavy',
    ]);
  });
  it('is for heavy brakes a convention alone, and says that the stamping is asked for', () => {
    const notesOf = (rating: number) => rightOf(usualBrake(lb(rating))).notes;
    expect([2000, 3500, 5200, 7000].flatMap(notesOf)).toEqual([]);
    for (const rating of [8000, 9000, 10000]) {
      const [note, ...others] = notesOf(rating);
      expect(others).toEqual([]);
      expect(note).toMatchObject({
        tag: 'NoOpenClassTable',
        says: expect.stringContaining('the stamping is asked for'),
      });
      expect(note?.figures?.map(({ value }) => showBrief(value))).toEqual([showBrief(lb(rating))]);
    }
    expect(usualHubs.flatMap(({ axleToLb }) => rightOf(usualHub(lb(axleToLb))).notes)).toEqual([]);
  });
  it('ends, and says where to read on', () => {
    expect(describeError(leftOf(usualHub(lb(8000))))).toMatchInlineSnapshot(
      `"the table hub conventions has no row 8,000 lb axle; the nearest rows are 2000 to 2200 lb axle, 3500 lb axle, 5200 to 6000 lb axle, 7000 lb axle; read the numbers stamped on hub and bearings; for axles of 8,000 lb and more there is no open table"`,
    );
    expect(describeError(leftOf(usualBrake(lb(12000))))).toMatchInlineSnapshot(
      `"the table usual brake sizes has no row 12,000 lb axle; the nearest rows are 2000 to 3500 lb axle, 5200 to 7000 lb axle, 8000 to 10000 lb axle; read the size and rating on the brake itself; for axles of 8,000 lb and more there is no open class table"`,
    );
    expect(leftOf(usualHub(lb(4400)))).toMatchObject({ tag: 'NotTabulated', asked: '4,400 lb axle' });
    expect(leftOf(usualBrake(lb(0)))).toMatchObject({ what: 'axle rating' });
  });
});

describe('bolt circles', () => {
  it('are read from two neighbours', () => {
    // loads notes, section 10: five studs on 4.5 in stand 2-5/8 in apart (2.645 in)
    const circle = rightOf(boltCircle(inch('2.645'), 5));
    expect(showBrief(circle.value, 2)).toBe('4.5 in');
    expectReplays(circle);
    expect(showBrief(rightOf(boltCircle(mm('69.85'), 6)).value, 3)).toBe('5.5 in');
    expect(leftOf(boltCircle(inch(0), 5)).tag).toBe('HardwareNotAboveZero');
  });
  it('do not say what an axle carries: one circle stands on axles of two ratings', () => {
    const on = usualHubs
      .filter(({ boltCircles }) => boltCircles.some(({ circle }) => circle === '5-4.5'))
      .map(({ axleToLb }) => axleToLb);
    expect(on).toEqual(['2200', '3500']);
  });
});

it('lists its tables and its conventions', () => {
  expect(axlesTables.map(({ name }) => name)).toEqual([
    'usual brake sizes',
    'wheel nut torque',
    'hub conventions',
    'vehicle brake performance, property-carrying',
  ]);
  expect(usualBrakeSizes).toHaveLength(3);
});
