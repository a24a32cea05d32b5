/** Every comparison that a result hangs on is handed on with it: what `recordingDecisions` sees is in the answer's own list. */
import { type Either, isLeft, map as mapOf } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import {
  axleSystem,
  brakeCapacity,
  brakingAsked,
  brakingCheck,
  tandemSplit,
  usualBrake,
  usualHub,
} from '../../src/axles/index.js';
import {
  balance,
  breakingStrengths,
  type ComparedLayout,
  compareLayouts,
  crestClearance,
  crestsOf,
  curbWeight,
  edgeRise,
  frictionNeeded,
  guideline,
  heaviestMachine,
  howManyTiedowns,
  type LadenLimit,
  lateralCentre,
  machineBalance,
  payload,
  placeForTongueShare,
  placementWindow,
  rampAngle,
  rampCapacity,
  rampLength,
  rampSpacing,
  type SpreadItem,
  securementCheck,
  securementNeed,
  type TailLoading,
  type Tiedown,
  type TrailerForPlacing,
  tailLift,
  tiedownCount,
  tiedowns,
  wheelShares,
  whichTiedownSize,
  yawInertia,
} from '../../src/load/index.js';
import { rating } from '../../src/ratings/index.js';
import {
  couplerChecks,
  europeanCoupling,
  jackLoad,
  largestTrailer,
  leverScale,
  readScaleTickets,
  scaleDivision,
  tongueChecks,
  towChecks,
  weightDistribution,
} from '../../src/towing/index.js';
import {
  asDerived,
  commonPractice,
  constant,
  type Decision,
  given,
  recordingDecisions,
} from '../../src/trace/index.js';
import { degree, foot, inch, lb, lbf, percent, quantity, ratio } from '../../src/units/index.js';
import { rightOf } from '../helpers/either.js';

const chains: readonly Tiedown[] = Array.from({ length: 4 }, () => ({ wll: lb(6600), runs: 'direct' as const }));
const spring = (at: number) => ({ at: inch(at), rate: quantity(1000, 'lb/in') });
const passes = {
  barsOff: { steer: lb(3845), drive: lb(4955), trailer: lb(11000) },
  truckAlone: { steer: lb(4300), drive: lb(3100) },
};
const truck = { hitch: 'ball behind', front: lb(3100), rear: lb(3100) } as const;
const bars = {
  front: lb(3200),
  rear: lb(2600),
  gross: lb(7000),
  tongue: lb(1000),
  wheelbase: inch(130),
  overhang: inch(65),
  axlesAt: inch(200),
  ratings: { front: lb(3400), rear: lb(4000), trailerAxles: lb(6100) },
};
const heavy = { weight: lb(20000), length: foot(18), blockedForward: false, section: 'heavy equipment' } as const;
const general = { weight: lb(2000), length: foot(12), blockedForward: false, section: 'general' } as const;

const layout = (...places: readonly number[]): readonly SpreadItem[] =>
  places.map((at) => ({ name: `item at ${at}`, weight: lb(3000), at: inch(at), length: 'point' }));

const limitOn = (on: LadenLimit['on'], pounds: number): LadenLimit => ({
  name: on,
  on,
  limit: given(on, lb(pounds), 'label'),
});
const placing: TrailerForPlacing = {
  items: [{ name: 'trailer', weight: lb(3200), tongue: lb(480) }],
  axlesAt: inch(190),
  deck: { front: inch(58), rear: inch(298) },
  guideline: rightOf(guideline(percent(10), percent(15), commonPractice)),
  tongueLimits: [],
  axleLimits: [],
  limits: [limitOn('gross', 14000), limitOn('tongue', 1600), limitOn('axles', 12000)],
};
const loadLimits = [limitOn('gross', 14000), limitOn('tongue', 1600), limitOn('axles', 12000)];
const crests = [{ name: 'foot of the ramp', turns: constant(degree(20)) }];
const machineShape = { length: inch(120), balancePoint: inch(52), uncertainty: inch(2) };
const loading = (overhang: ReturnType<typeof inch>): TailLoading => ({
  tongue: lb(480),
  axlesAt: inch(190),
  deckRear: inch(298),
  machineWeight: lb(3000),
  truck: { rearAxle: lb(3100), frontAxle: lb(4300), wheelbase: inch(160), overhang },
});

