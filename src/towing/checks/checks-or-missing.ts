/** Checks, and what could not be checked: a missing rating or weight is named and never passes. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import { type Check, checkLoad, type Limits, type RatingKind, rating, weight } from '../../ratings/index.js';
import { type AnyWeight, type Decision, type Derived, inPounds, type Source } from '../../trace/index.js';
import type { TowingError } from '../errors.js';
import { allAboveZero } from '../figures.js';

/** A check that was not made, and the facts it needs. */
export interface NotChecked {
  /** The rating that was asked for. */
  readonly kind: RatingKind;
  /** What was not checked, in shop words. */
  readonly what: string;
  /** The names of the facts that are missing. */
  readonly missing: readonly string[];
}

/** What was checked and what was not. */
export interface Findings {
  readonly checks: readonly Check[];
  readonly notChecked: readonly NotChecked[];
  readonly decisions: readonly Decision[];
}

/** A load that is known, or the facts missing for it. */
export type LoadOrMissing = Derived<'lb'> | { readonly missing: readonly string[] };

/** A load computed from inputs that may be missing. */
export const loadFrom = (load: Derived<'lb'> | undefined, ...missing: readonly string[]): LoadOrMissing =>
  load ?? { missing };

export const isMissing = (load: LoadOrMissing): load is { readonly missing: readonly string[] } => 'missing' in load;

/** One check whose rating or load may be missing; `how` names the way of standing when it is not level with bars off. */
export function ask<K extends RatingKind>(
  kind: K,
  against: Limits[K],
  limit: AnyWeight | undefined,
  load: LoadOrMissing,
  { how, clause }: { clause?: Source | undefined; how?: string | undefined } = {},
): Either<TowingError, Findings> {
  const what = `${against} against ${kind}${how === undefined ? '' : `, ${how}`}`;
  const wanting = [...(limit === undefined ? [kind] : []), ...(isMissing(load) ? load.missing : [])];
  if (limit === undefined || isMissing(load))
    return right({ checks: [], notChecked: [{ kind, what, missing: wanting }], decisions: [] });
  const figure = inPounds(kind, limit, 'label');
  const above = allAboveZero([[kind, figure]]);
  if (isLeft(above)) return above;
  return right({
    checks: [checkLoad<RatingKind>(rating(kind, figure, { clause }), weight(against, load), how)],
    notChecked: [],
    decisions: above.right,
  });
}

/** All the findings together, or the first error. */
export function gathered(findings: readonly Either<TowingError, Findings>[]): Either<TowingError, Findings> {
  const checks: Check[] = [];
  const notChecked: NotChecked[] = [];
  const decisions: Decision[] = [];
  for (const finding of findings) {
    if (isLeft(finding)) return finding;
    checks.push(...finding.right.checks);
    notChecked.push(...finding.right.notChecked);
    decisions.push(...finding.right.decisions);
  }
  return right({ checks, notChecked, decisions });
}
