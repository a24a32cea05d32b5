/** The weights of a spec: the empty trailer as weighed or as built up, the cargo, and how they balance. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import type { AxleGroup } from '../axles/index.js';
import { type Balance, balance, type BalanceError, curbWeight, inInches, inPounds, type Item, type PlacedItem } from '../load/index.js';
import { note, type Note } from '../ratings/index.js';
import { constant, type Derived, difference, named, product, sum } from '../trace/index.js';
import { ratio } from '../units/index.js';
import type { CargoSpec, CurbSpec, Spec } from './codec.js';
import type { NotChecked } from './not-checked.js';

export interface Weighed {
  readonly curb?: Derived<'lb'>;
  readonly gross?: Derived<'lb'>;
  readonly balance?: Balance;
  /** The empty trailer as an item of the balance, and the cargo as placed items, for whoever moves one of them. */
  readonly trailer?: Item;
  readonly cargo: readonly PlacedItem[];
  readonly notes: readonly Note[];
  readonly notChecked: readonly NotChecked[];
}

type Lb = Derived<'lb'>;

/** The parts of a built-up trailer, each line multiplied by its count. */
function partsOf(items: NonNullable<CurbSpec['items']>): readonly PlacedItem[] {
  return items.map(({ name, weight, at, count }) => {
    const each = inPounds(`${name} weight`, named(`${name} weight`, weight));
    const all = count === undefined ? each : product(`${name} weight x ${count}`, each, constant(ratio(count)));
    return { name, weight: all, at: inInches(`${name} position`, named(`${name} position`, at)) };
  });
}

interface Empty { readonly curb?: Lb; readonly item?: Item; readonly notes: readonly Note[]; readonly notChecked: readonly NotChecked[] }

/** The scale outranks the list; when there are both, the difference is told. */
function emptyTrailer(curb: CurbSpec | undefined): Empty {
  const built = curb?.items === undefined || curb.items.length === 0 ? undefined : curbWeight(partsOf(curb.items));
  const weight = curb?.weight === undefined ? undefined : inPounds('trailer weight', curb.weight);
  const tongue = curb?.tongue === undefined ? undefined : inPounds('trailer tongue load', curb.tongue);
  const notes = built === undefined || weight === undefined ? [] : [
    note('WeighedAgainstBuiltUp', 'The trailer is both weighed and built up from items: the scale governs.', [difference('weighed minus built up', weight, built.weight)]),
  ];
  if (weight !== undefined && tongue !== undefined) return { curb: weight, item: { name: 'trailer', weight, tongue }, notes, notChecked: [] };
  if (built !== undefined && weight === undefined) return { curb: built.weight, item: { name: 'trailer', weight: built.weight, at: built.at }, notes, notChecked: [] };
  if (weight !== undefined) return { curb: weight, notes, notChecked: [{ what: 'axle loads and tongue', missing: 'tongue load of the empty trailer' }] };
  return { notes, notChecked: [{ what: 'gross weight and payload', missing: 'weight of the empty trailer' }] };
}

/** Where a piece of cargo acts: its own place, or its front face plus the balance point behind it. */
function placed(cargo: CargoSpec): PlacedItem | undefined {
  const weight = inPounds(`${cargo.name} weight`, named(`${cargo.name} weight`, cargo.weight));
  if (cargo.at !== undefined) return { name: cargo.name, weight, at: inInches(`${cargo.name} position`, named(`${cargo.name} position`, cargo.at)) };
  if (cargo.front === undefined || cargo.balancePoint === undefined) return undefined;
  const front = inInches(`${cargo.name} front face`, named(`${cargo.name} front face`, cargo.front));
  const behind = inInches(`${cargo.name} balance point`, named(`${cargo.name} balance point`, cargo.balancePoint));
  return { name: cargo.name, weight, at: sum(`${cargo.name} position`, [front, behind]) };
}

/** Weighs a spec: gross always when the weights are known, the balance when the places are known too. */
export function weigh(spec: Spec, group: AxleGroup | undefined): Either<BalanceError, Weighed> {
  const empty = emptyTrailer(spec.trailer.curb);
  const pieces = spec.cargo ?? [];
  const cargo = pieces.map(placed).filter((item) => item !== undefined);
  const unplaced = pieces.filter((piece) => placed(piece) === undefined);
  const notChecked = [...empty.notChecked, ...unplaced.map(({ name }) => ({ what: 'axle loads and tongue', missing: `where ${name} stands` }))];
  const base = { cargo, notes: empty.notes, notChecked };
  if (empty.curb === undefined) return right(base);
  const weights = [empty.curb, ...pieces.map(({ name, weight }) => inPounds(`${name} weight`, named(`${name} weight`, weight)))];
  const gross = weights.length === 1 ? empty.curb : sum('gross weight', weights);
  const known = { ...base, curb: empty.curb, gross, ...(empty.item && { trailer: empty.item }) };
  if (group === undefined || empty.item === undefined || unplaced.length > 0) return right(known);
  const balanced = balance([empty.item, ...cargo], { axlesAt: group.at });
  if (isLeft(balanced)) return left({ ...balanced.left, path: balanced.left.tag === 'TongueAboveWeight' ? 'trailer.curb.tongue' : 'trailer' });
  return right({ ...known, gross: balanced.right.gross, balance: balanced.right });
}
