/** Where each piece of cargo may be placed, the others staying put, under every limit that depends on the place. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import {
  type Guideline,
  heaviestMachine,
  type LoadError,
  placementWindow,
  type TrailerForPlacing,
} from '../../load/index.js';
import { note } from '../../ratings/index.js';
import type { DecodedCargo } from '../../spec/index.js';
import {
  asDerived,
  constant,
  type Decision,
  type Derived,
  inInches,
  inPounds,
  type OutsideItsRange,
  renamed,
} from '../../trace/index.js';
import { inch } from '../../units/index.js';
import { has } from '../../units/internal.js';
import { answered } from './answered.js';
import { othersPlaced } from './cargo-pieces.js';
import { climbersOf } from './climbers.js';
import type { LadenLimits } from './laden-limits.js';
import { sidesOfPiece } from './lean-of-cargo.js';
import { emptyPart, open, type Part, together } from './part-of-answer.js';
import { type PiecePlacement, type PlacePart, placeNow } from './placement-part.js';
import { rampLimits } from './ramp-limits.js';
import type { Rig } from './rig.js';
import { type Keys, unbalancedEmpty, unplaced, wantingOfCargo } from './wanting-keys.js';
import type { Weighed } from './weights.js';

type Problem = LoadError | OutsideItsRange;

interface Placed extends Part {
  readonly piece?: PiecePlacement;
}

/** Everything on the trailer that a place of this piece depends on. */
function trailerFor(
  rig: Rig,
  { gross, axles, tongue, sides }: LadenLimits,
  weighed: Weighed,
  band: Guideline,
  index: number,
): { readonly trailer: TrailerForPlacing; readonly decisions: readonly Decision[] } | Part {
  const { spec, stack } = rig;
  const { deck } = spec.trailer;
  const piece = spec.cargo?.[index] as DecodedCargo;
  const { name } = piece;
  const unasked = (missing: string, paths: Keys): Part =>
    open({ id: 'placement', what: `where ${name} may stand`, missing, paths, piece: index });
  if (weighed.weightless[index]?.holds === true) return unasked('a weight above zero', [`cargo.${index}.weight`]);
  if (deck === undefined) return unasked('ends of the deck', ['trailer.deck']);
  if (stack.group === undefined || weighed.trailer === undefined)
    return unasked('balance of the empty trailer', unbalancedEmpty(spec));
  const others = othersPlaced(weighed.cargo, index);
  if (others === undefined) return unasked('places of the other cargo', unplaced(spec, index));
  const alone = { trailer: spec.trailer, cargo: [piece] };
  const ramps = rampLimits(alone, climbersOf(alone));
  return {
    trailer: {
      items: [weighed.trailer, ...others],
      axlesAt: stack.group.at,
      deck: { front: deck.front, rear: deck.rear },
      guideline: band,
      tongueLimits: [],
      axleLimits: [],
      limits: [...tongue.limits, ...axles, ...sides(sidesOfPiece(spec, index)), ...gross, ...ramps.limits],
    },
    decisions: [...tongue.decisions, ...ramps.decisions],
  };
}

function placeOf(
  rig: Rig,
  limits: LadenLimits,
  weighed: Weighed,
  band: Guideline,
  index: number,
): Either<Problem, Placed> {
  const piece = rig.spec.cargo?.[index] as DecodedCargo;
  const { name, length, balancePoint, uncertainty } = piece;
  if (length === undefined || balancePoint === undefined) return right(emptyPart);
  const on = trailerFor(rig, limits, weighed, band, index);
  if (!has(on, 'trailer')) return right(on);
  const measure = (what: string, figure: Parameters<typeof inInches>[1]): Derived<'in'> =>
    inInches(`${name} ${what}`, renamed(`${name} ${what}`, asDerived(what, figure)));
  const shape = {
    length: measure('length', length),
    balancePoint: measure('balance point', balancePoint),
    uncertainty: uncertainty === undefined ? constant(inch(0)) : measure('uncertainty', uncertainty),
  };
  const weight = inPounds(`${name} weight`, renamed(`${name} weight`, asDerived('weight', piece.weight)));
  const window = placementWindow(on.trailer, { weight, ...shape });
  if (isLeft(window)) return window;
  const heaviest = heaviestMachine(on.trailer, shape);
  const item = weighed.cargo[index];
  const unsure = `The balance point of ${name} is taken as exact: no uncertainty was given.`;
  return right({
    piece: {
      name,
      index,
      window: window.right,
      ...(isLeft(heaviest) ? {} : { heaviest: heaviest.right }),
      ...(item && { now: placeNow(inInches(`${name} position`, item.at), window.right.limits) }),
    },
    ...emptyPart,
    notes: [
      ...window.right.notes.filter(({ tag }) => tag !== 'GrossNotHere'),
      ...(uncertainty === undefined ? [note('BalancePointTakenAsSure', unsure)] : []),
    ],
    decisions: [...on.decisions, ...window.right.decisions],
  });
}

/** Finds the window of each piece whose shape is known, and the heaviest piece of that shape that has one. */
export function placePart(rig: Rig, limits: LadenLimits, weighed: Weighed, band: Guideline): PlacePart {
  const { cargo = [] } = rig.spec;
  const known = cargo.some(({ length, balancePoint }) => length !== undefined && balancePoint !== undefined);
  if (!known) {
    const unasked =
      cargo.length === 0
        ? emptyPart
        : open({
            id: 'placement',
            what: 'where the machine may stand',
            missing: 'length and balance point of a piece of cargo',
            paths: wantingOfCargo({ cargo }, 'length', 'balancePoint'),
          });
    return { pieces: [], ...unasked };
  }
  const parts = cargo.map(({ name }, index): Placed => {
    const asked = { id: 'placement', what: `where ${name} may stand`, path: `cargo.${index}`, piece: index };
    return answered(placeOf(rig, limits, weighed, band, index), asked, (part): Placed => part);
  });
  return { pieces: parts.map(({ piece }) => piece).filter((piece) => piece !== undefined), ...together(parts) };
}
