/**
 * `assess` with its full working against the same answers written by hand in decimal.js without any, from the same JSON and from
 * figures read already; then the core of it in libraries of units. All answers are compared before anything is timed.
 */
import { readFileSync } from 'node:fs';
import Qty from 'js-quantities';
import { all, create, type Unit } from 'mathjs';
import { type Assessment, assess, assessSpec } from '../dist/assessment.js';
import { decodeSpec } from '../dist/spec.js';
import { orThrow } from '../dist/errors.js';
import { assessByHand, type HandAnswer, type HandCheck, readByHand } from './assess-by-hand.js';
import { floorsOf } from './floor.js';
import { compare } from './harness.js';

const read = (file: string): unknown => JSON.parse(readFileSync(new URL(file, import.meta.url), 'utf8'));

const plain = read('../tests/study/plain-deck.json');
const full = read('../examples/tilt-deck.json');

type Figures = readonly (number | string)[];

const ofOurs = (a: Assessment): Figures => {
  const { weights: weighed, runningGear: stack, payload: carry, advice } = a;
  const figure = (known: { readonly value: { readonly value: { toFixed(): string } } } | undefined): string =>
    known?.value.value.toFixed() ?? 'none';
  const checked = (checks: Assessment['checks']): Figures =>
    checks.flatMap(({ reserve, used, verdict }) => [figure(reserve), figure(used), verdict === 'within' ? 1 : 0]);
  const { balance } = weighed;
  const bounds = carry?.payload.governed.bounds ?? [];
  return [
    figure(weighed.gross),
    figure(balance?.axleLoad),
    figure(balance?.tongue),
    figure(balance?.tongueShare),
    figure(stack.group?.at),
    figure(stack.group?.capacity),
    figure(stack.group?.sumOfRatings),
    ...a.axleLoads.map(({ load }) => figure(load)),
    ...checked(a.checks),
    ...checked(a.partChecks),
    a.tightest.length,
    a.verdict === 'over' ? 0 : 1,
    ...bounds.map(({ limit }) => figure(limit)),
    figure(carry?.payload.most),
    carry?.payload.governed.by.length ?? 0,
    figure(carry?.claim?.claimed),
    figure(carry?.claim?.gross),
    ...checked(carry?.claim === undefined ? [] : [carry.claim.check]),
    figure(advice?.least),
    figure(advice?.most),
    figure(advice?.aboveLeast),
    figure(advice?.belowMost),
    advice?.stands ?? '',
    ...a.pressures.flatMap(({ needed }) => [figure(needed.pressure), figure(needed.carries)]),
    ...stack.tires.map((tire) => (tire?.notes.some(({ tag }) => tag === 'MoldedDiffersFromTable') ? 0 : 1)),
    figure(a.stance.yaw?.centre),
    figure(a.stance.yaw?.index),
    figure(a.stance.yaw?.radius),
  ];
};

const ofHand = (a: HandAnswer): Figures => {
  const checked = (checks: readonly HandCheck[]): Figures =>
    checks.flatMap(({ reserve, used, holds }) => [String(reserve), String(used), holds ? 1 : 0]);
  const told = [
    a.gross,
    a.axleLoad,
    a.tongue,
    a.tongueShare,
    a.axlesAt,
    a.capacity,
    a.sumOfRatings,
    ...a.axleLoads,
    ...checked(a.checks),
    ...checked(a.parts),
    a.tightest.length,
    a.verdict === 'over' ? 0 : 1,
    ...a.bounds,
    a.payload,
    a.governs.length,
    a.claimed,
    a.claimedGross,
    ...checked([a.claim]),
    a.least,
    a.most,
    a.aboveLeast,
    a.belowMost,
    a.stands,
    ...a.pressures.flatMap(({ pressure, carries }) => [pressure, carries]),
    ...a.moldedAgreesWithTable.map((agrees) => (agrees ? 1 : 0)),
    a.yaw.centre,
    a.yaw.index,
    a.yaw.radius,
  ];
  return told.map((each) => (typeof each === 'object' ? each.toFixed() : each));
};

