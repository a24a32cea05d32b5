/**
 * Common mistakes in numbers: our answer beside the wrong one, each once.
 *
 * Each says why the wrong figure is wrong. Where no source is named, the arithmetic is the check.
 */
import { describe, expect, it } from 'vitest';
import { assess } from '../../src/assessment/index.js';
import {
  guideline,
  howManyTiedowns,
  type TiedArticle,
  tiedowns,
  tiedownWll,
  tongueAdvice,
} from '../../src/load/index.js';
import { coupledAxleLoad, largestRatedCargo, licenceGroup } from '../../src/rules/index.js';
import { tireLoadRating } from '../../src/tires/index.js';
import {
  combinationWeight,
  couplerClass,
  hitchedAxleLoads,
  largestTrailer,
  leverScale,
  readScaleTickets,
  scaleDivision,
  type TowVehicle,
  tongueFromTickets,
  towChecks,
  weakestHitchPart,
  weightDistribution,
} from '../../src/towing/index.js';
import {
  constant,
  converted,
  type Derived,
  difference,
  fromMemory,
  product,
  quotient,
  sum,
} from '../../src/trace/index.js';
import { compare, foot, inch, kg, lb, percent, ratio, show, showBrief, type Unit } from '../../src/units/index.js';
import { leftOf, rightOf } from '../helpers/either.js';
import { expectReplays } from '../helpers/working.js';

const pounds = (digits: number): Derived<'lb'> => constant(lb(digits));
const added = (...digits: readonly number[]): Derived<'lb'> => sum(null, digits.map(pounds));
const times = (a: Derived<'lb'>, by: string): Derived<'lb'> => product(null, a, constant(ratio(by)));

/** Our figure and the wrong one in print: ours replays, and they are not the same. */
function beside<U extends Unit>(
  ours: Derived<U>,
  wrong: Derived<NoInfer<U>>,
  places = 0,
): readonly [ours: string, wrong: string] {
  expectReplays(ours);
  expect(compare(ours.value, wrong.value), 'the mistake must be another figure').not.toBe(0);
  return [showBrief(ours.value, places), showBrief(wrong.value, places)];
}

