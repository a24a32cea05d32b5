/** What does an incomplete spec already tell? */
import { type Either, isLeft, isRight, right } from 'fp-ts/lib/Either.js';
import { type AssessError, type Assessment, assessJson } from '../../assessment/index.js';
import { leavesOf } from '../../spec/index.js';
import { changed } from '../../study/index.js';
import type { Given } from '../../trace/index.js';
import type { Quantity } from '../../units/index.js';
import { compareDecimals } from '../../units/internal.js';
import type { Sureness } from '../sureness/answer.js';
import { surenessOver } from '../sureness/sureness.js';
import type { Unsure } from '../sureness/tolerances.js';
import { type UnknownFact, unknownFacts } from './fill.js';

/** The result of a check when some facts are unknown. A check that only one way of sharing lets be made depends on the sharing. */
export interface BoundedCheck {
  /** The id of the check, or `presses/` and the name of a load that must press. */
  readonly id: string;
  /** What is asked, in shop words. */
  readonly what: string;
  /** Within or over whatever the rest is; or it depends on the rest. */
  readonly answer: 'within' | 'over' | 'depends';
  /** The least the reserve can be, lb, where the check can be made. */
  readonly least: Quantity<'lb'>;
  /** The most the reserve can be, lb, where the check can be made. */
  readonly most: Quantity<'lb'>;
}

/** What can be said from half a spec. */
export interface Bounds {
  /** The spec as given. */
  readonly told: Assessment;
  /** The unknown facts, and their ranges. */
  readonly unknown: readonly UnknownFact[];
  /** Every check that can be made when they are known. */
  readonly checks: readonly BoundedCheck[];
  /** The key of the one fact to find out next: the one that most of the open checks depend on. Absent when no check is open. */
  readonly ask?: string;
}

/** More comparisons can turn between wide ends than inside tolerances. */
const mostAssessments = 24;
const sharings = ['equalised', 'independent'] as const;

/** The middle of a range; axles that share one stand in it one behind the other. */
function middle(fact: UnknownFact, unknown: readonly UnknownFact[]): unknown {
  const { path, from, to, unit } = fact;
  const isAxle = /^trailer\.axles\./;
  const row = isAxle.test(path)
    ? unknown.filter((one) => isAxle.test(one.path) && one.from === from && one.to === to)
    : [fact];
  const share = (row.indexOf(fact) + 1) / (row.length + 1);
  return { text: `${(from + (to - from) * share).toFixed(4)} ${unit}`, basis: 'estimated' };
}

function inputsOf(assessment: Assessment, unknown: readonly UnknownFact[]): readonly Unsure[] {
  const leaves = leavesOf(assessment.spec);
  return unknown.flatMap(({ path, what, from, to, unit, source }): readonly Unsure[] => {
    const leaf = leaves.get(path) as Given | undefined;
    return leaf === undefined
      ? []
      : [{ path, symbol: what, leaf, amount: `${from} to ${to} ${unit}`, source, between: { low: from, high: to } }];
  });
}

/** The spec with the middle of each range for an unknown fact; with both ways of sharing where the sharing is unknown. */
function completions(
  spec: unknown,
  told: Assessment,
  unknown: readonly UnknownFact[],
): readonly Either<AssessError, Assessment>[] {
  const filled = changed(spec, Object.fromEntries(unknown.map((fact) => [fact.path, middle(fact, unknown)])));
  const { axles, sharing } = told.spec.trailer;
  const ways = axles.length > 1 && sharing === undefined ? sharings : [undefined];
  return ways.map((way) => assessJson(way === undefined ? filled : changed(filled, { 'trailer.sharing': way })));
}

const least = (figures: readonly Quantity<'lb'>[], sign: 1 | -1): Quantity<'lb'> =>
  figures.reduce((best, next) => (compareDecimals(next.value, best.value) * sign < 0 ? next : best));

type Answers = readonly Sureness['checks'][number][];

/** Whether a check is made in every way the axles may share, with one answer. */
const isAlike = (answers: Answers, ways: number): boolean =>
  answers.length === ways && new Set(answers.map(({ sure }) => sure)).size === 1;

function answerOf(answers: Answers, ways: number): BoundedCheck['answer'] {
  const sure = isAlike(answers, ways) ? answers[0]?.sure : undefined;
  return sure === undefined || sure === 'not sure' ? 'depends' : sure;
}

/**
 * What does an incomplete spec already tell?
 *
 * Every unknown weight and place is taken as a range of usual builds; every check is evaluated over all of
 * them. It is within for all of them, over for all of them, or it depends; then the fact that matters most is named.
 *
 * Not for ratings: an unknown rating has no check. A rig outside the ranges in `unknown` is outside the answer.
 *
 * @param spec a spec as JSON, as far as it is known
 * @returns each check with the least and the most of its reserve in lb; Left as `assess`
 * @example orThrow(boundsFrom({ trailer: { hitch: 'ball', axles: [{ beam: '5,200 lb' }], curb: { weight: '4,000 lb' } } })).checks[0].answer // 'within'
 * @source interval arithmetic over the working of `assess`; the ranges carry their own sources
 */
export function boundsFrom(spec: unknown): Either<AssessError, Bounds> {
  const assessed = assessJson(spec);
  if (isLeft(assessed)) return assessed;
  const told = assessed.right;
  const unknown = unknownFacts(told);
  const completed = completions(spec, told, unknown);
  const answered = completed.flatMap((one) => (isRight(one) ? [one.right] : []));
  const [refused] = completed;
  if (answered.length === 0 && refused !== undefined && isLeft(refused)) return refused;
  const all = answered.map((one) => surenessOver(one, inputsOf(one, unknown), mostAssessments));
  const byId = new Map<string, Sureness['checks'][number][]>();
  for (const { checks } of all) for (const check of checks) byId.set(check.id, [...(byId.get(check.id) ?? []), check]);
  const checks = [...byId.values()].map((answers): BoundedCheck => {
    const { id, what } = answers[0] as (typeof answers)[number];
    return {
      id,
      what,
      answer: answerOf(answers, all.length),
      least: least(
        answers.map((answer) => answer.least),
        1,
      ),
      most: least(
        answers.map((answer) => answer.most),
        -1,
      ),
    };
  });
  const differs = [...byId.values()].some((answers) => !isAlike(answers, all.length));
  const next = all.flatMap(({ weighNext }) => weighNext)[0]?.path;
  const open = checks.some(({ answer }) => answer === 'depends');
  const ask = differs ? 'trailer.sharing' : next;
  return right({ told, unknown, checks, ...(open && ask !== undefined ? { ask } : {}) });
}
