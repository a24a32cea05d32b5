/** What spring bars move: load back to the front axle and onto the trailer axles. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../ratings/index.js';
import {
  type AnyLength,
  type AnyMoment,
  type AnyShare,
  type AnyWeight,
  asDerived,
  type Decision,
  type Derived,
  decide,
  difference,
  inInches,
  inPounds,
  inUnit,
  over,
  plus,
  product,
  quotient,
  result,
  statics,
  sum,
  times,
} from '../trace/index.js';
import { toWire } from '../units/index.js';
import { ask, type Findings, gathered } from './checks/checks-or-missing.js';
import type { TowingError } from './errors.js';
import { allAboveZero, aShare, noneBelowZero, noneOf, plainShare } from './figures.js';
import { hitchLever, takenOffFront } from './hitch/hitch-lever.js';
import { hitchedBy, tongueRemark } from './vehicle/hitched-axle-loads.js';

/** How the bars are set, in one of four ways of saying it. */
export type BarSetting =
  /** The moment of both bars at the hitch head. */
  | { readonly moment: AnyMoment }
  /** The lift at the bar ends, both together, and the length of a bar. */
  | { readonly barLoad: AnyWeight; readonly barLength: AnyLength }
  /** The fraction of what the front axle lost that shall come back. */
  | { readonly restore: AnyShare }
  /** What the trailer axles gained from bars off to bars on, as scaled. */
  | { readonly trailerGain: AnyWeight };

export interface WeightDistributionQuestion {
  /** The axles of the truck alone, people and cargo aboard. */
  readonly front: AnyWeight;
  readonly rear: AnyWeight;
  readonly gross: AnyWeight;
  readonly tongue: AnyWeight;
  /** Hitch parts that hang on the ball and were not on the truck when it was scaled. */
  readonly hitchHardware?: AnyWeight | undefined;
  readonly wheelbase: AnyLength;
  readonly overhang: AnyLength;
  /** Ball to the centre of the trailer's axles. */
  readonly axlesAt: AnyLength;
  readonly bars: BarSetting;
  /** The trailer axles' rating is that of the group; each axle has its own check in the axles chapter. */
  readonly ratings?:
    | {
        readonly front?: AnyWeight | undefined;
        readonly rear?: AnyWeight | undefined;
        readonly trailerAxles?: AnyWeight | undefined;
      }
    | undefined;
}

/** The three scale platforms. */
export interface RigLoads {
  readonly front: Derived<'lb'>;
  readonly rear: Derived<'lb'>;
  readonly trailerAxles: Derived<'lb'>;
}

export interface WeightDistribution {
  readonly moment: Derived<'lb*in'>;
  readonly ontoTrailer: Derived<'lb'>;
  readonly ontoFront: Derived<'lb'>;
  readonly offRear: Derived<'lb'>;
  /** Share of what the tongue took off the front axle that came back; absent when it took nothing. */
  readonly restored?: Derived<'ratio'>;
  readonly barsOff: RigLoads;
  readonly barsOn: RigLoads;
  /** Front, rear and trailer axles with bars off; front and trailer axles with bars on. The rear axle is never credited with the bars. */
  readonly findings: { readonly barsOff: Findings; readonly barsOn: Findings };
  readonly notes: readonly Note[];
  readonly decisions: readonly Decision[];
}

type Setting = { readonly moment: Derived<'lb*in'>; readonly decisions: readonly Decision[] };

/** The moment of both bars at the hitch head, as it is stated: by itself, by what the trailer axles gained, or by the lift at the bar ends. */
function momentAsStated(bars: Exclude<BarSetting, { readonly restore: AnyShare }>, a: Derived<'in'>): Derived<'lb*in'> {
  if ('moment' in bars) return inUnit(asDerived('hitch moment', bars.moment), 'lb*in');
  if ('trailerGain' in bars) return product('hitch moment', inPounds('gain of the trailer axles', bars.trailerGain), a);
  const lift = inPounds('lift at the bar ends', bars.barLoad);
  return product('hitch moment', lift, inInches('bar length', bars.barLength));
}

function momentOf(
  bars: BarSetting,
  a: Derived<'in'>,
  o: Derived<'in'>,
  tongue: Derived<'lb'>,
  offFront: Derived<'lb'>,
): Either<TowingError, Setting> {
  if ('restore' in bars) {
    const share = plainShare('fraction to restore', bars.restore);
    const fraction = aShare('fraction to restore', share);
    if (isLeft(fraction)) return fraction;
    const lost = decide(offFront, '>', noneOf('lb'));
    if (!lost.holds) return left({ chapter: 'towing', tag: 'NothingToRestore', offFront: toWire(offFront.value) });
    const wanted = times(share, tongue, o, a);
    return right({ moment: result('hitch moment', over(wanted, plus(a, o))), decisions: [...fraction.right, lost] });
  }
  const moment = momentAsStated(bars, a);
  const lifts = noneBelowZero([['hitch moment', moment]]);
  return isLeft(lifts) ? lifts : right({ moment, decisions: lifts.right });
}

const moreThanAll = (restored: Derived<'ratio'>): Note =>
  note(
    'RestoresMoreThanAll',
    'The bars put more on the front axle than the tongue took off it; published guidance is not over 100 %.',
    [restored],
  );
const notRestorable = note(
  'NothingToRestore',
  'The tongue takes nothing off the front axle, so there is no fraction to state.',
);

