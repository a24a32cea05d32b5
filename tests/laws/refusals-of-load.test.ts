/** Every figure of a question on loads that is outside its range is refused by its name, at the edge of the range and no sooner. */
import { type Either, isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import {
  crestClearance,
  crestsOf,
  departureAngle,
  edgeRise,
  frictionNeeded,
  howManyTiedowns,
  lateralCentre,
  leastTongueShare,
  machineBalance,
  placeForTongueShare,
  placementWindow,
  rampAngle,
  rampCapacity,
  rampLength,
  rampSpacing,
  rolloverIndex,
  securementNeed,
  type TailLoading,
  tailHeight,
  tailLift,
  tiedownCount,
  wheelShares,
  winchPull,
  yawInertia,
} from '../../src/load/index.js';
import { rating } from '../../src/ratings/index.js';
import { given } from '../../src/trace/index.js';
import { degree, foot, inch, lb, percent, ratio } from '../../src/units/index.js';
import { machine, r1 } from '../load/reference-case.js';

type Asked = Either<{ readonly tag: string; readonly what?: unknown }, unknown>;
type Ask = (figure: number | string) => Asked;

const [P, I, D] = [lb, inch, degree];
const scaled = { frontAxle: lb(3600), rearAxle: lb(2400), wheelbase: inch(50), frontFaceToAxle: inch(30) };
const general = { weight: lb(2000), length: foot(12), blockedForward: false, section: 'general' } as const;
const truck = { rearAxle: lb(3100), frontAxle: lb(4300), wheelbase: inch(160), overhang: inch(52) };
const neck = { ...truck, overhang: inch(-20) };
const rear: TailLoading = {
  tongue: lb(480),
  axlesAt: inch(190),
  deckRear: inch(298),
  machineWeight: lb(3000),
  truck,
};
const pair = { rampWidth: inch(18), margin: inch(1), closest: inch(40), widest: inch(70) };
const wheels = { name: 'front', gauge: inch(54), tireWidth: inch(12) };
const low = { name: 'belly', behindFrontAxle: inch(50), height: inch(12) };
const crest = (angle: number | string) => [{ name: 'foot', turns: given('foot', degree(angle)) }];
const item = { name: 'frame', weight: lb(100), at: inch(100), length: inch(20) };

/** The question, the name of its figure, a figure just refused, a figure just taken. */
const questions: readonly (readonly [string, Ask, number | string, number | string])[] = [
  ['machine front axle', (x) => machineBalance({ ...scaled, frontAxle: P(x) }), '-0.1', 0],
  ['machine rear axle', (x) => machineBalance({ ...scaled, rearAxle: P(x) }), '-0.1', 0],
  ['machine weight', (x) => machineBalance({ ...scaled, frontAxle: P(0), rearAxle: P(x) }), 0, '0.1'],
  ['machine wheelbase', (x) => machineBalance({ ...scaled, wheelbase: I(x) }), 0, '0.1'],
  ['front face to front axle', (x) => machineBalance({ ...scaled, frontFaceToAxle: I(x) }), '-0.1', 0],
  ['machine weight', (x) => placeForTongueShare(r1, P(x), percent(12)), 0, '0.1'],
  ['tongue share wanted', (x) => placeForTongueShare(r1, P(9200), percent(x)), '-0.1', 0],
  ['tongue share wanted', (x) => placeForTongueShare(r1, P(9200), percent(x)), '100.1', 100],
  ['track', (x) => wheelShares(P(6000), I(4), I(x)), 0, '0.1'],
  ['weight across', (x) => lateralCentre([{ name: 'a', weight: P(x), rightOfMiddle: I(2) }]), 0, '0.1'],
  ['the track', (x) => rolloverIndex(I(x), I(45)), 0, '0.1'],
  ['the height of the centre', (x) => rolloverIndex(I(90), I(x)), 0, '0.1'],
  ['gross weight', (x) => leastTongueShare(P(x), P('0.01')), 0, '0.1'],
  ['capacity of the axles', (x) => leastTongueShare(P(12000), P(x)), 0, '0.1'],
  ['frame weight', (x) => yawInertia([item, { ...item, weight: P(x) }]), '-0.1', 0],
  ['frame length', (x) => yawInertia([item, { ...item, length: I(x) }]), '-0.1', 0],
  ['gross weight', (x) => yawInertia([{ ...item, weight: P(x) }]), 0, '0.1'],
  ['machine weight', (x) => placementWindow(r1, { ...machine, weight: P(x) }), 0, '0.1'],
  ['the low end of deck ends', (x) => window({ deck: { front: I(x), rear: I(298) } }), '298.1', 298],
  ['machine length', (x) => window({}, { length: I(x), balancePoint: I(0) }), 0, '0.1'],
  ['balance point behind machine front', (x) => window({}, { balancePoint: I(x) }), '-0.1', 0],
  ['balance point behind machine front', (x) => window({}, { balancePoint: I(x) }), '120.1', 120],
  ['balance point uncertainty', (x) => window({}, { uncertainty: I(x) }), '-0.1', 0],
  ['coupler to axles', (x) => tailLift({ ...rear, axlesAt: I(x) }), 0, '0.1'],
  ['machine weight', (x) => tailLift({ ...rear, machineWeight: P(x) }), '-0.1', 0],
  ['tow vehicle rear axle alone', (x) => tailLift({ ...rear, truck: { ...truck, rearAxle: P(x) } }), '-0.1', 0],
  ['tow vehicle wheelbase', (x) => tailLift({ ...rear, truck: { ...truck, wheelbase: I(x) } }), 0, '0.1'],
  ['front axle to ball', (x) => tailLift({ ...rear, truck: { ...truck, overhang: I(x) } }), -160, '-159.9'],
  ['tow vehicle front axle alone', (x) => tailLift({ ...rear, truck: { ...neck, frontAxle: P(x) } }), '-0.1', 0],
  ['ramp length', (x) => rampAngle(I('0'), I(x)), 0, '0.1'],
  ['deck height', (x) => rampAngle(I(x), I(96)), '-0.1', 0],
  ['deck height', (x) => rampLength(I(x), D(15)), '-0.1', 0],
  ['ramp angle', (x) => rampLength(I(34), D(x)), 0, '0.1'],
  ['ramp angle', (x) => rampLength(I(34), D(x)), '90.1', 90],
  ['machine weight', (x) => frictionNeeded(P(x), D(15)), '-0.1', 0],
  ['ramp angle', (x) => frictionNeeded(P(9200), D(x)), '-0.1', 0],
  ['ramp angle', (x) => frictionNeeded(P(9200), D(x)), 90, '89.9'],
  ['the machine weight', (x) => winchPull(P(x), D(15), ratio('0.1')), 0, '0.1'],
  ['the ramp angle', (x) => winchPull(P(4000), D(x), ratio('0.1')), '-0.1', 0],
  ['the ramp angle', (x) => winchPull(P(4000), D(x), ratio('0.1')), 90, '89.9'],
  ['the rolling resistance', (x) => winchPull(P(4000), D(15), ratio(x)), '-0.1', 0],
  ['the height of the tail', (x) => departureAngle(I(x), I(81)), 0, '0.1'],
  ['the tail behind the last axle', (x) => departureAngle(I(16), I(x)), 0, '0.1'],
  ['the height on level ground', (x) => tailHeight(I(x), I(81), D(5)), 0, '0.1'],
  ['the tail behind the last axle', (x) => tailHeight(I(16), I(x), D(5)), '-0.1', 0],
  ['the slope of the ground', (x) => tailHeight(I(16), I(81), D(x)), '-45.1', -45],
  ['the slope of the ground', (x) => tailHeight(I(16), I(81), D(x)), '45.1', 45],
  ['edge to the one axle', (x) => edgeRise(I(x), I(20), D(20)), 0, '0.1'],
  ['edge to the other axle', (x) => edgeRise(I(30), I(x), D(20)), 0, '0.1'],
  ['angle at the edge', (x) => edgeRise(I(30), I(20), D(x)), '-0.1', 0],
  ['angle at the edge', (x) => edgeRise(I(30), I(20), D(x)), 90, '89.9'],
  ['ramp angle', (x) => crestsOf(D(x), 'straight deck', I(50)), '-0.1', 0],
  ['ramp angle', (x) => crestsOf(D(x), 'straight deck', I(50)), 90, '89.9'],
  ['dovetail angle', (x) => crestsOf(D(20), { angle: D(x), length: I(60) }, I(50)), '-0.1', 0],
  ['dovetail angle', (x) => crestsOf(D(20), { angle: D(x), length: I(60) }, I(50)), '20.1', 20],
  ['dovetail length', (x) => crestsOf(D(20), { angle: D(8), length: I(x) }, I(50)), 0, '0.1'],
  ['wheelbase', (x) => crestsOf(D(20), { angle: D(8), length: I(60) }, I(x)), 0, '0.1'],
  [
    'belly behind the front axle',
    (x) => crestClearance(I(100), [{ ...low, behindFrontAxle: I(x) }], crest(20)),
    0,
    '0.1',
  ],
  [
    'belly behind the front axle',
    (x) => crestClearance(I(100), [{ ...low, behindFrontAxle: I(x) }], crest(20)),
    100,
    '99.9',
  ],
  ['belly height', (x) => crestClearance(I(100), [{ ...low, height: I(x) }], crest(20)), '-0.1', 0],
  ['foot', (x) => crestClearance(I(100), [low], crest(x)), '-0.1', 0],
  ['foot', (x) => crestClearance(I(100), [low], crest(x)), 90, '89.9'],
  ['ramp width', (x) => rampSpacing([wheels], { ...pair, rampWidth: I(x) }), 0, '0.1'],
  ['margin beside the tire', (x) => rampSpacing([wheels], { ...pair, margin: I(x) }), '-0.1', 0],
  ['closest setting', (x) => rampSpacing([wheels], { ...pair, closest: I(x) }), '-0.1', 0],
  ['the low end of ramp settings', (x) => rampSpacing([wheels], { ...pair, closest: I(x) }), '70.1', 70],
  ['front gauge', (x) => rampSpacing([{ ...wheels, gauge: I(x) }], pair), '-0.1', 0],
  ['front tire width', (x) => rampSpacing([{ ...wheels, tireWidth: I(x) }], pair), 0, '0.1'],
  [
    'machine weight',
    (x) => rampCapacity(rating('ramp pair, machine', lb(3500)), { weight: P(x), axleLoads: 'unknown' }),
    0,
    '0.1',
  ],
  ['load of machine axle 2', (x) => onRamps(P(x)), '-0.1', 0],
  ['load of machine axle 2', (x) => onRamps(P(x)), '6000.1', 6000],
  ['article weight', (x) => tiedownCount({ ...general, weight: P(x) }), 0, '0.1'],
  ['article length', (x) => tiedownCount({ ...general, length: foot(x) }), 0, '0.1'],
  ['article weight', (x) => securementNeed(P(x), 'breaking strength', 'contained'), 0, '0.1'],
  ['working load limit of each', (x) => howManyTiedowns(general, { wll: P(x), runs: 'direct' }), 0, '0.1'],
];

function window(trailer: Partial<Parameters<typeof placementWindow>[0]>, shape: Partial<typeof machine> = {}): Asked {
  return placementWindow({ ...r1, ...trailer }, { ...machine, ...shape, weight: lb(9200) });
}

function onRamps(second: ReturnType<typeof lb>): Asked {
  return rampCapacity(rating('ramp pair, axle', lb(9000)), { weight: lb(6000), axleLoads: [lb(3600), second] });
}

describe('outside its range', () => {
  it.each(questions)('%s', (what, ask, refused, taken) => {
    const left = ask(refused);
    expect(isLeft(left) && [left.left.tag, left.left.what]).toEqual(['OutsideItsRange', what]);
    const right = ask(taken);
    expect(isLeft(right) ? right.left : 'taken').toBe('taken');
  });
});
