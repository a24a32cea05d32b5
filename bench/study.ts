/**
 * A study against the same arithmetic written by hand on bare numbers: the plain example, cargo weight and front face varied,
 * all figures, shares used, verdicts and the governing check into arrays. Then growth with rows.
 */
import { readFileSync } from 'node:fs';
import { assess, assessJson } from '../src/assessment/index.js';
import { orThrow } from '../src/errors.js';
import { levels, range, type Study, type StudyPlan, study } from '../src/study/index.js';
import { plan } from '../src/study/plan/plan-design.js';
import { readPlan } from '../src/study/plan/read-plan.js';
import { evaluateBlock } from '../src/study/run/evaluate-block.js';
import { figureNames } from '../src/study/run/figure-names.js';
import { standardMeasure } from '../src/study/run/measure.js';
import { pointsOf } from '../src/study/run/points.js';
import { recordingOf } from '../src/study/run/recording.js';
import { verdictsFor } from '../src/study/run/row-marks.js';
import { Runner } from '../src/study/run/runner.js';
import { sampledRows } from '../src/study/run/sample-check.js';
import { tapesFor } from '../src/study/run/tapes.js';
import { blockRows, enoughColumns, isVaried, runBlock } from '../src/study/tape/tape.js';
import { coreWithMathjs, coreWithQuantities } from './assess.js';
import { assessByHand, readByHand } from './assess-by-hand.js';
import { compare, cpuTime, judge as judgeAim, table } from './harness.js';

const base = JSON.parse(readFileSync(new URL('../tests/study/plain-deck.json', import.meta.url), 'utf8')) as unknown;
const paths = ['cargo.0.weight', 'cargo.0.front'] as const;

const weights = Float64Array.from({ length: blockRows }, (_, i) => 4000 + i * 7.8125);
/** Places that keep the tongue within its band, so that every row takes the recorded branch and is answered by its tape. */
const fronts = Float64Array.from(weights, (weight, i) => {
  const share = 0.105 + (0.04 * ((i * 37) % 400)) / 400;
  return 204 * (1 - (share * (3650 + weight) - 520) / weight) - 60;
});
/** Places at which six of ten rows leave the branch, with a tongue too light or too heavy: those are marked for another tape. */
const straying = Float64Array.from({ length: blockRows }, (_, i) => 100 + ((i * 37) % 400) / 10);

/** What the hand-written loop fills: a column a figure, a share used a check, verdict and governing check. */
const hand = {
  figures: Array.from({ length: 13 }, () => new Float64Array(blockRows)),
  shares: Array.from({ length: 5 }, () => new Float64Array(blockRows)),
  holds: new Uint8Array(blockRows),
  governs: new Uint8Array(blockRows),
};

/** The same outputs on bare numbers; what does not vary is worked out once, as the tape folds it. */
function byHand(x: Float64Array, front: Float64Array, rows: number): void {
  const [curb, curbTongue, gvwr, couplerGross, couplerTongue, axlesAt] = [
    3650,
    520,
    14000,
    15000,
    2000,
    (187 + 221) / 2,
  ];
  const [gawr, tire, balancePoint] = [Math.min(7000, 7000, 7200, 7000, 7500, 7040), 3520, 60];
  const curbMoment = (curb - curbTongue) * axlesAt;
  const payload = Math.min(gvwr, couplerGross, couplerTongue / 0.12, (gawr * 2) / 0.88, 14080 / 0.88) - curb;
  const [empty, gross, tongue, share, most, tightest, left1, left2, left3, left4, left5, left6, left7] =
    hand.figures as [
      Float64Array,
      Float64Array,
      Float64Array,
      Float64Array,
      Float64Array,
      Float64Array,
      Float64Array,
      Float64Array,
      Float64Array,
      Float64Array,
      Float64Array,
      Float64Array,
      Float64Array,
    ];
  const [used1, used2, used3, used4, used5] = hand.shares as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  const { holds, governs } = hand;
  for (let i = 0; i < rows; i += 1) {
    const weight = x[i] as number;
    const w = curb + weight;
    const onAxles = (curbMoment + weight * ((front[i] as number) + balancePoint)) / axlesAt;
    const t = w - onAxles;
    const each = onAxles / 2;
    const onTire = each / 2;
    empty[i] = curb;
    gross[i] = w;
    tongue[i] = t;
    share[i] = t / w;
    most[i] = payload;
    const [a, b, c, d, e] = [gvwr - w, couplerGross - w, gawr - each, tire - onTire, couplerTongue - t];
    tightest[i] = Math.min(a, c, d, b, e);
    left1[i] = a;
    left2[i] = c;
    left3[i] = c;
    left4[i] = d;
    left5[i] = d;
    left6[i] = b;
    left7[i] = e;
    const s1 = w / gvwr;
    const s2 = w / couplerGross;
    const s3 = each / gawr;
    const s4 = onTire / tire;
    const s5 = t / couplerTongue;
    used1[i] = s1;
    used2[i] = s2;
    used3[i] = s3;
    used4[i] = s4;
    used5[i] = s5;
    holds[i] = a >= 0 && b >= 0 && c >= 0 && d >= 0 && e >= 0 && t >= 0 ? 1 : 0;
    let best = s1;
    let which = 0;
    if (s2 > best) {
      best = s2;
      which = 1;
    }
    if (s3 > best) {
      best = s3;
      which = 2;
    }
    if (s4 > best) {
      best = s4;
      which = 3;
    }
    if (s5 > best) which = 4;
    governs[i] = which;
  }
}

