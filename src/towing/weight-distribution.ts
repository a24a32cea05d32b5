/** What spring bars move: load back to the front axle and onto the trailer axles. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../ratings/index.js';
import {
  type Derived,
  decide,
  difference,
  inPounds,
  over,
  plus,
  quotient,
  result,
  statics,
  sum,
  times,
} from '../trace/index.js';
import { momentOf } from './bars/bar-setting.js';
import type { RigLoads, WeightDistribution, WeightDistributionQuestion } from './bars/bars-answer.js';
import { readRig } from './bars/read-rig.js';
import { ask, type Findings, gathered } from './checks/checks-or-missing.js';
import type { TowingError } from './errors.js';
import { noneOf } from './figures.js';
import { takenOffFront } from './hitch/hitch-lever.js';
import { hitchedBy, tongueRemark } from './vehicle/hitched-axle-loads.js';

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
  const read = readRig(question);
  if (isLeft(read)) return read;
  const { front, rear, tongue, gross, b, o, a, place } = read.right;

  const remark = tongueRemark(tongue);
  const { hitchHardware } = question;
  const parts = hitchHardware === undefined ? undefined : inPounds('hitch hardware', hitchHardware);
  const onBall = parts === undefined ? tongue : sum('load on the ball', [tongue, parts]);
  const hitched = hitchedBy(place.lever, front, rear, onBall);
  // The bars answer to the trailer: what hitch parts alone take off the front axle is no part of the fraction.
  const byTongue =
    parts === undefined
      ? hitched.offFront
      : takenOffFront('taken off the front axle by the tongue', place.lever, tongue);
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
      ...place.notes,
      ...remark.notes,
      ...hitched.notes,
      ...(restored === undefined ? [notRestorable] : []),
      ...(restored !== undefined && tooMuch.holds ? [moreThanAll(restored)] : []),
    ],
    decisions: [
      ...read.right.decisions,
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
