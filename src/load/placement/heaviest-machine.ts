/** The heaviest machine for which a placement window exists. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Bound, type Note, note } from '../../ratings/index.js';
import { type Decision, type Derived, greatestOf, leastOf, type OutsideItsRange } from '../../trace/index.js';
import { compare, lb } from '../../units/index.js';
import { collected } from '../../units/internal.js';
import type { BalanceError, NothingLimits } from '../errors.js';
import { linesOf } from './limit-lines.js';
import { type LimitPair, pairOf } from './limit-pairs.js';
import { type MachineShape, madeSure, type PlacementLimit, type TrailerForPlacing } from './limits.js';

/** The heaviest machine that has a position, and the pairs of limits that govern. */
export interface HeaviestPlaced {
  /** Zero or below: not even the lightest machine has a place. */
  readonly heaviest: Derived<'lb'>;
  /** Every pair of limits that closes the window at that weight; more than one when they tie. Limits alike that tie are named together. */
  readonly governedBy: readonly LimitPair[];
  /** Every limit on the weight itself that is reached at it: GVWR, ramps. */
  readonly byWeight: readonly Bound[];
  /** Present when some pair asks for a certain weight: one that balances the rest, as behind the axles to relieve the tongue. A lighter one has no place either. */
  readonly lightest?: Derived<'lb'>;
  /** Whether any machine above zero has a window. */
  readonly exists: boolean;
  readonly pairs: readonly LimitPair[];
}

/** The heaviest machine by the stated balance point, and by the least favorable one within its uncertainty. */
export interface HeaviestMachine extends HeaviestPlaced {
  /** The same with the balance point anywhere within its uncertainty. */
  readonly sure: HeaviestPlaced;
  readonly decisions: readonly Decision[];
  readonly notes: readonly Note[];
}

function crossings(pairs: readonly LimitPair[], allows: LimitPair['allows']): readonly Derived<'lb'>[] {
  const found: Derived<'lb'>[] = [];
  for (const pair of pairs) if (pair.allows === allows && pair.crossing !== undefined) found.push(pair.crossing);
  return found;
}

/** Of limits whose lines start at one place, the one with the strictest moment governs at every weight. */
function strictest(limits: readonly PlacementLimit[]): readonly PlacementLimit[] {
  const alike = new Map<Derived<'in'>, PlacementLimit[]>();
  for (const limit of limits) {
    const others = alike.get(limit.base);
    if (others === undefined) alike.set(limit.base, [limit]);
    else others.push(limit);
  }
  return [...alike.values()].map((group) => {
    const first = group[0] as PlacementLimit;
    if (group.length === 1) return first;
    const symbol = `moment of the strictest of ${group.map(({ name }) => name).join(', ')}`;
    const moments = group.map(({ moment }) => moment);
    const moment = first.end === 'front' ? greatestOf(symbol, moments) : leastOf(symbol, moments);
    const governing = group.filter((each) => compare(each.moment.value, moment.value) === 0);
    return { ...first, name: governing.map(({ name }) => name).join(' and '), moment };
  });
}

function heaviestOf(
  name: string,
  fronts: readonly PlacementLimit[],
  rears: readonly PlacementLimit[],
  weights: readonly Bound[],
  decisions: Decision[],
): HeaviestPlaced | undefined {
  const pairs = collected(fronts, (front) => rears.map((rear) => pairOf(front, rear, decisions)));
  const most = [...crossings(pairs, 'most'), ...weights.map(({ limit }) => limit)];
  if (most.length === 0) return undefined;
  const heaviest = leastOf(name, most);
  const floors = crossings(pairs, 'least');
  const lightest = floors.length === 0 ? undefined : greatestOf(`lightest machine for ${name}`, floors);
  const meets =
    compare(heaviest.value, lb(0)) > 0 && (lightest === undefined || compare(lightest.value, heaviest.value) <= 0);
  return {
    heaviest,
    pairs,
    governedBy: pairs.filter(
      ({ allows, crossing }) =>
        allows === 'most' && crossing !== undefined && compare(crossing.value, heaviest.value) === 0,
    ),
    byWeight: weights.filter(({ limit }) => compare(limit.value, heaviest.value) === 0),
    ...(lightest !== undefined && { lightest }),
    exists: meets && pairs.every(({ allows }) => allows !== 'never'),
  };
}

/**
 * What is the heaviest machine of this shape that has a place on this trailer at all?
 *
 * Each limit is a line `x = base + moment / P`. A front limit and a rear limit leave room while
 * `(base_f - base_r) P <= moment_r - moment_f`, so each pair that closes has its own greatest P, exactly; the least of
 * them governs. Limits with one base differ in their moment only: the strictest governs. Hitch against guideline, for one: `P = (Tmax - f W0) / f`. With an uncertainty u of the balance point the
 * weight limits close in by u on both sides first.
 *
 * Limits on the gross weight or on the load itself bound P directly, where the trailer has them (`limits`).
 *
 * @param trailer as in `placementWindow`, in inches behind the coupler
 * @param machine length, balance point behind its front face, uncertainty (in); the weight is the answer
 * @returns lb. Left from `balance` or `placementWindow`'s own; `NothingLimits` when no pair of limits ever closes. A
 * heaviest machine of zero or less, or `exists` false, is an answer
 * @example orThrow(heaviestMachine(trailer, { length: inch(120), balancePoint: inch(52), uncertainty: inch(0) })).heaviest // 10,800 lb
 * @source static equilibrium, derived
 */
export function heaviestMachine(
  trailer: TrailerForPlacing,
  machine: MachineShape,
): Either<BalanceError | NothingLimits | OutsideItsRange, HeaviestMachine> {
  const lines = linesOf(trailer, machine);
  if (isLeft(lines)) return lines;
  const { limits, weights, uncertainty, decisions: read } = lines.right;
  const decisions: Decision[] = [...read];
  const fronts = strictest(limits.filter(({ end }) => end === 'front'));
  const rears = strictest(limits.filter(({ end }) => end === 'rear'));
  const sureOf = (some: readonly PlacementLimit[]): readonly PlacementLimit[] =>
    some.map((limit) => madeSure(limit, uncertainty));
  const nominal = heaviestOf('heaviest machine', fronts, rears, weights, decisions);
  const sure = heaviestOf('heaviest machine, sure', sureOf(fronts), sureOf(rears), weights, decisions);
  if (nominal === undefined || sure === undefined) {
    return left({
      chapter: 'load',
      tag: 'NothingLimits',
      what: 'the heaviest machine',
      given: limits.map(({ name }) => name),
    });
  }
  const { exists, lightest } = nominal;
  const says = 'It balances the rest of the trailer: a machine lighter than this has no place either.';
  return right({
    sure,
    decisions,
    notes: [
      note('GrossNotHere', 'A limit that was not brought along may allow less.'),
      ...(exists && lightest !== undefined ? [note('LighterHasNoPlace', says, [lightest])] : []),
    ],
    ...nominal,
  });
}
