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
import type { Note } from '../../ratings/index.js';
import type { DecodedCargo, DecodedSpec } from '../../spec/index.js';
import type { TowingError } from '../../towing/index.js';
import { type Decision, type Derived, inInches, inPounds, renamed, sum } from '../../trace/index.js';
import { weighsNothing } from './cargo-pieces.js';
import { asItStands, emptyTrailer } from './empty-trailer.js';
import type { OpenQuestion } from './open-questions.js';
import { unplacedPiece } from './wanting-keys.js';

export interface Weighed {
  /** The empty trailer with its options, in lb. */
  readonly curb?: Derived<'lb'> | undefined;
  /** The laden trailer, tongue load included, in lb. */
  readonly gross?: Derived<'lb'> | undefined;
  /** Tongue load and axle load, in lb, and where the axles act together. */
  readonly balance?: Balance | undefined;
  /** The empty trailer as an item of the balance. */
  readonly trailer?: Item | undefined;
  /** Every piece of the spec in its order; undefined where its place is not known. */
  readonly cargo: readonly (PlacedItem | undefined)[];
  /** For every piece whether its weight is given as zero: then its place, ramps and tiedowns cannot be checked. */
  readonly weightless: readonly Decision[];
  /** The trailer weight as the sum of its parts; compared with the scale weight when there is one. */
  readonly built?: CurbWeight | undefined;
  /** Remarks: what was assumed, and where sources disagree. */
  readonly notes: readonly Note[];
  /** What is not right and is no check of a rating: a tongue load of the empty trailer that cannot be so. */
  readonly attention: readonly Note[];
  /** Open questions, each with the missing facts. */
  readonly notChecked: readonly OpenQuestion[];
  /** Where the program went one way because of a figure; for studies. */
  readonly decisions: readonly Decision[];
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
    spec.cargo === undefined
      ? [{ id: 'cargo', what: 'the laden trailer (this is the empty one)', missing: 'cargo', paths: ['cargo'] }]
      : [];
  const cargo = pieces.map(placed);
  const unplaced = pieces.flatMap((piece, index) => (cargo[index] === undefined ? [{ piece, index }] : []));
  const notChecked = [
    ...empty.notChecked,
    ...noCargo,
    ...unplaced.map(({ piece, index }) => ({
      id: 'balance',
      what: 'axle loads and tongue',
      missing: `where ${piece.name} stands`,
      paths: unplacedPiece(piece, index),
      piece: index,
    })),
  ];
  const weightless = pieces.map(weighsNothing);
  const base: Weighed = {
    curb: undefined,
    gross: undefined,
    balance: undefined,
    trailer: undefined,
    built: empty.built,
    cargo,
    weightless,
    notes: empty.notes,
    attention: empty.attention,
    notChecked,
    decisions: [...empty.decisions, ...weightless],
  };
  if (empty.curb === undefined) return right(base);
  const weights = [
    empty.curb,
    ...pieces.map(({ name, weight }) => inPounds(`${name} weight`, renamed(`${name} weight`, weight))),
  ];
  const gross = weights.length === 1 ? empty.curb : sum('gross weight', weights);
  const known = { ...base, curb: empty.curb, gross, trailer: empty.item };
  if (axlesAt === undefined || empty.item === undefined || unplaced.length > 0) return right(known);
  const balanced = balance([empty.item, ...cargo.filter((item) => item !== undefined)], { axlesAt });
  if (isLeft(balanced)) return left({ ...balanced.left, path: 'trailer' });
  return right({
    ...known,
    gross: balanced.right.gross,
    balance: balanced.right,
    decisions: [...base.decisions, ...balanced.right.decisions],
  });
}