/**
 * What does the weight distributing hitch move, and which rating does that make or break?
 *
 * `trailer axles + M / a; front + M (a + o) / (a b); rear - M (a + o + b) / (a b)`: they sum to zero.
 * `restored = M (a + o) / (a T o)`, and for a wanted fraction p: `M = p T o a / (a + o)`.
 * M moment of both bars at the hitch head, lb in; a ball to trailer axles, o rear axle to ball, b wheelbase, in; T tongue, lb.
 *
 * The bars change neither the trailer's gross weight nor the weight of the combination. The rear axle is checked with the
 * bars off; the trailer axles are checked both ways, because bars on load them. Not for a gooseneck, nor for a receiver,
 * frame or truck whose maker does not allow bars.
 *
 * @returns loads in lb. Left `NotAboveZero`, `BelowZero`, `NotAShare`, `TongueAboveGross`, `BarsNeedBallBehind`, `NothingToRestore`
 * @example weightDistribution({ front: lb(3200), rear: lb(2600), gross: lb(7000), tongue: lb(1000), wheelbase: inch(130), overhang: inch(65), axlesAt: inch(200), bars: { restore: percent(50) } }) // Right moment 24,528.3 lb*in, rear with bars off 4,100 lb
 * @source static equilibrium, derived; guidance on the fraction: SAE committee report
 */
export function weightDistribution(question: WeightDistributionQuestion): Either<TowingError, WeightDistribution> {
  const [front, rear, tongue, gross] = [
    inPounds('front axle, truck alone', question.front),
    inPounds('rear axle, truck alone', question.rear),
    inPounds('tongue load', question.tongue),
    inPounds('gross weight', question.gross),
  ];
  const [b, o, a] = [
    inInches('wheelbase', question.wheelbase),
    inInches('overhang', question.overhang),
    inInches('ball to trailer axles', question.axlesAt),
  ];
  const above = allAboveZero([
    ['wheelbase', b],
    ['ball to trailer axles', a],
    ['gross weight', gross],
  ]);
  if (isLeft(above)) return above;
  const weighed = noneBelowZero([
    ['front axle, truck alone', front],
    ['rear axle, truck alone', rear],
  ]);
  if (isLeft(weighed)) return weighed;
  const behind = decide(o, '>=', noneOf('in'));
  if (!behind.holds) return left({ chapter: 'towing', tag: 'BarsNeedBallBehind', overhang: toWire(o.value) });
  const possible = decide(tongue, '<=', gross);
  if (!possible.holds)
    return left({
      chapter: 'towing',
      tag: 'TongueAboveGross',
      tongue: toWire(tongue.value),
      gross: toWire(gross.value),
    });
  const place = hitchLever({ hitch: 'ball behind', overhang: o, wheelbase: b });
  if (isLeft(place)) return place;

  const remark = tongueRemark(tongue);
  const { hitchHardware } = question;
  const parts = hitchHardware === undefined ? undefined : inPounds('hitch hardware', hitchHardware);
  const onBall = parts === undefined ? tongue : sum('load on the ball', [tongue, parts]);
  const hitched = hitchedBy(place.right.lever, front, rear, onBall);
  // The bars answer to the trailer: what hitch parts alone take off the front axle is no part of the fraction.
  const byTongue =
    parts === undefined
      ? hitched.offFront
      : takenOffFront('taken off the front axle by the tongue', place.right.lever, tongue);
  const setting = momentOf(question.bars, a, o, tongue, byTongue);
  if (isLeft(setting)) return setting;
  const { moment } = setting.right;
  const across = times(a, b);
  const ontoTrailer = quotient('put on the trailer axles by the bars', moment, a, statics);
  const ontoFront = result('put on the front axle by the bars', over(times(moment, plus(a, o)), across), statics);
  const offRear = result('taken off the rear axle by the bars', over(times(moment, plus(a, o, b)), across), statics);

  const barsOff: RigLoads = {
    front: hitched.front,
    rear: hitched.rear,
    trailerAxles: difference('trailer axles, bars off', gross, tongue),
  };
  const barsOn: RigLoads = {
    front: sum('front axle, bars on', [barsOff.front, ontoFront]),
    rear: difference('rear axle, bars on', barsOff.rear, offRear),
    trailerAxles: sum('trailer axles, bars on', [barsOff.trailerAxles, ontoTrailer]),
  };
  const { ratings = {} } = question;
  const asked = (loads: RigLoads, how: 'bars off' | 'bars on'): Either<TowingError, Findings>[] => [
    ask('tow vehicle front GAWR', 'tow vehicle front axle', ratings.front, loads.front, { how }),
    ask('axle group', 'axle group load', ratings.trailerAxles, loads.trailerAxles, { how }),
  ];
  const rearOff = ask('tow vehicle rear GAWR', 'tow vehicle rear axle', ratings.rear, barsOff.rear, {
    how: 'bars off',
  });
  const off = gathered([...asked(barsOff, 'bars off'), rearOff]);
  if (isLeft(off)) return off;
  const on = gathered(asked(barsOn, 'bars on'));
  if (isLeft(on)) return on;

  const lost = decide(byTongue, '>', noneOf('lb'));
  const restored = lost.holds ? quotient('share of the front axle load restored', ontoFront, byTongue) : undefined;
  const tooMuch = decide(ontoFront, '>', byTongue);
  return right({
    moment,
    ontoTrailer,
    ontoFront,
    offRear,
    ...(restored && { restored }),
    barsOff,
    barsOn,
    findings: { barsOff: off.right, barsOn: on.right },
    notes: [
      ...place.right.notes,
      ...remark.notes,
      ...hitched.notes,
      ...(restored === undefined ? [notRestorable] : []),
      ...(restored !== undefined && tooMuch.holds ? [moreThanAll(restored)] : []),
    ],
    decisions: [
      ...above.right,
      ...weighed.right,
      behind,
      possible,
      ...place.right.decisions,
      ...remark.decisions,
      ...hitched.decisions,
      ...setting.right.decisions,
      ...off.right.decisions,
      ...on.right.decisions,
      lost,
      tooMuch,
    ],
  });
}
