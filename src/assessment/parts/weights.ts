/** The weights of a spec: the empty trailer as weighed or as built up, the cargo, and how they balance. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import {
  type Balance,
  type BalanceError,
  balance,
  type CurbWeight,
  type Item,
  type PlacedItem,
} from '../../load/index.js';
import type { MembersError } from '../../members/index.js';
import { type Note, note } from '../../ratings/index.js';
import type { DecodedCargo, DecodedCurb, DecodedSpec, DecodedTrailer } from '../../spec/index.js';
import { leverScale, type TowingError } from '../../towing/index.js';
import {
  type Decision,
  type Derived,
  decide,
  difference,
  inInches,
  inPounds,
  minus,
  renamed,
  result,
  sum,
  times,
} from '../../trace/index.js';
import { toWire } from '../../units/index.js';
import { axlesMoved } from './axle-places.js';
import { builtUp } from './built-up-weight.js';
import type { NotChecked } from './not-checked.js';
import { weighedElsewhere, withOptions } from './options-added.js';

export interface Weighed {
  readonly curb?: Derived<'lb'>;
  readonly gross?: Derived<'lb'>;
  readonly balance?: Balance;
  /** The empty trailer as an item of the balance. */
  readonly trailer?: Item;
  /** Every piece of the spec in its order; undefined where its place is not known. */
  readonly cargo: readonly (PlacedItem | undefined)[];
  /** The trailer as its parts add up; beside the scale when there is one. */
  readonly built?: CurbWeight;
  readonly notes: readonly Note[];
  readonly notChecked: readonly NotChecked[];
  readonly decisions: readonly Decision[];
}

type Lb = Derived<'lb'>;

interface Empty {
  readonly curb?: Lb;
  readonly item?: Item;
  readonly built?: CurbWeight;
  readonly notes: readonly Note[];
  readonly notChecked: readonly NotChecked[];
  readonly decisions: readonly Decision[];
}

/** How far the list is from the scale, against the tolerance the spec states for its items. */
function againstScale(
  weighed: Lb,
  built: CurbWeight,
  tolerance: DecodedCurb['tolerance'],
): { readonly notes: readonly Note[]; readonly decisions: readonly Decision[] } {
  const gap = difference('weighed minus built up', weighed, built.weight);
  const governs = note(
    'WeighedAgainstBuiltUp',
    'The trailer is both weighed and built up from its parts: the scale governs.',
    [gap],
  );
  if (tolerance === undefined) return { notes: [governs], decisions: [] };
  const allowed = result('tolerance of the built-up weight', times(built.weight, tolerance));
  const decisions = [
    decide(gap, '<=', allowed, 'a remark'),
    decide(minus(built.weight, weighed), '<=', allowed, 'a remark'),
  ];
  const agrees = decisions.every(({ holds }) => holds);
  const says = agrees
    ? note('BuiltUpAgrees', 'The built-up weight agrees with the scale within the tolerance stated for its items.', [
        gap,
        allowed,
      ])
    : note(
        'BuiltUpDisagrees',
        'The built-up weight is further from the scale than the tolerance stated for its items: something is missing from the list, or on the trailer.',
        [gap, allowed],
      );
  return { notes: [governs, says], decisions };
}

/** The scale outranks the list; when there are both, the difference is told. */
function emptyTrailer(curb: DecodedCurb | undefined): Either<MembersError | BalanceError | TowingError, Empty> {
  const known = emptyFrom(curb);
  if (isLeft(known)) return known;
  const { item, decisions } = known.right;
  if (item === undefined || !('tongue' in item)) return known;
  const [weight, tongue] = [item.weight as Lb, item.tongue as Lb];
  const possible = decide(tongue, '<=', weight);
  return possible.holds
    ? right({ ...known.right, decisions: [...decisions, possible] })
    : left({
        chapter: 'load',
        tag: 'TongueAboveWeight',
        of: item.name,
        tongue: toWire(tongue.value),
        weight: toWire(weight.value),
        path: 'trailer.curb.tongue',
      });
}

/** What is known of the empty trailer by scale, by list or by both. */
function emptyFrom(curb: DecodedCurb | undefined): Either<MembersError | BalanceError | TowingError, Empty> {
  const found = builtUp(curb ?? {});
  if (isLeft(found)) return found;
  const built = found.right?.curb;
  const decisions = found.right?.decisions ?? [];
  const weight = curb?.weight === undefined ? undefined : inPounds('trailer weight', curb.weight);
  const lever =
    curb?.tongueByLever === undefined || curb.tongue !== undefined
      ? undefined
      : leverScale({ ...curb.tongueByLever, tongueRestsAt: 'coupler' });
  if (lever !== undefined && isLeft(lever)) return left({ ...lever.left, path: 'trailer.curb.tongueByLever' });
  const tongue = curb?.tongue === undefined ? lever?.right.tongue : inPounds('trailer tongue load', curb.tongue);
  const told =
    built === undefined || weight === undefined
      ? { notes: [], decisions: [] }
      : againstScale(weight, built, curb?.tolerance);
  const base = {
    notes: told.notes,
    notChecked: [],
    decisions: [...decisions, ...told.decisions, ...(lever?.right.decisions ?? [])],
    ...(built && { built }),
  };
  if (weight !== undefined && tongue !== undefined)
    return right({ ...base, curb: weight, item: { name: 'trailer', weight, tongue } });
  if (built !== undefined && weight === undefined && tongue !== undefined) {
    const says =
      'The empty trailer is built up from its parts and its tongue load is given: the tongue load governs where the weight acts.';
    return right({
      ...base,
      curb: built.weight,
      item: { name: 'trailer', weight: built.weight, tongue },
      notes: [note('TongueAgainstBuiltUp', says, [tongue])],
    });
  }
  if (built !== undefined && weight === undefined)
    return right({ ...base, curb: built.weight, item: { name: 'trailer', weight: built.weight, at: built.at } });
  if (weight !== undefined)
    return right({
      ...base,
      curb: weight,
      notChecked: [{ what: 'axle loads and tongue', missing: 'tongue load of the empty trailer' }],
    });
  return right({ ...base, notChecked: [{ what: 'gross weight and payload', missing: 'weight of the empty trailer' }] });
}

