/** Whether each piece of cargo stands on the deck, and off its neighbours. */
import { type Note, note } from '../../ratings/index.js';
import type { DecodedCargo, DecodedSpec } from '../../spec/index.js';
import { type Decision, type Derived, decide, inInches, minus, plus, result } from '../../trace/index.js';
import type { NotChecked } from './not-checked.js';
import type { Weighed } from './weights.js';

type Inches = Derived<'in'>;

/** A piece and what it covers of the deck, as far as that is told. */
interface Covered {
  readonly name: string;
  readonly index: number;
  readonly front: Inches;
  readonly rear: Inches;
  readonly rightOfMiddle: Inches | undefined;
}

/** What asks attention, what is not told, and the comparisons that said so. */
export interface OnDeck {
  readonly attention: readonly Note[];
  readonly notChecked: readonly NotChecked[];
  readonly decisions: readonly Decision[];
}

/** More pieces than this are not held against each other: every pair is asked. */
const mostPieces = 30;

/** Front and rear of a piece: its front face and its length, or its balance point and how far that lies behind its front. */
function coveredBy(piece: DecodedCargo, index: number): Covered | undefined {
  const { name, at, front, balancePoint, length, rightOfMiddle } = piece;
  if (length === undefined) return undefined;
  const face =
    front === undefined
      ? at &&
        balancePoint &&
        result(
          `front of ${name}`,
          minus(inInches(`${name} position`, at), inInches(`${name} balance point`, balancePoint)),
        )
      : inInches(`${name} front face`, front);
  if (face === undefined) return undefined;
  return {
    name,
    index,
    front: face,
    rear: result(`rear of ${name}`, plus(face, inInches(`${name} length`, length))),
    rightOfMiddle: rightOfMiddle && inInches(`${name} right of the middle`, rightOfMiddle),
  };
}

const pathsOf = (...indices: readonly number[]): readonly string[] => indices.map((index) => `cargo.${index}`);

/** A piece without a window of its own: its ends, or at least its balance point, between the ends of the deck. */
function offDeck({ trailer: { deck }, cargo = [] }: DecodedSpec, { cargo: placed }: Weighed): OnDeck {
  if (deck === undefined) return { attention: [], notChecked: [], decisions: [] };
  const [from, to] = [inInches('deck front end', deck.front), inInches('deck rear end', deck.rear)];
  const [attention, notChecked, decisions]: [Note[], NotChecked[], Decision[]] = [[], [], []];
  for (const [index, piece] of cargo.entries()) {
    const { name, length, balancePoint } = piece;
    if (length !== undefined && balancePoint !== undefined) continue; // its window asks the deck
    const covered = coveredBy(piece, index);
    const item = placed[index];
    const point = item && inInches(`${name} position`, item.at);
    const [front, rear] = [covered?.front ?? point, covered?.rear ?? point];
    if (front === undefined || rear === undefined) continue;
    const asked = [decide(front, '>=', from), decide(rear, '<=', to)];
    decisions.push(...asked);
    if (asked.some(({ holds }) => !holds)) {
      const part = covered === undefined ? 'balances off the deck' : 'stands over an end of the deck';
      attention.push({ ...note('PieceOffDeck', `${name} ${part}`, [front, rear, from, to]), paths: pathsOf(index) });
    } else if (covered === undefined)
      notChecked.push({
        what: `whether ${name} stands on the deck`,
        missing: 'its length and its balance point',
        paths: [`cargo.${index}.length`, `cargo.${index}.balancePoint`],
      });
  }
  return { attention, notChecked, decisions };
}

/** Two pieces that cover one place of the deck; side by side they may, where their places across the deck differ. */
function overlaps(pieces: readonly Covered[]): OnDeck {
  const [attention, notChecked, decisions]: [Note[], NotChecked[], Decision[]] = [[], [], []];
  for (const [i, one] of pieces.entries())
    for (const other of pieces.slice(i + 1)) {
      const asked = [decide(one.front, '<', other.rear), decide(other.front, '<', one.rear)];
      decisions.push(...asked);
      if (asked.some(({ holds }) => !holds)) continue;
      const paths = pathsOf(one.index, other.index);
      const apart =
        one.rightOfMiddle === undefined || other.rightOfMiddle === undefined
          ? undefined
          : decide(one.rightOfMiddle, '=', other.rightOfMiddle);
      if (apart !== undefined) decisions.push(apart);
      if (apart?.holds === false)
        notChecked.push({
          what: `whether ${one.name} and ${other.name} stand clear of each other side by side`,
          missing: 'their widths, by tape',
          paths,
        });
      else
        attention.push({
          ...note('PiecesOverlap', `${one.name} and ${other.name} stand on one place of the deck`, [
            one.rear,
            other.front,
          ]),
          paths,
        });
    }
  return { attention, notChecked, decisions };
}

/** Asks every piece; what has no place or no length is left open. */
export function cargoOnDeck(spec: DecodedSpec, weighed: Weighed): OnDeck {
  const deck = offDeck(spec, weighed);
  const covered = (spec.cargo ?? []).flatMap((piece, i) => coveredBy(piece, i) ?? []);
  const pairs: OnDeck =
    covered.length > mostPieces
      ? {
          attention: [],
          notChecked: [{ what: 'whether pieces stand on one another', missing: `at most ${mostPieces} pieces` }],
          decisions: [],
        }
      : overlaps(covered);
  return {
    attention: [...deck.attention, ...pairs.attention],
    notChecked: [...deck.notChecked, ...pairs.notChecked],
    decisions: [...deck.decisions, ...pairs.decisions],
  };
}
