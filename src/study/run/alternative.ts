/** A recorded assessment as a branch: its figures, its shares used and its reserves on a tape. */
import type { Assessment, AssessmentVerdict } from '../../assessment/index.js';
import type { Check } from '../../ratings/index.js';
import { leavesOf } from '../../spec/index.js';
import { type Decision, type Derived, type Node, nodesOf } from '../../trace/index.js';
import type { Unit } from '../../units/index.js';
import { doubleOf } from '../../units/internal.js';
import { guardShare, sureBounds, tightened } from '../tape/bounds.js';
import type { Scaled } from '../tape/loops/step-loops.js';
import type { Operand } from '../tape/steps.js';
import { isVaried } from '../tape/tape.js';
import { variesWith } from '../tape/varies.js';
import { type Branch, branchOf, type Inputs } from './branch.js';
import type { Measure } from './measure.js';
import { distinctReserves, distinctShares, type Guarded, isSettled, ranked, type Share } from './shares.js';
import { attentionTags } from './verdict-codes.js';

/** A branch whose rows have an answer. */
export interface Alternative extends Branch {
  readonly kind: 'answered';
  readonly figures: readonly { readonly name: string; readonly node: Node; readonly at: Operand }[];
  /** Reserves whose side is not settled by the decisions. */
  readonly reserves: readonly Guarded[];
  /** Those that are above zero inside the bounds of the decisions: asked of rows on a bound only. */
  readonly pressing: readonly Guarded[];
  /** The shares used, one for each distinct check; the first `ranked` may be the greatest, the others another one is always above. */
  readonly shares: readonly Share[];
  readonly ranked: number;
  /** What each of them is called where it governs. */
  readonly names: readonly string[];
  /** True when a reserve that does not vary is over: then every row of this alternative is. */
  readonly overAnyway: boolean;
  /** The verdict of a row that is not over: what asks attention is the same on all rows of a branch. */
  readonly otherwise: AssessmentVerdict;
  readonly attention: readonly string[];
}

/**
 * The decisions on which the outcome of a row rests: all that were asked, without those of step tables, and of the pressures
 * that the tires need unless a measured figure rests on one of them.
 */
function decisionsFor(
  { pressures, rules }: Assessment,
  asked: readonly Decision[],
  measured: readonly Derived<Unit>[],
): readonly Decision[] {
  const nodes = new Set(nodesOf(measured.map(({ why }) => why)));
  const unread = new Set([
    ...rules.steps.flatMap(({ finding }) => finding.decisions),
    ...pressures.flatMap(({ needed: { pressure, carries, decisions } }) =>
      nodes.has(pressure.why) || nodes.has(carries.why) ? [] : decisions,
    ),
  ]);
  return asked.filter((decision) => !unread.has(decision));
}

/** The figure a share is read off: the reserve, `1 - reserve / limit`, unless the limit varies too. */
function shareNode(
  { reserve, limit, used }: Check,
  varies: (node: Node) => boolean,
): { readonly node: Node; readonly times: number; readonly plus: number } {
  return varies(limit.why)
    ? { node: used.why, times: 1, plus: 0 }
    : { node: reserve.why, times: -1 / doubleOf(limit.value), plus: 1 };
}

const scaledLine = (line: Scaled | undefined, times: number, plus: number): Scaled | undefined =>
  line && { column: line.column, times: times * line.times, plus: times * line.plus + plus };

/** The verdict of a row that is not over. */
function verdictUnlessOver({ attention, checks }: Assessment): AssessmentVerdict {
  if (attention.length > 0) return 'attention';
  return checks.length === 0 ? 'unchecked' : 'within';
}

/** The branch of an assessment; `asked` are the decisions made on the way to it. */
export function alternativeOf(
  assessment: Assessment,
  asked: readonly Decision[],
  inputs: Inputs,
  measure: Measure,
): Alternative {
  const { checks, partChecks, uplift, weights } = assessment;
  const varies = variesWith(inputs.paths);
  const measured = Object.entries(measure(assessment));
  const decisions = decisionsFor(
    assessment,
    asked,
    measured.map(([, figure]) => figure),
  );
  const parts = partChecks.map(({ reserve, limit }) => ({
    node: reserve.why,
    edge: 4 * guardShare * doubleOf(limit.value),
  }));
  const gross = weights.gross === undefined ? 0 : doubleOf(weights.gross.value);
  const pressing = uplift.mustPress.map(({ load }) => ({
    node: load.why,
    edge: 4 * guardShare * (gross + Math.abs(doubleOf(load.value))),
  }));
  const guarded = [...parts, ...pressing];
  const spoken = checks.map((check) => ({ check, ...shareNode(check, varies) }));
  const wanted = [
    ...measured.map(([, { why }]) => why),
    ...guarded.map(({ node }) => node),
    ...spoken.map(({ node }) => node),
  ];
  const branch = branchOf(leavesOf(assessment.spec), inputs, decisions, wanted, varies);
  let next = 0;
  const { outputs, lines } = branch.tape;
  const take = (): Operand => outputs[next++] as Operand;
  const figures = measured.map(([name, { why }]) => ({ name, node: why, at: take() }));
  const reserves: Guarded[] = guarded.map((each) => ({ ...each, line: lines[next], at: take() }));
  const shares = spoken.map(
    ({ check, times, plus }, place): Share => ({
      named: [{ place, name: check.what }],
      check,
      line: scaledLine(lines[next], times, plus),
      at: take(),
      times,
      plus,
    }),
  );
  const fixed = [
    ...reserves.filter(({ at }) => !isVaried(at)).map(({ node }) => node),
    ...shares.flatMap(({ at, check }) => (isVaried(at) ? [] : [check.reserve.why])),
  ];
  const bounds = tightened([...branch.inputBounds, ...sureBounds(branch.tape.bounds)]);
  const open = distinctReserves(reserves.filter(({ at }) => isVaried(at)));
  return {
    kind: 'answered',
    ...branch,
    figures,
    ...ranked(distinctShares(shares), bounds),
    reserves: open.filter((reserve) => !isSettled(reserve, bounds)),
    pressing: open.filter((reserve) => isSettled(reserve, bounds)),
    otherwise: verdictUnlessOver(assessment),
    attention: attentionTags(assessment),
    overAnyway: fixed.some(({ value }) => value.value.isNegative()),
  };
}