describe('common mistakes', () => {
  // The trailer's gross weight holds its tongue load already.
  it('1 tongue counted twice', () =>
    expect(beside(combinationWeight(lb(7400), lb(12400)), added(7400, 1400, 12400))).toEqual([
      '19,800 lb',
      '21,200 lb',
    ]));
  // The tongue load is cargo to the truck: it uses the placard up.
  it('2 tongue added to payload', () => {
    const { checks } = rightOf(
      towChecks(
        { hitch: 'ball behind', placard: { limit: lb(1500), people: lb(0), cargo: lb(0) } },
        { gross: lb(7000), tongue: lb(700) },
      ),
    );
    expect(beside(checks[0]!.reserve, added(1500, 700))).toEqual(['800 lb', '2,200 lb']);
  });
  // The GVWR is trailer and cargo together.
  it('3 GVWR taken as load', () =>
    expect(beside(rightOf(largestRatedCargo({ gvwr: lb(7000), unloaded: lb(2000), seats: 0 })), pounds(7000))).toEqual([
      '5,000 lb',
      '7,000 lb',
    ]));
  // Dividing by 1 - 10 % says what two axles could bear at that share, 15,556 lb; it is no label, and at 9 % a label of 15,400 lb puts too much on them.
  it('4 GVWR confused with axles', () => {
    const at = (share: number) =>
      rightOf(coupledAxleLoad({ gvwr: lb(15400), tongueShare: percent(share), sumOfGawrs: lb(14000) }));
    expect(showBrief(quotient(null, pounds(14000), constant(ratio('0.9'))).value, 0)).toBe('15,556 lb');
    expect(beside(at(9).axleLoad, pounds(14000))).toEqual(['14,014 lb', '14,000 lb']);
    expect([at(9).check.verdict, at(10).check.verdict, showBrief(at(10).axleLoad.value)]).toEqual([
      'over',
      'within',
      '13,860 lb',
    ]);
  });
  // The brochure's hitch weight is of the empty trailer: 440 lb is 9.2 % of 4,806 lb dry, and 7.3 % of what it weighs loaded.
  it('5 dry hitch weight', () => {
    const advice = tongueAdvice(
      { gross: pounds(6000), tongue: pounds(440) },
      rightOf(guideline(percent(12), percent(12), fromMemory('a share for the test'))),
    );
    expect(beside(advice.least, pounds(440))).toEqual(['720 lb', '440 lb']);
    expect([
      advice.verdict,
      showBrief(converted(null, quotient(null, pounds(440), pounds(4806)), '%').value, 1),
    ]).toEqual(['light', '9.2 %']);
  });
  // A passenger tire on a trailer counts for its load over 1.10 (49 CFR 571.120 S5.1.2), which is not 9 % off.
  it('6 passenger tires', () => {
    const on = { fitment: 'single', on: 'trailer' } as const;
    const passenger = rightOf(tireLoadRating({ designation: 'P225/75R15', molded: { single: lb(1874) } }, on)).rating;
    const special = rightOf(tireLoadRating({ designation: 'ST225/75R15 LRD' }, on)).rating;
    expect(beside(passenger, times(pounds(1874), '0.91'))).toEqual(['1,704 lb', '1,705 lb']);
    expect(beside(passenger, pounds(1874))).toEqual(['1,704 lb', '1,874 lb']);
    expect([show(special.value), showBrief(difference(null, special, passenger).value, 0)]).toEqual([
      '2,540 lb',
      '836 lb',
    ]);
  });
  // A chain from trailer to machine counts half its working load limit (49 CFR 393.106(d)): three that look like 19,800 lb are 9,900.
  it('7 half-load rule', () => {
    const article: TiedArticle = {
      weight: lb(20000),
      length: foot(18),
      blockedForward: false,
      section: 'heavy equipment',
    };
    const { wll } = rightOf(tiedownWll([{ part: 'chain', size: '3/8', grade: '70' }]));
    const fitted = (count: number) =>
      rightOf(
        tiedowns(
          article,
          Array.from({ length: count }, () => ({ wll, runs: 'direct' }) as const),
        ),
      );
    expect(beside(fitted(3).counted, times(wll, '3'))).toEqual(['9,900 lb', '19,800 lb']);
    expect([
      fitted(3).strength,
      fitted(4).strength,
      showBrief(fitted(4).counted.value),
      showBrief(fitted(4).needed.value),
    ]).toEqual(['short', 'enough', '13,200 lb', '10,000 lb']);
    expect(showBrief(rightOf(howManyTiedowns(article, { wll, runs: 'direct' })).byStrength.value)).toBe('4');
  });
  // Three belongs to a beam of one foot and two; with the scale three feet past the tongue it is four.
  it('8 times three for every lever', () => {
    const read = rightOf(
      leverScale({
        reading: lb(215),
        beamTare: lb(15),
        pipeToTongue: foot(1),
        tongueToScale: foot(3),
        tongueRestsAt: 'coupler',
      }),
    );
    expect(beside(read.tongue, times(pounds(200), '3'))).toEqual(['800 lb', '600 lb']);
  });
  // With bars on the truck's axles are light by what the bars put on the trailer's.
  it('9 weighing with bars on only', () => {
    const barsOn = { steer: lb(4087), drive: lb(4553), trailer: lb(11160) };
    const barsOff = { steer: lb(3845), drive: lb(4955), trailer: lb(11000) };
    const question = { tickets: { barsOn, truckAlone: { steer: lb(4300), drive: lb(3100) } }, division: scaleDivision };
    expect(leftOf(tongueFromTickets(question)).tag).toBe('TicketsCannotTell');
    const underRead = rightOf(readScaleTickets(question)).tongueAtLeast!;
    expect(
      beside(rightOf(tongueFromTickets({ ...question, tickets: { ...question.tickets, barsOff } })), underRead),
    ).toEqual(['1,400 lb', '1,240 lb']);
  });
  // The ball behind the axle levers load off the front axle: 1,233 and 270 are not what the rear axle carries. Printed case, kg.
  it('10 ignoring leverage', () => {
    const { overhangOverWheelbase } = rightOf(
      readScaleTickets({
        tickets: {
          truckAlone: { steer: kg(1100), drive: kg(1233) },
          barsOff: { steer: kg(953), drive: kg(1650), trailer: kg(1800) },
        },
        division: kg(10),
      }),
    );
    const { rear } = rightOf(
      hitchedAxleLoads({
        hitch: 'ball behind',
        front: kg(1100),
        rear: kg(1233),
        tongue: kg(270),
        overhang: { ofWheelbase: overhangOverWheelbase! },
      }),
    );
    expect(beside(converted(null, rear, 'kg'), sum(null, [constant(kg(1233)), constant(kg(270))]))).toEqual([
      '1,650 kg',
      '1,503 kg',
    ]);
  });
  // A row of parts is as strong as its weakest. University extension guide PPP-92, as reported in trade press.
  it('11 weakest hitch part', () => {
    const all = ['receiver', 'ball mount', 'coupler'].map((part) => ({ part, rating: lb(5000) }));
    expect(beside(rightOf(weakestHitchPart([...all, { part: 'ball', rating: lb(2500) }])).limit, pounds(5000))).toEqual(
      ['2,500 lb', '5,000 lb'],
    );
  });
  // Two limits on one load: to find the one overload and stop is to miss the other.
  it('12 checking tires but not the axle, or the reverse', () => {
    const tires = {
      designation: 'ST235/80R16 LRD',
      count: 2,
      fitment: 'single' as const,
      molded: { single: '3,042 lb', pressure: '65 psi' },
      pressure: '65 psi',
    };
    const { checks, verdict } = rightOf(
      assess({
        trailer: {
          hitch: 'ball',
          gvwr: '9,990 lb',
          curb: { weight: '2,000 lb', tongue: '300 lb' },
          axles: [{ at: '150 in', gawr: '6,000 lb', tires }],
        },
        cargo: [{ name: 'pallet', weight: '5,500 lb', at: '140 in' }],
      }),
    );
    const over = checks.filter(({ verdict }) => verdict === 'over');
    expect(over.map(({ what }) => what)).toEqual(['axle load against axle 1 GAWR', 'tire load against axle 1 tire']);
    expect(beside(over[0]!.load, over[1]!.load)).toEqual(['6,833 lb', '3,417 lb']);
    expect([verdict, over.length]).toEqual(['over', 2]);
  });
  // Capacity by the salesman and own weight add up to 16,200 lb; the rating on the label, here 14,000 lb, is what the definition takes.
  it('13 CDL sum from capacity and own weight', () => {
    const group = (trailer: number) =>
      rightOf(
        licenceGroup({
          powerUnit: { gvwr: lb(10500), gross: 'not above GVWR' },
          towed: [{ gvwr: lb(trailer), gross: 'not above GVWR' }],
          labelGcwr: 'not shown',
        }),
      );
    const [ours, wrong] = [group(14000), group(12000 + 4200)];
    expect(beside(ours.rating.gcwr, wrong.rating.gcwr)).toEqual(['24,500 lb', '26,700 lb']);
    expect([ours.group, wrong.group]).toEqual(['none by weight', 'A']);
  });
});

