/** Forces and moments balance, whatever the rig; and the unit system does not matter. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hitchedAxleLoads, towChecks, weightDistribution } from '../../src/towing/index.js';
import { type Decimal, inch, kg, lb, mm, percent } from '../../src/units/index.js';
import { compareDecimals } from '../../src/units/internal.js';
import { rightOf } from '../helpers/either.js';
import { expectReplays } from '../helpers/working.js';

const rig = fc.record({
  front: fc.integer({ min: 1500, max: 6000 }),
  rear: fc.integer({ min: 1200, max: 6000 }),
  tongue: fc.integer({ min: -400, max: 3000 }),
  wheelbase: fc.integer({ min: 90, max: 220 }),
  overhang: fc.integer({ min: 1, max: 80 }),
  axlesAt: fc.integer({ min: 100, max: 400 }),
  gross: fc.integer({ min: 3001, max: 26000 }),
  gain: fc.integer({ min: 0, max: 600 }),
});
const same = (a: Decimal, b: Decimal): void =>
  expect(compareDecimals(a, b), `${a.toFixed()} and ${b.toFixed()}`).toBe(0);

describe('hitched axle loads', () => {
  it('add up to the tongue load, and balance about the rear axle', () => {
    fc.assert(
      fc.property(rig, ({ front, rear, tongue, wheelbase, overhang }) => {
        const hitched = rightOf(
          hitchedAxleLoads({
            hitch: 'ball behind',
            front: lb(front),
            rear: lb(rear),
            tongue: lb(tongue),
            wheelbase: inch(wheelbase),
            overhang: inch(overhang),
          }),
        );
        same(hitched.front.value.value.plus(hitched.rear.value.value), lb(front + rear + tongue).value);
        same(hitched.front.value.value.times(wheelbase).plus(lb(tongue * overhang).value), lb(front * wheelbase).value);
        expectReplays(hitched.front, hitched.rear);
      }),
    );
  });
  it('balance for a gooseneck too, which unloads no axle', () => {
    fc.assert(
      fc.property(rig, fc.integer({ min: 0, max: 89 }), ({ front, rear, tongue, wheelbase }, ahead) => {
        fc.pre(tongue >= 0);
        const hitched = rightOf(
          hitchedAxleLoads({
            hitch: 'gooseneck',
            front: lb(front),
            rear: lb(rear),
            tongue: lb(tongue),
            wheelbase: inch(wheelbase),
            overhang: inch(-ahead),
          }),
        );
        same(hitched.front.value.value.plus(hitched.rear.value.value), lb(front + rear + tongue).value);
        same(hitched.front.value.value.minus(front).times(wheelbase), lb(tongue * ahead).value);
        expect(hitched.front.value.value.gte(front) && hitched.rear.value.value.gte(rear)).toBe(true);
      }),
    );
  });
  it('are the same rig in kilograms and millimetres', () => {
    fc.assert(
      fc.property(rig, ({ front, rear, tongue, wheelbase, overhang }) => {
        const metric = rightOf(
          hitchedAxleLoads({
            hitch: 'ball behind',
            front: kg(front),
            rear: kg(rear),
            tongue: kg(tongue),
            wheelbase: mm(wheelbase),
            overhang: mm(overhang),
          }),
        );
        const customary = rightOf(
          hitchedAxleLoads({
            hitch: 'ball behind',
            front: lb(front),
            rear: lb(rear),
            tongue: lb(tongue),
            wheelbase: inch(wheelbase),
            overhang: inch(overhang),
          }),
        );
        const inPounds = kg(1).value.div('0.45359237');
        same(metric.rear.value.value, customary.rear.value.value.times(inPounds));
        same(metric.front.value.value, customary.front.value.value.times(inPounds));
      }),
    );
  });
});

describe('spring bars', () => {
  const ask = (
    r: {
      front: number;
      rear: number;
      tongue: number;
      gross: number;
      wheelbase: number;
      overhang: number;
      axlesAt: number;
    },
    bars: Parameters<typeof weightDistribution>[0]['bars'],
  ) =>
    rightOf(
      weightDistribution({
        front: lb(r.front),
        rear: lb(r.rear),
        gross: lb(r.gross),
        tongue: lb(r.tongue),
        wheelbase: inch(r.wheelbase),
        overhang: inch(r.overhang),
        axlesAt: inch(r.axlesAt),
        bars,
      }),
    );
  it('move load and make none: the moves sum to zero and balance about the ball', () => {
    fc.assert(
      fc.property(rig, (r) => {
        const wd = ask(r, { trailerGain: lb(r.gain) });
        same(wd.ontoTrailer.value.value.plus(wd.ontoFront.value.value), wd.offRear.value.value);
        const aboutBall = wd.ontoFront.value.value
          .times(r.overhang + r.wheelbase)
          .minus(wd.offRear.value.value.times(r.overhang))
          .minus(wd.ontoTrailer.value.value.times(r.axlesAt));
        same(aboutBall.plus(1), lb(1).value);
        const all = (loads: typeof wd.barsOn): Decimal =>
          loads.front.value.value.plus(loads.rear.value.value).plus(loads.trailerAxles.value.value);
        same(all(wd.barsOn), lb(r.front + r.rear + r.gross).value);
        same(all(wd.barsOff), lb(r.front + r.rear + r.gross).value);
      }),
    );
  });
  it('restore the fraction that was asked for', () => {
    fc.assert(
      fc.property(rig, fc.integer({ min: 1, max: 100 }), (r, share) => {
        fc.pre(r.tongue > 0);
        const wd = ask(r, { restore: percent(share) });
        same(wd.restored!.value.value.times(100), percent(share).value);
        expectReplays(wd.moment, wd.restored!, wd.barsOn.front, wd.barsOn.rear, wd.barsOn.trailerAxles);
      }),
    );
  });
});

describe('the chain of checks', () => {
  it('gives the same verdicts and shares in kilograms and millimetres', () => {
    fc.assert(
      fc.property(rig, ({ front, rear, tongue, wheelbase, overhang, gross }) => {
        fc.pre(tongue > 0);
        const asked = <W, L>(w: (n: number) => W, l: (n: number) => L) => ({
          vehicle: {
            hitch: 'ball behind' as const,
            front: w(front),
            rear: w(rear),
            gvwr: w(9000),
            frontGawr: w(4500),
            rearGawr: w(6000),
            gcwr: w(20000),
            tongueRating: w(1500),
            wheelbase: l(wheelbase),
            overhang: l(overhang),
          },
          trailer: { gross: w(gross), tongue: w(tongue) },
        });
        const customary = asked(lb, inch);
        const metric = asked(kg, mm);
        const [one, other] = [
          rightOf(towChecks(customary.vehicle, customary.trailer)),
          rightOf(towChecks(metric.vehicle, metric.trailer)),
        ];
        expect(other.checks.map(({ kind, verdict }) => `${kind} ${verdict}`)).toEqual(
          one.checks.map(({ kind, verdict }) => `${kind} ${verdict}`),
        );
        for (const [i, { used }] of one.checks.entries()) same(used.value.value, other.checks[i]!.used.value.value);
        expectReplays(...other.checks.map(({ reserve }) => reserve));
      }),
    );
  });
});
