/**
 * The ways an assessment can go while its inputs may be off: where a recorded comparison can turn out otherwise, the spec is
 * assessed again at the corner that turns it, and its formulas are evaluated too.
 */
import { isLeft } from 'fp-ts/lib/Either.js';
import { type AssessError, type Assessment, assessSpec } from '../../assessment/index.js';
import type { Comparison, Decision, Given } from '../../trace/index.js';
import { Decimal } from '../../units/internal.js';
import { type Flat, flatten } from '../ranges/flat.js';
import { forward } from '../ranges/forward.js';
import type { Interval } from '../ranges/interval.js';
import { rangeOf } from '../ranges/range.js';
import { withFigures } from '../with-figures.js';
import { type Question, questionsOf, shapeOf } from './asked.js';
import type { Unsure } from './tolerances.js';

/** One way: its questions, laid out, and what every node can be. */
export interface Way {
  readonly questions: readonly Question[];
  readonly flat: Flat;
  readonly at: readonly Interval[];
}

/** All ways found. */
export interface Ways {
  readonly ways: readonly Way[];
  /** What the spec is refused with at some corner. */
  readonly refused: readonly AssessError[];
  /** False when more comparisons could turn than were followed. */
  readonly complete: boolean;
}

/** How many further assessments are made at most, when nobody asks for more. */
const usualMost = 6;

/**
 * Whether a comparison can turn out otherwise when the difference of its sides can be anything between two ends. The slack is
 * wider than any tie, so whether an end itself counts makes no difference.
 */
function mayTurn({ low, high }: Interval, comparison: Comparison, holds: boolean, slack: number): boolean {
  const [mayBeLess, mayBeMore] = [low <= slack, high >= -slack];
  if (comparison === '=') return mayBeLess && mayBeMore;
  const holdsBelow = comparison === '<' || comparison === '<=';
  return holds === holdsBelow ? mayBeMore : mayBeLess;
}

type Corner = ReadonlyMap<string, Decimal>;

const movesAt = (flat: Flat, i: number): boolean => flat.operation[i] !== undefined || (flat.input[i] as number) >= 0;

/** The corners at which some recorded comparison may turn. */
function cornersOf(
  decisions: readonly Decision[],
  flat: Flat,
  at: readonly Interval[],
  inputs: readonly Unsure[],
): readonly Corner[] {
  const between = inputs.map((input) => input.between);
  const corners: Corner[] = [];
  for (const { left, right, comparison, holds } of decisions) {
    const [l, r] = [flat.indexOf.get(left) as number, flat.indexOf.get(right) as number];
    if (!movesAt(flat, l) && !movesAt(flat, r)) continue;
    const [a, b] = [at[l] as Interval, at[r] as Interval];
    const slack = 1e-9 * Math.max(1, Math.abs(flat.at[l] as number));
    if (!mayTurn({ low: a.low - b.high, high: a.high - b.low }, comparison, holds, slack)) continue;
    const ends = [[l, 1] as const, [r, -1] as const];
    const range = rangeOf(flat, ends, between, at);
    if (!mayTurn(range, comparison, holds, slack)) continue;
    for (const corner of [range.lowest, range.highest])
      corners.push(new Map([...corner].map(([i, value]) => [(inputs[i] as Unsure).path, new Decimal(value)])));
  }
  return corners;
}

const keyOf = (corner: Corner): string =>
  [...corner]
    .map(([path, value]) => `${path}=${value.toFixed()}`)
    .sort()
    .join();

/** Every way that is found from the assessment at hand, with at most so many further assessments. */
export function waysOf(assessment: Assessment, inputs: readonly Unsure[], most = usualMost): Ways {
  const numberOf = new Map(inputs.map(({ path }, i) => [path, i]));
  const between = inputs.map((input) => input.between);
  const inputOf = ({ path }: Given): number | undefined => (path === undefined ? undefined : numberOf.get(path));
  const ways: Way[] = [];
  const refused: AssessError[] = [];
  const known = new Set<string>();
  const waiting: Corner[] = [];
  const asked = new Set<string>();
  const take = (one: Assessment): void => {
    const questions = questionsOf(one);
    const aside = new Set(one.payload?.decisions); // no check depends on the comparisons of the payload
    const decisions = one.decisions.filter((decision) => !aside.has(decision) && decision.settles === undefined);
    const flat = flatten(
      [...questions.map(({ figure }) => figure.why), ...decisions.flatMap(({ left, right }) => [left, right])],
      inputOf,
    );
    const at = forward(flat, between, [...flat.nodes.keys()]);
    const corners = cornersOf(decisions, flat, at, inputs);
    if (ways.length > 0 || corners.length > 0) {
      const shape = shapeOf(questions);
      if (known.has(shape)) return;
      known.add(shape);
    }
    ways.push({ questions, flat, at });
    waiting.push(...corners);
  };
  take(assessment);
  let made = 0;
  while (waiting.length > 0 && made < most) {
    const corner = waiting.shift() as Corner;
    const key = keyOf(corner);
    if (asked.has(key)) continue;
    asked.add(key);
    made += 1;
    const there = assessSpec(withFigures(assessment.spec, corner));
    if (isLeft(there)) refused.push(there.left);
    else take(there.right);
  }
  return { ways, refused, complete: waiting.every((corner) => asked.has(keyOf(corner))) };
}
