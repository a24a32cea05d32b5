/** What would put this rig right? */

import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type AssessError, type Assessment, assess } from '../../assessment/index.js';
import type { SpecInput } from '../../spec/index.js';
import type { ChooseError } from '../errors.js';
import { questionRefusal } from '../refusal.js';
import { isWithin } from '../verdict.js';
import { pullAll } from './all-parts.js';
import { type Asking, asking, type Changes } from './asking.js';
import { type AnyLever, type LeverWord, leverWords } from './lever.js';
import { leversOf, neededAnyhow, noSuchLever } from './levers.js';
import { pullBoth } from './pairs.js';
import { type Pulled, pull } from './pull.js';
import type { Remedies, Remedy, RemedyStep } from './remedy.js';

/** How many assessments one question may cost. */
export const mostAssessments = 60;
/** How many proposals are enough: more are no help. */
const enough = 3;

type Wanted = (lever: AnyLever) => boolean;

interface Prepared {
  readonly start: Assessment;
  readonly steps: readonly RemedyStep[];
  readonly changes: Changes;
}

function remedy(
  levers: readonly AnyLever[],
  pulled: readonly Pulled[],
  beside: Changes,
  { ask }: Asking,
): readonly Remedy[] {
  const changes = Object.assign({}, beside, ...pulled.map((each) => each.changes)) as Changes;
  const assessment = ask(changes);
  if (assessment === undefined || !isWithin(assessment)) return [];
  const steps = pulled.map(({ says }, i): RemedyStep => ({ says, who: (levers[i] as AnyLever).who }));
  return [{ steps, changes, assessment }];
}

/** All pairs of levers, the cheapest pair first. */
const pairsOf = (levers: readonly AnyLever[]) =>
  levers
    .flatMap((first, i) => levers.slice(i + 1).map((second) => ({ first, second, cost: first.cost + second.cost })))
    .sort((one, other) => one.cost - other.cost);

/** Legs and tiedowns first: no other check depends on them. */
function prepared(now: Assessment, spec: unknown, asked: Asking, isWanted: Wanted): Prepared {
  let prepared: Prepared = { start: now, steps: [], changes: {} };
  for (const choice of neededAnyhow(now, spec).filter(isWanted)) {
    const { tags = [], word = '' } = choice.settles ?? {};
    for (const { says, changes } of choice.options) {
      const all = { ...prepared.changes, ...changes };
      const there = asked.ask(all);
      if (there === undefined) break;
      if (there.attention.some((remark) => tags.includes(remark.tag) && remark.says.includes(word))) continue;
      prepared = { start: there, steps: [...prepared.steps, { says, who: choice.who }], changes: all };
      break;
    }
  }
  return prepared;
}

/** Single levers, then pairs of those that do not do it alone. */
function search(
  start: Assessment,
  beside: Changes,
  asked: Asking,
  isWanted: Wanted,
): Pick<Remedies, 'single' | 'together'> {
  const levers = leversOf(start).filter(isWanted);
  const single: Remedy[] = [];
  const alone = new Set<AnyLever>();
  for (const lever of levers) {
    const pulled = pull(lever, start, beside, asked);
    if (pulled === undefined) continue;
    alone.add(lever);
    single.push(...remedy([lever], [pulled], beside, asked));
  }
  const pairs: Remedy[] = [];
  const others = levers.filter((lever) => !alone.has(lever));
  for (const { first, second } of single.length >= enough ? [] : pairsOf(others)) {
    if (pairs.length >= enough || asked.spent()) break;
    const both = pullBoth(first, second, start, beside, asked);
    if (both !== undefined) pairs.push(...remedy(both.levers, both.pulled, beside, asked));
  }
  if (single.length === 0 && pairs.length === 0) {
    const several = pullAll(levers, start, beside, asked) ?? [];
    if (several.length > 0)
      pairs.push(
        ...remedy(
          several.map(({ lever }) => lever),
          several.map(({ pulled }) => pulled),
          beside,
          asked,
        ),
      );
  }
  return { single, together: pairs };
}

/**
 * What would put this rig right?
 *
 * Levers and who can pull them: the driver moves a piece, unloads, brings tires to their molded pressure, sets bars; the yard
 * has other ramps and chains; the shop fits tires, hitch parts, a jack. A label is never changed. Each lever is pulled as
 * little as puts everything right, in steps of 0.25 in, 10 lb, 50 lb of rating; pieces stay on the deck and off one another.
 * Legs under the tail and tiedowns come first, with every proposal. Each proposal has been applied and assessed.
 *
 * Not a judgement that the change is safe to make: the maker's limits and the label govern.
 *
 * @param spec a spec as JSON
 * @param levers those that may be pulled, by their words; all of them by default
 * @returns single levers, then pairs; none when it is within already or no lever helps. Left as `assess`, `UnusableFigure` for a lever that
 * there is not
 * @example orThrow(remedies(spec)).isWithin // false
 * @source the working of `assess`, solved for each lever
 */
export function remedies(
  spec: SpecInput,
  levers: readonly LeverWord[] = leverWords,
): Either<AssessError | ChooseError, Remedies> {
  const unusable = questionRefusal('levers', levers);
  if (unusable !== undefined) return left(unusable);
  const strange = levers.findIndex((word) => !leverWords.includes(word));
  if (strange >= 0) return left(noSuchLever(levers, strange));
  const isWanted: Wanted = ({ word }) => levers.includes(word);
  const assessed = assess(spec);
  if (isLeft(assessed)) return assessed;
  const now = assessed.right;
  const asked = asking(spec, mostAssessments);
  const none = { now, anyhow: [], anyhowChanges: {}, single: [], together: [], assessed: 0, cutShort: false };
  if (isWithin(now)) return right({ ...none, isWithin: true });
  const first = prepared(now, spec, asked, isWanted);
  const found = isWithin(first.start)
    ? { single: [], together: [] }
    : search(first.start, first.changes, asked, isWanted);
  return right({
    now,
    isWithin: false,
    anyhow: first.steps,
    anyhowChanges: first.changes,
    ...found,
    assessed: asked.made(),
    cutShort: asked.spent(),
  });
}