/** Every figure of the answer, to the last of its 34 digits but for the last four that rounding on two ways may move. */
function mustBeTheSame(ours: Figures, theirs: Figures): void {
  const differs = (a: number | string, b: number | string | undefined): boolean =>
    a !== b && !(Math.abs(Number(a) - Number(b)) <= 1e-14 * Math.abs(Number(a)));
  const at = ours.findIndex((figure, i) => differs(figure, theirs[i]));
  if (ours.length !== theirs.length || at >= 0)
    throw new Error(
      `figure ${at} of ${ours.length}: ${String(ours[at])}, by hand ${String(theirs[at])} of ${theirs.length}`,
    );
  console.log(
    `\nassess and the hand-written program agree on all ${ours.length} figures, verdicts and counts of the plain example`,
  );
}

/** Gross, axle load, tongue, the reserve and share used of seven checks, payload: what a program with a library of units would work out first. */
const core = (a: Assessment): readonly number[] => {
  const { gross, balance } = a.weights;
  return [gross, balance?.axleLoad, balance?.tongue, a.payload?.payload.most].map(
    (known) => known?.value.value.toNumber() ?? NaN,
  );
};

const math = create(all!, { number: 'BigNumber', precision: 34 });
const big = (digits: string, unit: string): Unit => math.unit(math.bignumber(digits), unit);
const [mathLb, mathIn] = [(digits: string) => big(digits, 'lbm'), (digits: string) => big(digits, 'in')];
const mathSpec = {
  curb: mathLb('3650'),
  curbTongue: mathLb('520'),
  cargo: mathLb('9000'),
  front: mathIn('122'),
  balancePoint: mathIn('60'),
  first: mathIn('187'),
  second: mathIn('221'),
  gvwr: mathLb('14000'),
  gawr: mathLb('7000'),
  tire: mathLb('3520'),
  couplerGross: mathLb('15000'),
  couplerTongue: mathLb('2000'),
  axleLimits: ['14000', '14000', '14400', '14000', '15000', '14080'].map(mathLb),
  share: math.bignumber('0.12'),
  rest: math.bignumber('0.88'),
  two: math.bignumber(2),
};

export function coreWithMathjs(): readonly number[] {
  const s = mathSpec;
  const gross = math.add(s.curb, s.cargo);
  const axlesAt = math.divide(math.add(s.first, s.second), s.two) as Unit;
  const moment = math.add(
    math.multiply(math.subtract(s.curb, s.curbTongue), axlesAt) as Unit,
    math.multiply(s.cargo, math.add(s.front, s.balancePoint)) as Unit,
  );
  const axleLoad = math.divide(moment, axlesAt) as Unit;
  const tongue = math.subtract(gross, axleLoad);
  const each = math.divide(axleLoad, s.two) as Unit;
  const onTire = math.divide(each, s.two) as Unit;
  const checks = [
    [s.gvwr, gross],
    [s.gawr, each],
    [s.gawr, each],
    [s.tire, onTire],
    [s.tire, onTire],
    [s.couplerGross, gross],
    [s.couplerTongue, tongue],
  ] as const;
  const judged = checks.map(([limit, load]) => ({
    reserve: math.subtract(limit, load),
    used: math.divide(load, limit),
    within: math.smallerEq(load, limit),
  }));
  const allowed = [
    s.gvwr,
    ...s.axleLimits.map((limit) => math.divide(limit, s.rest) as Unit),
    s.couplerGross,
    math.divide(s.couplerTongue, s.share) as Unit,
  ].map((most) => math.subtract(most, s.curb));
  const payload = allowed.reduce((least, next) => (math.smaller(next, least) ? next : least));
  if (!judged.every(({ within }) => within)) throw new Error('the plain example holds');
  return [gross, axleLoad, tongue, payload].map((figure) => Number(figure.toNumber('lbm')));
}