const questions: Readonly<Record<string, () => Either<unknown, { readonly decisions: readonly Decision[] }>>> = {
  axleSystem: () => axleSystem({ gawr: lb(5200), beam: lb(5300), tires: { each: lb(2700), count: 2 } }, 'axle 1'),
  'axleSystem without a label': () => axleSystem({ beam: lb(5300), tires: { each: lb(2700), count: 2 } }, 'axle 1'),
  brakeCapacity: () => brakeCapacity([{ of: 'axle 1', gawr: given('GAWR', lb(7000)), brakes: [lb(3500), lb(3400)] }]),
  brakingAsked: () => brakingAsked({ towAxles: 2, trailerGvwr: lb(14000), weight: lb(20000) }),
  brakingCheck: () => brakingCheck(lbf(9000), { towAxles: 2, trailerGvwr: lb(14000), weight: lb(20000) }),
  usualBrake: () => usualBrake(lb(7000)),
  'usualBrake where no class table is': () => usualBrake(lb(8000)),
  usualHub: () => usualHub(lb(3500)),
  tandemSplit: () =>
    tandemSplit(lb(400), { suspension: 'independent', axles: [spring(172), spring(208)], ballAboveLevel: inch(3) }),
  'tiedowns of heavy equipment': () => tiedowns(heavy, chains),
  'tiedowns in general': () => tiedowns(general, chains),
  'tiedownCount of a light load': () => tiedownCount({ ...general, section: 'light vehicle' }),
  'tiedownCount at the heavy line': () => tiedownCount({ ...heavy, weight: lb(10000) }),
  howManyTiedowns: () => howManyTiedowns(general, { wll: lb(3000), runs: 'direct' }),
  compareLayouts: () =>
    mapOf((compared: readonly ComparedLayout[]) => ({ decisions: compared.flatMap(({ decisions }) => decisions) }))(
      compareLayouts(inch(190), [
        { name: 'close', items: layout(150, 210) },
        { name: 'far', items: layout(90, 280) },
      ]),
    ),
  balance: () => balance(placing.items, { axlesAt: inch(190) }),
  curbWeight: () => curbWeight([{ name: 'frame', weight: lb(1000), at: inch(150) }]),
  yawInertia: () => yawInertia(layout(150, 210)),
  lateralCentre: () => lateralCentre([{ name: 'trailer', weight: lb(3000), rightOfMiddle: inch(2) }]),
  payload: () =>
    payload(
      given('curb', lb(3000), 'scale'),
      { low: constant(ratio('0.1')), high: constant(ratio('0.15')) },
      loadLimits,
    ),
  rampAngle: () => rampAngle(inch(34), inch(96)),
  rampLength: () => rampLength(inch(34), degree(15)),
  frictionNeeded: () => frictionNeeded(lb(9200), degree(20)),
  edgeRise: () => edgeRise(inch(30), inch(20), degree(20)),
  crestClearance: () =>
    crestClearance(inch(100), [{ name: 'belly', behindFrontAxle: inch(50), height: inch(12) }], crests),
  crestsOf: () => crestsOf(degree(20), { angle: degree(8), length: inch(60) }, inch(50)),
  rampCapacity: () =>
    rampCapacity(rating('ramp pair, axle', lb(3500)), { weight: lb(6000), axleLoads: [lb(3600), lb(2400)] }),
  placementWindow: () => placementWindow(placing, { ...machineShape, weight: lb(9200) }),
  heaviestMachine: () => heaviestMachine(placing, machineShape),
  machineBalance: () =>
    machineBalance({ frontAxle: lb(3600), rearAxle: lb(2400), wheelbase: inch(50), frontFaceToAxle: inch(30) }),
  rampSpacing: () =>
    rampSpacing([{ name: 'front', gauge: inch(54), tireWidth: inch(12) }], {
      rampWidth: inch(18),
      margin: inch(1),
      closest: inch(40),
      widest: inch(70),
    }),
  whichTiedownSize: () => whichTiedownSize(heavy, 4, 'direct', { part: 'chain', grade: '70' }),
  'tailLift with a truck': () => tailLift(loading(inch(52))),
  'tailLift with an unknown truck': () => tailLift({ ...loading(inch(52)), machineWeight: lb(9200), truck: 'unknown' }),
  'tailLift with a gooseneck': () => tailLift(loading(inch(-20))),
  securementNeed: () => securementNeed(lb(10000), 'breaking strength', 'not contained'),
  securementCheck: () => {
    const need = rightOf(securementNeed(lb(10000), 'breaking strength', 'not contained'));
    return securementCheck(need, breakingStrengths({ forward: lb(7999), rearward: lb(5000), sideways: lb(5000) }));
  },
  wheelShares: () => wheelShares(lb(6000), inch(44), inch(80)),
  guideline: () => guideline(percent(12), percent(14), commonPractice),
  placeForTongueShare: () =>
    placeForTongueShare(
      { items: [{ name: 'trailer', weight: lb(3200), tongue: lb(480) }], axlesAt: inch(190) },
      lb(9200),
      percent(12),
    ),
  tailLift: () =>
    tailLift({
      tongue: lb(480),
      axlesAt: inch(190),
      deckRear: inch(298),
      machineWeight: lb(9200),
      truck: 'not coupled',
    }),
  jackLoad: () =>
    jackLoad({ tongue: lb(1400), jackBehindBall: inch(20), axlesAt: inch(190), rating: lb(2000), margin: ratio(1) }),
  leverScale: () =>
    leverScale({
      reading: lb(220),
      beamTare: lb(20),
      pipeToTongue: foot(1),
      tongueToScale: foot(2),
      tongueRestsAt: 'coupler',
    }),
  'leverScale at a jack': () =>
    leverScale({
      reading: lb(220),
      beamTare: lb(20),
      pipeToTongue: foot(1),
      tongueToScale: foot(2),
      tongueRestsAt: { jackBehindBall: inch(20), axlesAt: inch(200) },
    }),
  weightDistribution: () => weightDistribution({ ...bars, bars: { restore: percent(50) } }),
  'weightDistribution by the load on the bars': () =>
    weightDistribution({ ...bars, hitchHardware: lb(90), bars: { barLoad: lb(1000), barLength: inch(30) } }),
  'largestTrailer behind a gooseneck': () =>
    largestTrailer({
      vehicle: { ...truck, hitch: 'gooseneck', overhang: inch(-8), wheelbase: inch(150), frontGawr: lb(4200) },
      coupler: { gross: lb(14000), tongue: lb(3500) },
      tongueShare: percent(20),
    }),
  largestTrailer: () =>
    largestTrailer({ vehicle: { ...truck, overhang: 'unknown', rearGawr: lb(4000) }, tongueShare: percent(10) }),
  readScaleTickets: () => readScaleTickets({ tickets: passes, division: scaleDivision }),
  'readScaleTickets of passes that close': () =>
    readScaleTickets({ tickets: { ...passes, trailerAlone: lb(12400) }, division: scaleDivision }),
  couplerChecks: () =>
    couplerChecks({
      gross: lb(12400),
      tongue: lb(1400),
      coupler: { gross: lb(14000), tongue: lb(1400) },
      chains: { each: lb(7000), count: 2 },
    }),
  europeanCoupling: () =>
    europeanCoupling({
      plate: { v: quantity(40, 'kN'), s: lb(300) },
      onAxles: lb(19000),
      deckLength: foot(22),
      drawbar: foot(16),
      suspension: 'air',
      tongue: lb(250),
    }),
  tongueChecks: () =>
    tongueChecks({ tongue: asDerived('tongue load', lb(964)), coupler: { tongue: lb(900) }, how: 'off level' }),
  'tongueChecks with a tow vehicle': () =>
    tongueChecks({
      tongue: asDerived('tongue load', lb(964)),
      vehicle: { ...truck, overhang: inch(60), wheelbase: inch(140), rearGawr: lb(4300), hitchHardware: lb(40) },
      how: 'off level',
    }),
  towChecks: () => towChecks({ ...truck, gcwr: lb(11000) }, { gross: lb(7500) }),
};

const written = ({ left, comparison, right, holds }: Decision): string =>
  `${left.symbol ?? left.value.value.toFixed()} ${comparison} ${right.symbol ?? right.value.value.toFixed()}: ${holds}`;

describe('decisions handed on by', () => {
  it.each(Object.entries(questions))('%s', (_, ask) => {
    const { result, decisions } = recordingDecisions(ask);
    if (isLeft(result)) throw new Error(JSON.stringify(result.left));
    const own = new Set(result.right.decisions);
    // What only a remark hangs on changes no figure and no check.
    const lost = decisions.filter((each) => !own.has(each) && each.settles === undefined);
    expect(lost.map(written)).toEqual([]);
  });
});
