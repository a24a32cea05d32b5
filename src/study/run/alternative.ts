/** One whole alternative of the spec: assessed once, its working recorded, flattened to a tape. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import { type Assessment, assess } from '../../assessment/index.js';
import type { Check } from '../../ratings/index.js';
import { decodeSpec, leavesOf } from '../../spec/index.js';
import { type Decision, type Derived, type Given, type Node, nodesOf } from '../../trace/index.js';
import type { Unit } from '../../units/index.js';
import type { StudyFailure } from '../errors.js';
import { changed } from '../plan/spec-paths.js';
import { type ColumnBound, guardShare, tightened } from '../tape/bounds.js';
import type { Operand } from '../tape/steps.js';
import { isVaried, type Tape, tapeOf } from '../tape/tape.js';
import { variesWith } from './exact-rows.js';
import type { Measure } from './measure.js';
import { distinctReserves, distinctShares, type Guarded, type Share } from './shares.js';

export interface Alternative {
  readonly spec: unknown;
  readonly assessment: Assessment;
  readonly tape: Tape;
  readonly figures: readonly { readonly name: string; readonly node: Node; readonly at: Operand }[];
  readonly reserves: readonly Guarded[];
  /** Whether a node depends on a varied input. */
  readonly varies: (node: Node) => boolean;
  /** The shares used, one for each distinct check. */
  readonly shares: readonly Share[];
  /** The range of each input; empty when this alternative has no such figure, or has it in another unit. */
  readonly inputBounds: readonly ColumnBound[];
  /** Those and the bounds of the decisions, one a column. */
  readonly allBounds: readonly ColumnBound[];
  /** True when a reserve that does not vary is over: then no row of this alternative holds. */
  readonly overAnyway: boolean;
}

/** The decisions behind the pressures that the tires need, when a measured figure rests on one of them. */
function pressureDecisions({ pressures }: Assessment, measured: readonly Derived<Unit>[]): readonly Decision[] {
  const nodes = new Set(nodesOf(measured.map(({ why }) => why)));
  return pressures.flatMap(({ needed: { pressure, carries, decisions } }) =>
    nodes.has(pressure.why) || nodes.has(carries.why) ? decisions : [],
  );
}

/** The figure a share is read off: the reserve, `1 - reserve / limit`, unless the limit varies too. */
function shareNode(
  { reserve, limit, used }: Check,
  varies: (node: Node) => boolean,
): { readonly node: Node; readonly times: number; readonly plus: number } {
  return varies(limit.why)
    ? { node: used.why, times: 1, plus: 0 }
    : { node: reserve.why, times: -1 / limit.value.value.toNumber(), plus: 1 };
}

/** The ends of an input on its column. */
function inputBound(leaf: Given | undefined, unit: Unit | undefined, column: number): ColumnBound {
  if (leaf === undefined || leaf.value.unit !== unit) return { column, low: 1, high: 0 };
  return {
    column,
    low: leaf.between?.[0].toNumber() ?? Number.NEGATIVE_INFINITY,
    high: leaf.between?.[1].toNumber() ?? Number.POSITIVE_INFINITY,
  };
}

/** The spec with the varied figures as records and not as texts, as the spec of every row has them. */
function asRowsHaveIt(spec: unknown, inputs: readonly string[]): unknown {
  const decoded = decodeSpec(spec);
  if (isLeft(decoded)) return spec;
  const leaves = leavesOf(decoded.right);
  const records = inputs.flatMap((path) => {
    const leaf = leaves.get(path);
    if (leaf?.written === undefined) return [];
    const { value, basis } = leaf;
    return [[path, { value: value.value.toFixed(), unit: value.unit, basis }] as const];
  });
  return records.length === 0 ? spec : changed(spec, Object.fromEntries(records));
}

/** Records an alternative. `units` are those in which the inputs vary. */
export function alternativeOf(
  spec: unknown,
  inputs: readonly string[],
  units: readonly Unit[],
  measure: Measure,
): Either<StudyFailure, Alternative> {
  const assessed = assess(asRowsHaveIt(spec, inputs));
  if (isLeft(assessed)) return assessed;
  const assessment = assessed.right;
  const { checks, partChecks, mustPress, weights: weighed } = assessment;
  const varies = variesWith(inputs);
  const measured = Object.entries(measure(assessment));
  const decisions = [
    ...assessment.decisions,
    ...pressureDecisions(
      assessment,
      measured.map(([, figure]) => figure),
    ),
  ];
  const parts = partChecks.map(({ reserve, limit }) => ({
    node: reserve.why,
    edge: 4 * guardShare * limit.value.value.toNumber(),
  }));
  const gross = weighed.gross?.value.value.toNumber() ?? 0;
  const pressing = mustPress.map(({ load }) => ({
    node: load.why,
    edge: 4 * guardShare * (gross + Math.abs(load.value.value.toNumber())),
  }));
  const guarded = [...parts, ...pressing];
  const spoken = checks.map((check) => ({ check, ...shareNode(check, varies) }));
  const tape = tapeOf(
    [...measured.map(([, { why }]) => why), ...guarded.map(({ node }) => node), ...spoken.map(({ node }) => node)],
    inputs,
    decisions,
  );
  let next = 0;
  const take = (): Operand => tape.outputs[next++] as Operand;
  const figures = measured.map(([name, { why }]) => ({ name, node: why, at: take() }));
  const reserves: Guarded[] = guarded.map((each) => ({ ...each, at: take() }));
  const shares = spoken.map(
    ({ check, times, plus }, place): Share => ({
      named: [{ place, name: check.what }],
      check,
      at: take(),
      times,
      plus,
    }),
  );
  const leaves = leavesOf(assessment.spec);
  const inputBounds = inputs.map((path, column) => inputBound(leaves.get(path), units[column], column));
  const fixed = [
    ...reserves.filter(({ at }) => !isVaried(at)).map(({ node }) => node),
    ...shares.flatMap(({ at, check }) => (isVaried(at) ? [] : [check.reserve.why])),
  ];
  return right({
    spec,
    assessment,
    tape,
    figures,
    shares: distinctShares(shares),
    reserves: distinctReserves(reserves.filter(({ at }) => isVaried(at))),
    varies,
    inputBounds,
    allBounds: tightened([...inputBounds, ...tape.bounds]),
    overAnyway: fixed.some(({ value }) => value.value.isNegative()),
  });
}