/** The same as a function of the spec's numbers, as one writes it first: everything worked out for each row. */
function oneRow(weight: number, front: number, spec: typeof numbers, out: Float64Array): number {
  const {
    curb,
    curbTongue,
    gvwr,
    couplerGross,
    couplerTongue,
    at1,
    at2,
    gawr,
    beam,
    springs,
    hubs,
    wheel,
    tireRating,
    pressureLoad,
    balancePoint,
    tongueShare,
  } = spec;
  const axlesAt = (at1 + at2) / 2;
  const w = curb + weight;
  const onAxles = ((curb - curbTongue) * axlesAt + weight * (front + balancePoint)) / axlesAt;
  const t = w - onAxles;
  const each = onAxles / 2;
  const onTire = each / 2;
  const tire = Math.min(tireRating, pressureLoad);
  const axle = Math.min(gawr, beam, springs, hubs, wheel * 2, tireRating * 2);
  const payload = Math.min(
    gvwr - curb,
    couplerGross - curb,
    couplerTongue / tongueShare - curb,
    (gawr * 2) / (1 - tongueShare) - curb,
    (beam * 2) / (1 - tongueShare) - curb,
    (springs * 2) / (1 - tongueShare) - curb,
    (hubs * 2) / (1 - tongueShare) - curb,
    (wheel * 4) / (1 - tongueShare) - curb,
    (tire * 4) / (1 - tongueShare) - curb,
  );
  out[0] = curb;
  out[1] = w;
  out[2] = t;
  out[3] = t / w;
  out[4] = payload;
  out[5] = Math.min(gvwr - w, axle - each, tire - onTire, couplerGross - w, couplerTongue - t);
  out[6] = gvwr - w;
  out[7] = axle - each;
  out[8] = axle - each;
  out[9] = tire - onTire;
  out[10] = tire - onTire;
  out[11] = couplerGross - w;
  out[12] = couplerTongue - t;
  const used = [w / gvwr, w / couplerGross, each / axle, onTire / tire, t / couplerTongue];
  let best = 0;
  for (let k = 1; k < used.length; k += 1) if ((used[k] as number) > (used[best] as number)) best = k;
  const parts = beam >= gawr && springs >= gawr && hubs >= gawr && wheel * 2 >= gawr && tireRating * 2 >= gawr;
  return parts && t >= 0 && (used[best] as number) <= 1 ? best : -1 - best;
}

const numbers = {
  curb: 3650,
  curbTongue: 520,
  gvwr: 14000,
  couplerGross: 15000,
  couplerTongue: 2000,
  at1: 187,
  at2: 221,
  gawr: 7000,
  beam: 7000,
  springs: 7200,
  hubs: 7000,
  wheel: 3750,
  tireRating: 3520,
  pressureLoad: 3520,
  balancePoint: 60,
  tongueShare: 0.12,
};

function rowByRow(x: Float64Array, front: Float64Array, rows: number): void {
  const out = new Float64Array(13);
  for (let i = 0; i < rows; i += 1) {
    const verdict = oneRow(x[i] as number, front[i] as number, numbers, out);
    for (let k = 0; k < 13; k += 1) (hand.figures[k] as Float64Array)[i] = out[k] as number;
    hand.holds[i] = verdict >= 0 ? 1 : 0;
    hand.governs[i] = verdict >= 0 ? verdict : -1 - verdict;
  }
}

