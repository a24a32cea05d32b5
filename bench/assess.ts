/**
 * `assess` with its full working against the same answers written by hand in decimal.js without any, from the same JSON and from
 * figures read already; then the core of it in libraries of units. All answers are compared before anything is timed.
 */
import { readFileSync } from 'node:fs';
import Qty from 'js-quantities';
import { all, create, type Unit } from 'mathjs';
import { type Assessment, assess, assessSpec, ruleFindings } from '../dist/assessment.js';
import { orThrow } from '../dist/errors.js';
import { report } from '../dist/print.js';
import { decodeSpec } from '../dist/spec.js';
import { assessByHand, assessWholeByHand, type HandAnswer, type HandCheck, readByHand } from './assess-by-hand.js';
import { floorsOf } from './floor.js';
import { compare } from './harness.js';

const fromFile = (file: string): unknown => JSON.parse(readFileSync(new URL(file, import.meta.url), 'utf8'));

const plain = fromFile('../tests/study/plain-deck.json');
const full = fromFile('../examples/tilt-deck.json');

type Figures = readonly (number | string)[];

const ofOurs = (a: Assessment): Figures => {
  const { weights: weighed, runningGear: stack, payload: carry, tongue } = a;
  const figure = (known: { readonly value: { readonly value: { toFixed(): string } } } | undefined): string =>
    known?.value.value.toFixed() ?? 'none';
  const checked = (checks: Assessment['checks']): Figures =>
    checks.flatMap(({ reserve, used, verdict }) => [figure(reserve), figure(used), verdict === 'within' ? 1 : 0]);
  const { balance } = weighed;
  const bounds = carry?.anywhere?.limits ?? [];
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
    ...bounds.map(({ limit }) => figure(limit)).sort((x, y) => Number(x) - Number(y)),
    figure(carry?.anywhere?.weight),
    carry?.anywhere?.governing.length ?? 0,
    figure(tongue?.guideline.least),
    figure(tongue?.guideline.most),
    figure(tongue?.guideline.aboveLeast),
    figure(tongue?.guideline.belowMost),
    tongue?.guideline.verdict ?? '',
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
    ...[...a.bounds].sort((x, y) => x.comparedTo(y)),
    a.payload,
    a.governs.length,
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

/** What the whole answer says beyond those. */
function mustBeTheSameWhole(a: Assessment, hand: ReturnType<typeof assessWholeByHand>): void {
  const { shares, places } = a.payload?.best ?? {};
  const ours = [shares?.from, shares?.to, places?.from, places?.to].map(
    (known) => known?.value.value.toNumber() ?? NaN,
  );
  const theirs = [hand.shares.from, hand.shares.to, hand.places.from, hand.places.to].map(Number);
  if (ours.some((figure, i) => !(Math.abs(figure - theirs[i]!) <= 1e-12 * Math.abs(figure))))
    throw new Error(`shares and places are ${ours.join()}, by hand ${theirs.join()}`);
  const said = [a.attention.map(({ tag }) => tag).join(), a.notChecked.map(({ id }) => id).join()];
  const written = [hand.attention.join(), hand.open.join()];
  if (said.join() !== written.join()) throw new Error(`${said.join()}, by hand ${written.join()}`);
  if (hand.ids.length !== a.checks.length + a.partChecks.length) throw new Error('an id a check');
}

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

/** The payload as one figure. */
const payloadOf = ({ payload }: Assessment): number => payload?.best?.weight.value.value.toNumber() ?? NaN;

/** Gross, axle load, tongue, the reserve and share used of seven checks, payload: what a program with a library of units would work out first. */
const core = (a: Assessment): readonly number[] => {
  const { gross, balance } = a.weights;
  const loads = [gross, balance?.axleLoad, balance?.tongue].map((known) => known?.value.value.toNumber() ?? NaN);
  return [...loads, payloadOf(a)];
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

/** The same in binary floats without units. */
export function coreWithFloats(): readonly number[] {
  const [gross, axlesAt] = [3650 + 9000, (187 + 221) / 2];
  const axleLoad = ((3650 - 520) * axlesAt + 9000 * (122 + 60)) / axlesAt;
  const tongue = gross - axleLoad;
  const checks = [
    [14000, gross],
    [7000, axleLoad / 2],
    [7000, axleLoad / 2],
    [3520, axleLoad / 4],
    [3520, axleLoad / 4],
    [15000, gross],
    [2000, tongue],
  ] as const;
  const judged = checks.map(([limit, load]) => ({ reserve: limit - load, used: load / limit, within: load <= limit }));
  if (!judged.every(({ within }) => within)) throw new Error('the plain example holds');
  const allowed = [
    14000,
    ...[14000, 14000, 14400, 14000, 15000, 14080].map((limit) => limit / 0.88),
    15000,
    2000 / 0.12,
  ];
  return [gross, axleLoad, tongue, Math.min(...allowed) - 3650];
}

const one = [1];

/** Figures as doubles, so that whoever reads them makes no decimal of them. */
const read = (known: { readonly value: { readonly value: { toNumber(): number } } }): number =>
  known.value.value.toNumber();

/** What the first lines of an answer need: the verdicts, the tightest checks, the payload. */
const verdictsRead = (a: Assessment): number =>
  a.tightest.length + [...a.checks, ...a.partChecks].filter(({ verdict }) => verdict === 'over').length + payloadOf(a);
/** Those, and what is left of every rating. */
const reservesRead = (a: Assessment): number =>
  verdictsRead(a) + [...a.checks, ...a.partChecks].reduce((sum, { reserve }) => sum + read(reserve), 0);
const byHandRead = (a: HandAnswer): number => a.tightest.length + a.payload.toNumber();

/** The demo trailer, and the demo trailer with its report, while every figure was a decimal at once: by this ruler, in jobs of the plain trailer by hand. */
const before = { demo: 78.8, report: 139 };

export function benchAssess(): void {
  const [spec, handSpec] = [orThrow(decodeSpec(plain)), readByHand(plain)];
  mustBeTheSame(ofOurs(orThrow(assessSpec(spec))), ofHand(assessByHand(handSpec)));
  mustBeTheSameWhole(orThrow(assessSpec(spec)), assessWholeByHand(handSpec));
  const floors = floorsOf(orThrow(assessSpec(spec)));
  const run = (work: () => number): (() => readonly number[]) => {
    return () => {
      kept.sum += work();
      return one;
    };
  };
  const floor = (work: () => unknown): (() => readonly number[]) => run(() => (work() === undefined ? 0 : 1));
  const byHand = {
    name: 'decimal.js by hand, no working: the core',
    run: run(() => byHandRead(assessByHand(handSpec))),
  };
  console.log(
    'By hand, the core: gross, balance, axle and tire loads, seven checks and ten of parts with reserve and share used, nine bounds of payload at the one share, tongue advice, pressures, yaw.\n' +
      'assessSpec answers the whole besides: each figure with its working; best payload with shares and places, what must press, parts below the label, attention, published rules ready to be asked, ids, notes, open questions with their keys, every decision.\n' +
      'The aims are against the core; the line of the whole by hand stands beside it.',
  );
  compare('The plain example from figures read already: loads, checks, parts, payload, advice, pressures', [
    byHand,
    {
      name: 'decimal.js by hand, no working: the whole, with shares, places, attention, ids, open questions',
      run: run(() => byHandRead(assessWholeByHand(handSpec))),
    },
    {
      name: 'assessSpec; verdicts, tightest and payload read',
      run: run(() => verdictsRead(orThrow(assessSpec(spec)))),
      aim: { what: 'verdicts and payload read, to decimal.js by hand', most: 0.9 },
    },
    {
      name: 'assessSpec; every reserve read',
      run: run(() => reservesRead(orThrow(assessSpec(spec)))),
      aim: { what: 'every reserve read, to decimal.js by hand', most: 1.2 },
    },
    {
      name: 'assessSpec; every figure of the answer read, as digits',
      run: run(() => ofOurs(orThrow(assessSpec(spec))).length),
    },
    { name: `its ${floors.steps} recorded steps alone: decimals, no objects`, run: floor(floors.decimals) },
    { name: `its ${floors.steps} recorded steps alone: figures and nodes, no decimals`, run: floor(floors.objects) },
  ]);
  compare('The plain example from its JSON', [
    {
      name: 'decimal.js by hand, no working, no reader that checks',
      run: run(() => byHandRead(assessByHand(readByHand(plain)))),
    },
    {
      name: 'assess, every key and figure checked; verdicts, tightest and payload read',
      run: run(() => verdictsRead(orThrow(assess(plain)))),
      aim: { what: 'from JSON, to decimal.js by hand without a reader', most: 1.1 },
    },
  ]);
  compare(
    'The core of it (weights, balance, seven checks, nine payload bounds); ours works out the whole answer besides',
    [
      { name: 'assessSpec, the four figures of the core read', run: () => core(orThrow(assessSpec(spec))) },
      {
        name: 'assessSpec, the whole answer read',
        run: () => {
          const answer = orThrow(assessSpec(spec));
          kept.sum += ofOurs(answer).length;
          return core(answer);
        },
      },
      { name: 'mathjs units, 34 digits', run: coreWithMathjs },
      { name: 'js-quantities, binary floats', run: coreWithQuantities },
      { name: 'bare floats', run: coreWithFloats },
    ],
    21,
  );
  compare(
    'The demo trailer, every part of an assessment, in jobs of the plain one by hand',
    [
      byHand,
      {
        name: 'assess; verdicts, tightest and payload read',
        run: run(() => verdictsRead(orThrow(assess(full)))),
        aim: { what: 'demo trailer, 0.15 of what it was (in jobs by hand)', most: 0.15 * before.demo },
      },
      {
        name: 'assess and its report',
        run: run(() => report(orThrow(assess(full))).length),
        aim: { what: 'demo report, 0.25 of what it was (in jobs by hand)', most: 0.25 * before.report },
      },
      {
        name: 'assess, and the published rules asked',
        run: run(() => ruleFindings(orThrow(assess(full)).rules).length),
      },
    ],
    21,
  );
}

/** Keeps what was read, so that reading it is not optimised away. */
const kept = { sum: 0 };