describe('common mistakes, further ones of towing', () => {
  const bars = {
    front: lb(3200),
    rear: lb(2600),
    gross: lb(7000),
    tongue: lb(1000),
    wheelbase: inch(130),
    overhang: inch(65),
    axlesAt: inch(200),
  };
  // The bars may not be counted on for the rear axle.
  it('the rear axle judged with bars on', () => {
    const wd = rightOf(weightDistribution({ ...bars, bars: { restore: percent(100) }, ratings: { rear: lb(3800) } }));
    expect(beside(wd.barsOff.rear, wd.barsOn.rear)).toEqual(['4,100 lb', '3,355 lb']);
    expect(wd.findings.barsOff.checks.map(({ verdict }) => verdict)).toEqual(['over']);
  });
  // What bars add to one axle they take from another; subtracting what the rear axle lost from the rig forgets the others.
  it('bars taken to lighten the rig', () => {
    const { barsOn, barsOff, offRear } = rightOf(weightDistribution({ ...bars, bars: { trailerGain: lb(300) } }));
    const rig = ({ front, rear, trailerAxles }: typeof barsOn): Derived<'lb'> =>
      sum('rig', [front, rear, trailerAxles]);
    expect(beside(rig(barsOn), difference(null, rig(barsOff), offRear))).toEqual(['12,800 lb', '11,888 lb']);
    expect(showBrief(rig(barsOff).value)).toBe('12,800 lb');
  });
  // The tow rating assumes a truck with hardly anything in it.
  it('the tow rating taken for the answer', () => {
    const truck: TowVehicle = {
      hitch: 'ball behind',
      front: lb(2600),
      rear: lb(2400),
      placard: { limit: lb(1500), people: lb(500), cargo: lb(300) },
      trailerRating: lb(9000),
    };
    const answer = rightOf(largestTrailer({ vehicle: truck, tongueShare: percent(12) }));
    expect(beside(answer.trailer, pounds(9000))).toEqual(['5,833 lb', '9,000 lb']);
    expect(answer.governing.map(({ name }) => name)).toEqual(['occupant and cargo placard']);
  });
  // The class goes by the GVWR, not by what lies on the trailer today.
  it('a coupler class taken from the load', () =>
    expect([rightOf(couplerClass(lb(7000))).couplerClass, rightOf(couplerClass(lb(5000))).couplerClass]).toEqual([
      '4',
      '3',
    ]));
});