const made = (rows: number): Study => {
  const side = Math.round(Math.sqrt(rows));
  return orThrow(
    study({
      base,
      vary: {
        [paths[0]]: range('4,000 lb', '12,000 lb', Math.round(rows / side)),
        [paths[1]]: range('100 in', '140 in', side),
      },
      design: { kind: 'grid' },
    }),
  );
};

const sumOf = (columns: readonly ArrayLike<number>[]): number[] =>
  columns.map((column) => Array.from(column).reduce((sum, x) => sum + x, 0));

export function benchStudy(): void {
  const alternative = recordingOf(base, { paths, units: ['lb', 'in'] }, standardMeasure);
  if (alternative.kind !== 'answered') throw new Error('the plain example is answered');
  const columns = enoughColumns([], alternative.tape, blockRows);
  columns[0]?.set(weights);
  columns[1]?.set(fronts);
  const verdicts = verdictsFor(blockRows);
  const figures = (): readonly Float64Array[] =>
    alternative.figures.map(({ at }) =>
      isVaried(at) ? (columns[at.column] as Float64Array) : new Float64Array(blockRows).fill(at.value),
    );
  const strayColumns = enoughColumns([], alternative.tape, blockRows);
  strayColumns[0]?.set(weights);
  strayColumns[1]?.set(straying);
  const strayVerdicts = verdictsFor(blockRows);
  const judge = (): void => evaluateBlock(alternative, columns, blockRows, verdicts, () => new Map());
  judge();
  if (verdicts.marks.some((mark) => mark !== 0)) throw new Error('a row of the block is not answered by its tape');
  byHand(weights, fronts, blockRows);
  const [ours, theirs] = [
    [...sumOf(figures()), ...sumOf([verdicts.holds])],
    [...sumOf(hand.figures), ...sumOf([hand.holds])],
  ];
  if (ours.length !== theirs.length || ours.some((x, i) => Math.abs(x - (theirs[i] as number)) > 1e-9 * Math.abs(x)))
    throw new Error(`the hand-written loop comes to ${theirs.join()}, the tape to ${ours.join()}`);
  compare(
    `A study's block of ${blockRows} rows: ${alternative.tape.steps.length} steps, ${alternative.figures.length} figures, ${alternative.shares.length} shares, verdicts`,
    [
      {
        name: 'by hand: one loop, what does not vary taken out of it',
        jobs: blockRows,
        run: () => {
          byHand(weights, fronts, blockRows);
          return [1];
        },
      },
      {
        name: 'by hand: a function of the spec, row by row',
        jobs: blockRows,
        run: () => {
          rowByRow(weights, fronts, blockRows);
          return [1];
        },
      },
      {
        name: 'tape, figures and shares',
        jobs: blockRows,
        run: () => {
          runBlock(alternative.tape, columns, blockRows);
          return [1];
        },
      },
      {
        name: 'tape, guarded verdicts and governing check',
        jobs: blockRows,
        run: () => {
          judge();
          return [1];
        },
        aim: { what: 'guarded verdicts, to a loop by hand with what does not vary taken out', most: 1.3 },
      },
      {
        name: 'the same, six of ten rows leaving the branch: marked for another tape, not answered',
        jobs: blockRows,
        run: () => {
          evaluateBlock(alternative, strayColumns, blockRows, strayVerdicts, () => new Map());
          return [1];
        },
      },
    ],
  );
  const handSpec = readByHand(base);
  compare('One alternative, a row, against other ways to work it out', [
    {
      name: 'tape, guarded verdicts and governing check',
      jobs: blockRows,
      run: () => {
        judge();
        return [1];
      },
    },
    {
      name: 'decimal.js by hand',
      run: () => {
        assessByHand(handSpec);
        return [1];
      },
    },
    { name: 'mathjs units, the core of it', run: once(coreWithMathjs) },
    { name: 'js-quantities, the core of it', run: once(coreWithQuantities) },
  ]);
  growth();
  roundNumbers();
  setUp();
}

const once = (work: () => unknown) => (): readonly number[] => {
  work();
  return [1];
};

/** CPU time of a whole study a row, in microseconds, and how many rows took a whole assessment. */
function wholeStudy(made: Study): number {
  const begun = cpuTime();
  let held = 0;
  for (const { verdict, rows } of made.chunks()) held += verdict[rows - 1] as number;
  sink.sum += held;
  return (cpuTime() - begun) / made.count;
}