/** Where a piece of cargo acts: its own place, or its front face plus the balance point behind it. */
function placed(cargo: DecodedCargo): PlacedItem | undefined {
  const weight = inPounds(`${cargo.name} weight`, renamed(`${cargo.name} weight`, cargo.weight));
  if (cargo.at !== undefined)
    return {
      name: cargo.name,
      weight,
      at: inInches(`${cargo.name} position`, renamed(`${cargo.name} position`, cargo.at)),
    };
  if (cargo.front === undefined || cargo.balancePoint === undefined) return undefined;
  const front = inInches(`${cargo.name} front face`, renamed(`${cargo.name} front face`, cargo.front));
  const behind = inInches(`${cargo.name} balance point`, renamed(`${cargo.name} balance point`, cargo.balancePoint));
  return { name: cargo.name, weight, at: sum(`${cargo.name} position`, [front, behind]) };
}

/** The empty trailer with its options, and with its axles moved where that is told. */
function asItStands(read: Empty, trailer: DecodedTrailer, axlesAt: Derived<'in'> | undefined): Empty {
  const moved = axlesMoved(trailer);
  const were = moved && axlesAt && result('place of the axles when it was weighed', minus(axlesAt, moved));
  const placed = weighedElsewhere(read.item, were);
  const { item: _item, ...rest } = read;
  const empty: Empty = { ...rest, ...(placed.item && { item: placed.item }), notes: [...read.notes, ...placed.notes] };
  const { curb } = empty;
  const options = curb && withOptions({ curb, item: empty.item }, trailer.curb ?? {}, trailer, axlesAt);
  if (options === undefined) return empty;
  const { item: _before, ...others } = empty;
  return {
    ...others,
    curb: options.curb,
    ...(options.item && { item: options.item }),
    notes: [...empty.notes, ...options.notes],
    decisions: [...empty.decisions, ...options.decisions],
  };
}

/** Weighs a spec: gross always when the weights are known, the balance when the places are known too. */
export function weigh(
  spec: DecodedSpec,
  axlesAt: Derived<'in'> | undefined,
): Either<BalanceError | TowingError | MembersError, Weighed> {
  const read = emptyTrailer(spec.trailer.curb);
  if (isLeft(read)) return left({ ...read.left, path: read.left.path ?? 'trailer.curb' });
  const empty = asItStands(read.right, spec.trailer, axlesAt);
  const pieces = spec.cargo ?? [];
  const noCargo =
    spec.cargo === undefined ? [{ what: 'the laden trailer (this is the empty one)', missing: 'cargo' }] : [];
  const cargo = pieces.map(placed);
  const unplaced = pieces.filter((_, index) => cargo[index] === undefined);
  const notChecked = [
    ...empty.notChecked,
    ...noCargo,
    ...unplaced.map(({ name }) => ({ what: 'axle loads and tongue', missing: `where ${name} stands` })),
  ];
  const base = {
    cargo,
    notes: empty.notes,
    notChecked,
    decisions: empty.decisions,
    ...(empty.built && { built: empty.built }),
  };
  if (empty.curb === undefined) return right(base);
  const weights = [
    empty.curb,
    ...pieces.map(({ name, weight }) => inPounds(`${name} weight`, renamed(`${name} weight`, weight))),
  ];
  const gross = weights.length === 1 ? empty.curb : sum('gross weight', weights);
  const known = { ...base, curb: empty.curb, gross, ...(empty.item && { trailer: empty.item }) };
  if (axlesAt === undefined || empty.item === undefined || unplaced.length > 0) return right(known);
  const balanced = balance([empty.item, ...cargo.filter((item) => item !== undefined)], { axlesAt });
  if (isLeft(balanced))
    return left({
      ...balanced.left,
      path: balanced.left.tag === 'TongueAboveWeight' ? 'trailer.curb.tongue' : 'trailer',
    });
  return right({
    ...known,
    gross: balanced.right.gross,
    balance: balanced.right,
    decisions: [...empty.decisions, ...balanced.right.decisions],
  });
}
