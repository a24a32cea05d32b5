/** Every group of consecutive axles of a combination, each with its limit and, when the axles were weighed, its check. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Check, checkLoad, rating, weight } from '../../ratings/index.js';
import {
  type AnyLength,
  type AnyWeight,
  asDerived,
  converted,
  type Decision,
  type Derived,
  decide,
  difference,
  inUnit,
  sum,
} from '../../trace/index.js';
import { dimensionOf } from '../../units/index.js';
import { collected, showCrossed, showInWords } from '../../units/internal.js';
import { type RulesError, rulesError } from '../errors.js';
import { pathOf, pounds } from '../pounds.js';
import { type AxleGroupOptions, bridgeLaw } from './axle-group-formula.js';
import { type AxleGroupLimit, limitOf, spreadKind } from './axle-groups.js';

/** One axle: its distance behind any fixed point, and its load on a scale when there is one. */
export interface PlacedAxle {
  readonly behind: AnyLength;
  readonly weight?: AnyWeight;
}

/** A group from one axle to another, counted from 1 at the front. */
export interface AxleGroupFinding extends AxleGroupLimit {
  readonly first: number;
  readonly last: number;
  readonly length: Derived<'ft'>;
  /** Present when every axle of the group was weighed. */
  readonly check?: Check;
}

export interface AxleGroups {
  readonly groups: readonly AxleGroupFinding[];
  readonly decisions: readonly Decision[];
}

interface Axle {
  readonly at: Derived<'in'>;
  readonly weight: Derived<'lb'> | undefined;
}

function place(axles: readonly PlacedAxle[]): Either<RulesError, readonly Axle[]> {
  const placed: Axle[] = [];
  for (const [i, axle] of axles.entries()) {
    const at = asDerived(`axle ${i + 1} position`, axle.behind);
    if (dimensionOf(at.value.unit) !== 'length')
      return left(
        rulesError(
          { tag: 'OutOfRange', what: `axle ${i + 1} position`, found: showInWords(at.value), needed: 'a length' },
          pathOf(at),
        ),
      );
    const weighed = axle.weight === undefined ? undefined : pounds(`axle ${i + 1} weight`, axle.weight);
    if (weighed !== undefined && isLeft(weighed)) return weighed;
    placed.push({ at: inUnit(at, 'in'), weight: weighed?.right });
  }
  return right(placed);
}

/** The most axles that are asked in groups: a trailer of twelve, behind the longest truck. */
const mostAxles = 24;

/**
 * Which group of axles is the closest to its limit on the Interstate system?
 *
 * Every run of consecutive axles, from one axle to all of them, gets its `axleGroupLimit`; a run that splits into two
 * tandems is recognised as such. `load = sum of the axle weights of the run`.
 *
 * @param axles from the front of the tow vehicle to the rear of the trailer, positions in any unit of length behind one
 * point, weights from an axle scale in any unit of weight
 * @param options as for `axleGroupLimit`
 * @returns lb and ft. Left `OutOfRange` for no axle, for more than 24, a position not behind the one before it, or a weight not above zero.
 * @example axleGroups([{ behind: foot(0) }, { behind: foot(12) }, { behind: foot(30) }, { behind: inch(396) }], { tie: 'down', lengthRounding: 'none' })
 * @source 23 USC 127(a), 23 CFR 658.17; 96 Stat. 2124
 */
export function axleGroups(axles: readonly PlacedAxle[], options: AxleGroupOptions): Either<RulesError, AxleGroups> {
  if (axles.length === 0)
    return left(rulesError({ tag: 'OutOfRange', what: 'axles', found: 'none', needed: 'at least one' }));
  if (axles.length > mostAxles)
    return left(
      rulesError({ tag: 'OutOfRange', what: 'axles', found: String(axles.length), needed: `at most ${mostAxles}` }),
    );
  const placed = place(axles);
  if (isLeft(placed)) return placed;
  const decisions: Decision[] = [];
  for (let i = 1; i < placed.right.length; i += 1) {
    const [front, rear] = [placed.right[i - 1] as Axle, placed.right[i] as Axle];
    const follows = decide(rear.at, '>', front.at);
    decisions.push(follows);
    if (follows.holds) continue;
    const [ahead, found] = showCrossed(front.at.value, rear.at.value);
    const needed = `more than ${ahead}, where the axle before it stands`;
    return left(rulesError({ tag: 'OutOfRange', what: `axle ${i + 1} position`, found, needed }));
  }
  const groups = placed.right.flatMap((_, first) =>
    placed.right.slice(first).map((_, more) => group(placed.right, first, first + more, options)),
  );
  return right({ groups, decisions: [...decisions, ...collected(groups, (found) => found.decisions)] });
}

const spreadOf = (axles: readonly Axle[], first: number, last: number): Derived<'in'> =>
  difference(`spread of axles ${first + 1} to ${last + 1}`, (axles[last] as Axle).at, (axles[first] as Axle).at);

function group(axles: readonly Axle[], first: number, last: number, options: AxleGroupOptions): AxleGroupFinding {
  const decisions: Decision[] = [];
  const spread = spreadOf(axles, first, last);
  const length = converted(`length of axles ${first + 1} to ${last + 1}`, spread, 'ft');
  const kind = first === last ? 'single' : spreadKind(spread, decisions);
  const tandems = kind === 'group' && splitsIntoTandems(axles, first, last, decisions);
  const found = limitOf(last - first + 1, length, kind, tandems, options, decisions);
  const weights = axles
    .slice(first, last + 1)
    .map((axle) => axle.weight)
    .filter((weighed) => weighed !== undefined);
  if (weights.length !== last - first + 1) return { first: first + 1, last: last + 1, length, ...found };
  const name = first === last ? `axle ${first + 1}` : `axles ${first + 1} to ${last + 1}`;
  const load = sum(`weight of ${name}`, weights);
  return {
    first: first + 1,
    last: last + 1,
    length,
    check: checkLoad(
      rating('axle group', found.limit, { part: name, clause: bridgeLaw }),
      weight('axle group load', load),
    ),
    ...found,
  };
}

/** Two consecutive tandems: the run can be cut so that both parts are tandems. Once the front part is longer than a tandem it stays so. */
function splitsIntoTandems(axles: readonly Axle[], first: number, last: number, decisions: Decision[]): boolean {
  for (let cut = first + 1; cut + 1 < last; cut += 1) {
    const front = spreadKind(spreadOf(axles, first, cut), decisions);
    if (front === 'group') return false;
    if (front === 'tandem' && spreadKind(spreadOf(axles, cut + 1, last), decisions) === 'tandem') return true;
  }
  return false;
}