const sink = { sum: 0 };

function growth(): void {
  table(
    'Growth of a whole study with its rows',
    [1e4, 1e5, 1e6, 1e7].map((rows) => {
      const whole = made(rows);
      return { name: `${whole.count.toLocaleString('en-US')} rows`, figure: wholeStudy(whole) * 1000 };
    }),
    'ns a row',
  );
}

/** Grids of round numbers, where rows stand exactly on limits, and a grid most of whose rows are refused. */
function roundNumbers(): void {
  const full = JSON.parse(readFileSync(new URL('../examples/tilt-deck.json', import.meta.url), 'utf8')) as unknown;
  const grid = (spec: unknown, vary: StudyPlan['vary']): Study =>
    orThrow(study({ base: spec, vary, design: { kind: 'grid' } }));
  const round = {
    'the plain example': grid(base, {
      'cargo.0.weight': range('5,000 lb', '12,000 lb', 71),
      'cargo.0.front': range('100 in', '140 in', 81),
      'trailer.gvwr': levels('12,000 lb', '13,000 lb', '14,000 lb', '15,000 lb'),
      'trailer.coupler.tongue': range('1,000 lb', '2,000 lb', 11),
    }),
    'the demo trailer': grid(full, {
      'cargo.0.weight': range('4,000 lb', '12,000 lb', 161),
      'cargo.0.front': range('96 in', '140 in', 89),
      'trailer.gvwr': range('13,000 lb', '15,000 lb', 21),
    }),
  };
  const refused = grid(base, {
    'trailer.axles.0.gawr': range('6,500 lb', '9,000 lb', 101),
    'trailer.axles.1.gawr': range('6,500 lb', '9,000 lb', 101),
    'cargo.0.weight': range('8,000 lb', '9,000 lb', 21),
  });
  const rows = [
    ...Object.entries(round),
    ['GAWRs above their parts: 96 of 100 rows have no answer', refused] as const,
  ].map(([name, made]) => ({ name: `${name}, ${made.count.toLocaleString('en-US')} rows`, figure: wholeStudy(made) }));
  table('Grids of round numbers, tapes recorded on the way included', rows, 'us a row');
  judgeAim('worst study of round numbers', Math.max(...rows.slice(0, 2).map(({ figure }) => figure)), 5, 'us a row');
  judgeAim('rows without an answer', rows[2]!.figure, 2, 'us a row');
}

/** What a study costs before its first row, in assessments of its own spec: as a whole, and without the assessments of its sample. */
function setUp(): void {
  const vary = {
    'cargo.0.weight': range('4,000 lb', '12,000 lb', 1000),
    'cargo.0.front': range('100 in', '140 in', 1000),
  };
  const made = orThrow(study({ base, vary, design: { kind: 'grid' } }));
  const sample = sampledRows(made.count);
  const specs = sample.map((row) => orThrow(made.specAt(row)));
  compare('The set-up of a study of a million rows', [
    { name: 'one assessment of its spec', run: once(() => orThrow(assess(base))) },
    { name: 'the set-up as a whole', run: once(() => orThrow(study({ base, vary, design: { kind: 'grid' } }))) },
    {
      name: `the ${sample.length} assessments of its sample, by design`,
      run: once(() => specs.forEach((spec) => void assessJson(spec))),
    },
    {
      name: 'the set-up without its sample: plan, branches, tapes',
      run: once(() => tapesWithoutSample(vary, sample)),
      aim: { what: 'set-up of a study without its sample, in assessments', most: 8 },
    },
  ]);
}

/** The set-up without comparing its sample: the plan read, and a tape for every branch that the sampled rows take. */
function tapesWithoutSample(vary: StudyPlan['vary'], sample: readonly number[]): void {
  const read = orThrow(readPlan(base, vary));
  const { choices, axes, factors, own } = read;
  const planned = plan({ kind: 'grid' }, choices, axes, factors, own);
  const points = pointsOf(read, planned);
  const tapes = tapesFor(read, standardMeasure);
  const names = orThrow(figureNames(tapes.all(), [])).map(({ name }) => name);
  const runner = new Runner(read, planned, points, tapes, standardMeasure, names);
  for (const row of sample) for (const { rows } of runner.run(row, row + 1)) sink.sum += rows;
}
