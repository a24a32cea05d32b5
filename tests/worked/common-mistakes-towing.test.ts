/** Common mistakes of towing, in numbers (loads notes, section 12): our answer beside the wrong one. */
import { describe, expect, it } from 'vitest';
import { combinationWeight, couplerClass, hitchedAxleLoads, largestTrailer, leverScale, readScaleTickets, scaleDivision, tongueFromTickets, towChecks, type TowVehicle, weakestPart, weightDistribution } from '../../src/towing/index.js';
import { constant, converted, type Derived, sum } from '../../src/trace/index.js';
import { foot, inch, kg, lb, percent, show, showBrief } from '../../src/units/index.js';
import { leftOf, rightOf } from '../helpers/either.js';
import { expectReplays } from '../helpers/working.js';

const added = (...pounds: readonly number[]): Derived<'lb'> => sum(null, pounds.map((one) => constant(lb(one))));
const beside = (ours: Derived<'lb'>, wrong: Derived<'lb'>): [string, string] => {
  expectReplays(ours);
  return [showBrief(ours.value), showBrief(wrong.value)];
};

describe('the common mistakes', () => {
  it('tongue counted twice: 21,200 lb for a combination of 19,800', () => {
    expect(beside(combinationWeight(lb(7400), lb(12400)), added(7400, 1400, 12400))).toEqual(['19,800 lb', '21,200 lb']);
  });
  it('tongue added to the placard: 2,200 lb where 800 are left', () => {
    const { checks } = rightOf(towChecks({ hitch: 'ball behind', placard: { limit: lb(1500), people: lb(0), cargo: lb(0) } }, { gross: lb(7000), tongue: lb(700) }));
    expect(beside(checks[0]!.reserve, added(1500, 700))).toEqual(['800 lb', '2,200 lb']);
  });
  it('leverage ignored: 1,503 kg on the rear axle where the scale showed 1,650', () => {
    // the overhang ratio follows from the tickets themselves
    const read = rightOf(readScaleTickets({
      tickets: { truckAlone: { steer: kg(1100), drive: kg(1233) }, barsOff: { steer: kg(953), drive: kg(1650), trailer: kg(1800) } }, division: kg(10),
    }));
    expect(showBrief(read.overhangOverWheelbase!.value, 4)).toBe('0.5444');
    const hitched = rightOf(hitchedAxleLoads({ hitch: 'ball behind', front: kg(1100), rear: kg(1233), tongue: kg(270), overhang: { ofWheelbase: read.overhangOverWheelbase! } }));
    expect(showBrief(converted(null, hitched.rear, 'kg').value)).toBe('1,650 kg');
    expectReplays(hitched.rear, read.overhangOverWheelbase!);
  });
  it('the rear axle judged with bars on: it passes by the bars, and does not pass', () => {
    const wd = rightOf(weightDistribution({
      front: lb(3200), rear: lb(2600), gross: lb(7000), tongue: lb(1000), wheelbase: inch(130), overhang: inch(65), ballToAxles: inch(200), bars: { restore: percent(100) }, ratings: { rear: lb(3800) },
    }));
    expect(beside(wd.barsOff.rear, wd.barsOn.rear)).toEqual(['4,100 lb', '3,354.72 lb']);
    expect(wd.findings.barsOff.checks.map(({ verdict }) => verdict)).toEqual(['over']);
  });
  it('bars taken to lighten the rig: the combination weighs the same', () => {
    const wd = rightOf(weightDistribution({
      front: lb(3200), rear: lb(2600), gross: lb(7000), tongue: lb(1000), wheelbase: inch(130), overhang: inch(65), ballToAxles: inch(200), bars: { trailerGain: lb(300) },
    }));
    const rig = ({ front, rear, trailerAxles }: typeof wd.barsOn): Derived<'lb'> => sum('rig', [front, rear, trailerAxles]);
    expect(beside(rig(wd.barsOn), rig(wd.barsOff))).toEqual(['12,800 lb', '12,800 lb']);
  });
  it('weighing with bars on only: 1,240 lb for a tongue of 1,400', () => {
    const barsOn = { steer: lb(4087), drive: lb(4553), trailer: lb(11160) };
    const truckAlone = { steer: lb(4300), drive: lb(3100) };
    const question = { tickets: { barsOn, truckAlone }, division: scaleDivision };
    expect(leftOf(tongueFromTickets(question)).tag).toBe('TicketsCannotTell');
    expect(show(rightOf(readScaleTickets(question)).tongueAtLeast!.value)).toBe('1,240 lb');
    const barsOff = { steer: lb(3845), drive: lb(4955), trailer: lb(11000) };
    expect(show(rightOf(tongueFromTickets({ ...question, tickets: { barsOn, barsOff, truckAlone } })).value)).toBe('1,400 lb');
  });
  it('times three for every lever: 600 lb where 800 press', () => {
    const read = rightOf(leverScale({ reading: lb(215), beamTare: lb(15), pipeToTongue: foot(1), tongueToScale: foot(3), tongueRestsAt: 'coupler' }));
    expect(beside(read.tongue, added(200, 200, 200))).toEqual(['800 lb', '600 lb']);
  });
  it('the receiver read and the ball forgotten: 5,000 lb where 2,500 govern', () => {
    const answer = rightOf(weakestPart([{ part: 'receiver', rating: lb(5000) }, { part: 'ball', rating: lb(2500) }]));
    expect(beside(answer.least, added(5000))).toEqual(['2,500 lb', '5,000 lb']);
  });
  it('the tow rating taken for the answer: payload runs out before it', () => {
    const truck: TowVehicle = { hitch: 'ball behind', front: lb(2600), rear: lb(2400), placard: { limit: lb(1500), people: lb(500), cargo: lb(300) }, trailerRating: lb(9000) };
    const answer = rightOf(largestTrailer({ vehicle: truck, tongueShare: percent(12) }));
    expect(beside(answer.trailer, added(9000))).toEqual(['5,833.33 lb', '9,000 lb']);
    expect(answer.governing.map(({ name }) => name)).toEqual(['occupant and cargo placard']);
  });
  it('a coupler class taken from the load instead of the GVWR', () => {
    expect([rightOf(couplerClass(lb(5000))).couplerClass, rightOf(couplerClass(lb(7000))).couplerClass]).toEqual(['3', '4']);
  });
});