const [qtyLb, qtyIn] = [(size: number) => new Qty(size, 'lbs'), (size: number) => new Qty(size, 'in')];
const qtySpec = {
  curb: qtyLb(3650),
  curbTongue: qtyLb(520),
  cargo: qtyLb(9000),
  front: qtyIn(122),
  balancePoint: qtyIn(60),
  first: qtyIn(187),
  second: qtyIn(221),
  gvwr: qtyLb(14000),
  gawr: qtyLb(7000),
  tire: qtyLb(3520),
  couplerGross: qtyLb(15000),
  couplerTongue: qtyLb(2000),
  axleLimits: [14000, 14000, 14400, 14000, 15000, 14080].map(qtyLb),
};

export function coreWithQuantities(): readonly number[] {
  const s = qtySpec;
  const gross = s.curb.add(s.cargo);
  const axlesAt = s.first.add(s.second).div(2);
  const moment = s.curb
    .sub(s.curbTongue)
    .mul(axlesAt)
    .add(s.cargo.mul(s.front.add(s.balancePoint)));
  const axleLoad = moment.div(axlesAt);
  const tongue = gross.sub(axleLoad);
  const each = axleLoad.div(2);
  const onTire = each.div(2);
  const checks = [
    [s.gvwr, gross],
    [s.gawr, each],
    [s.gawr, each],
    [s.tire, onTire],
    [s.tire, onTire],
    [s.couplerGross, gross],
    [s.couplerTongue, tongue],
  ] as const;
  const judged = checks.map(([limit, load]) => ({
    reserve: limit.sub(load),
    used: load.div(limit),
    within: load.lte(limit),
  }));
  const allowed = [
    s.gvwr,
    ...s.axleLimits.map((limit) => limit.div(0.88)),
    s.couplerGross,
    s.couplerTongue.div(0.12),
  ].map((most) => most.sub(s.curb));
  const payload = allowed.reduce((least, next) => (next.lt(least) ? next : least));
  if (!judged.every(({ within }) => within)) throw new Error('the plain example holds');
  return [gross, axleLoad, tongue, payload].map((figure) => figure.to('lbs').scalar);
}

const one = [1];

export function benchAssess(): void {
  const [spec, handSpec] = [orThrow(decodeSpec(plain)), readByHand(plain)];
  mustBeTheSame(ofOurs(orThrow(assessSpec(spec))), ofHand(assessByHand(handSpec)));
  const floors = floorsOf(orThrow(assessSpec(spec)));
  const run = (work: () => unknown) => (): readonly number[] => (work() === undefined ? [] : one);
  compare(
    'The plain example from figures read already: every load, check, part, payload bound, claim, advice and pressure',
    [
      { name: 'decimal.js by hand, no working', run: run(() => assessByHand(handSpec)) },
      { name: 'assessSpec, full working', run: run(() => assessSpec(spec)) },
      { name: `its ${floors.steps} recorded steps alone: decimals, no objects`, run: run(floors.decimals) },
      {
        name: `its ${floors.steps} recorded steps alone: frozen figures and nodes, no decimals`,
        run: run(floors.objects),
      },
    ],
  );
  compare('The plain example from its JSON', [
    { name: 'decimal.js by hand, no working, no codec', run: run(() => assessByHand(readByHand(plain))) },
    { name: 'assess, full working, every key and figure checked', run: run(() => assess(plain)) },
  ]);
  compare(
    'The core of it (weights, balance, seven checks, nine payload bounds); ours works out the whole answer in the same time',
    [
      { name: 'assessSpec, full working, the whole answer', run: () => core(orThrow(assessSpec(spec))) },
      { name: 'mathjs units, 34 digits', run: coreWithMathjs },
      { name: 'js-quantities, binary floats', run: coreWithQuantities },
    ],
    21,
  );
  compare(
    'The published lines of the law, worked out when somebody reads them',
    [
      { name: 'assessSpec, full working', run: run(() => assessSpec(spec)) },
      {
        name: 'assessSpec, and the published lines of the law',
        run: run(() => orThrow(assessSpec(spec)).lines.findings),
      },
    ],
    21,
  );
  compare(
    'The demo trailer, every part of an assessment (no peer)',
    [{ name: 'assess, full working', run: run(() => assess(full)) }],
    21,
  );
}
