/** Hitch problems with printed numbers, each with its source beside it. */
import { describe, expect, it } from 'vitest';
import { hitchedAxleLoads, weightDistribution } from '../../src/towing/index.js';
import { constant, converted, type Derived, difference, product, quotient, sum } from '../../src/trace/index.js';
import { foot, inch, kg, lb, percent, ratio, roundNearest, show, showBrief, type Unit } from '../../src/units/index.js';
import { rightOf } from '../helpers/either.js';
import { expectReplays } from '../helpers/working.js';

const brief = (figure: Derived<Unit>, places = 1): string => showBrief(figure.value, places);
const half = (figure: Derived<'lb'>): Derived<'lb'> => quotient(null, figure, constant(ratio(2)));

describe('a trailer and a truck, per wheel', () => {
  // Beer and Johnston, Vector Mechanics for Engineers: Statics, chapter 6 (6.95 and its follow-on); dimensions and answers from memory
  const feet = (digits: number): Derived<'ft'> => constant(foot(digits));
  const trailer = constant(lb(2400));
  const truck = constant(lb(2900));
  const trailerAxle = quotient('trailer axle', product(null, trailer, feet(9)), feet(11));
  const tongue = difference('tongue', trailer, trailerAxle);
  const frontAlone = quotient('front alone', product(null, truck, feet(5)), feet(9));
  const rearAlone = quotient('rear alone', product(null, truck, feet(4)), feet(9));
  const hitched = rightOf(
    hitchedAxleLoads({
      hitch: 'ball behind',
      front: frontAlone,
      rear: rearAlone,
      wheelbase: foot(9),
      overhang: foot(3),
      tongue,
    }),
  );
  it('gives the printed wheel loads', () => {
    expect([half(trailerAxle), half(hitched.rear), half(hitched.front)].map((load) => brief(load))).toEqual([
      '981.8 lb',
      '935.4 lb',
      '732.8 lb',
    ]);
    expect([half(hitched.ontoRear), half(hitched.offFront)].map((load) => brief(load))).toEqual([
      '290.9 lb',
      '72.7 lb',
    ]);
    expectReplays(hitched.front, hitched.rear);
  });
});

describe('a measured overhang', () => {
  // web example, reproduced by statics: rear 1,233 kg alone, 270 kg on the ball, 1,650 kg hitched
  const ratioOfIt = quotient('overhang over wheelbase', constant(kg(147)), constant(kg(270)));
  const hitched = rightOf(
    hitchedAxleLoads({
      hitch: 'ball behind',
      overhang: { ofWheelbase: ratioOfIt },
      front: kg(1100),
      rear: kg(1233),
      tongue: kg(270),
    }),
  );
  it('moves 147 kg off the front axle', () => {
    expect(brief(ratioOfIt, 4)).toBe('0.5444');
    expect([brief(converted(null, hitched.rear, 'kg')), brief(converted(null, hitched.offFront, 'kg'))]).toEqual([
      '1,650 kg',
      '147 kg',
    ]);
    expectReplays(hitched.front, hitched.rear);
  });
  it('is not the plain sum: leverage ignored gives 1,503 kg', () => {
    const plain = sum(null, [constant(kg(1233)), constant(kg(270))]);
    expect(show(plain.value)).toBe('1,503 kg');
    expect(brief(converted(null, hitched.rear, 'kg'))).toBe('1,650 kg');
  });
});

describe('the constructed reference rig', () => {
  // constructed; plain statics
  it('puts 3,845 lb on the front and 4,955 lb on the rear axle', () => {
    const hitched = rightOf(
      hitchedAxleLoads({
        hitch: 'ball behind',
        front: lb(4300),
        rear: lb(3100),
        wheelbase: inch(160),
        overhang: inch(52),
        tongue: lb(1400),
      }),
    );
    expect([hitched.front, hitched.rear].map(({ value }) => show(value))).toEqual(['3,845 lb', '4,955 lb']);
    expectReplays(hitched.front, hitched.rear);
  });
  it('puts 2,925 lb and 75 lb on the axles from a gooseneck 4 in ahead', () => {
    const hitched = rightOf(
      hitchedAxleLoads({
        hitch: 'gooseneck',
        front: lb(4300),
        rear: lb(3100),
        wheelbase: inch(160),
        overhang: inch(-4),
        tongue: lb(3000),
      }),
    );
    expect([hitched.ontoRear, hitched.offFront].map(({ value }) => show(value))).toEqual(['2,925 lb', '-75 lb']);
    expect(show(hitched.front.value)).toBe('4,375 lb');
    expectReplays(hitched.front, hitched.rear);
  });
});

describe('spring bars', () => {
  const rig = {
    front: lb(3200),
    rear: lb(2600),
    gross: lb(7000),
    tongue: lb(1000),
    wheelbase: inch(130),
    overhang: inch(65),
    axlesAt: inch(200),
  };
  it('put 300 lb on the trailer axles from 2,000 lb at 30 in bars', () => {
    // web example (the 300 lb printed), reproduced by statics
    const wd = rightOf(weightDistribution({ ...rig, bars: { barLoad: lb(2000), barLength: inch(30) } }));
    expect(show(wd.moment.value)).toBe('60,000 lb\u00b7in');
    expect([wd.ontoTrailer, wd.ontoFront, wd.offRear].map((load) => brief(load))).toEqual([
      '300 lb',
      '611.5 lb',
      '911.5 lb',
    ]);
    expectReplays(wd.ontoTrailer, wd.ontoFront, wd.offRear, wd.barsOn.front, wd.barsOn.rear, wd.barsOn.trailerAxles);
  });
  it('give half of it back with 24,528 lb in', () => {
    // constructed; plain statics
    const wd = rightOf(weightDistribution({ ...rig, bars: { restore: percent(50) } }));
    expect([brief(wd.moment), brief(wd.ontoTrailer)]).toEqual(['24,528.3 lb\u00b7in', '122.6 lb']);
    expect(brief(difference(null, wd.barsOn.front, constant(lb(3200))))).toBe('-250 lb');
    expect(brief(difference(null, wd.barsOn.rear, constant(lb(2600))))).toBe('1,127.4 lb');
    expect(show(roundNearest(wd.restored!.value, ratio('0.000001')))).toBe('0.5');
    expectReplays(wd.moment, wd.restored!);
  });
});
