/** Whether each piece of cargo stands on the deck, and off its neighbours. */
import { type Note, note } from '../../ratings/index.js';
import type { DecodedCargo, DecodedSpec } from '../../spec/index.js';
import { type Decision, type Derived, decide, inInches, minus, over, plus, result } from '../../trace/index.js';
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
  readonly width: Inches | undefined;
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
    width: piece.width && inInches(`${name} width`, piece.width),
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

/** Whether two pieces stand clear of each other across the deck: by their widths where these are told, never where both stand alike. */
function sideBySide(
  one: Covered,
  other: Covered,
): { readonly clear: boolean | undefined; readonly decisions: readonly Decision[] } {
  if (one.rightOfMiddle === undefined || other.rightOfMiddle === undefined) return { clear: false, decisions: [] };
  const alike = decide(one.rightOfMiddle, '=', other.rightOfMiddle);
  if (alike.holds) return { clear: false, decisions: [alike] };
  if (one.width === undefined || other.width === undefined) return { clear: undefined, decisions: [alike] };
  const halves = over(plus(one.width, other.width), 2);
  const asked = [
    decide(minus(one.rightOfMiddle, other.rightOfMiddle), '>=', halves),
    decide(minus(other.rightOfMiddle, one.rightOfMiddle), '>=', halves),
  ];
  return { clear: asked.some(({ holds }) => holds), decisions: [alike, ...asked] };
}

/** A piece wider than the deck, or than the clear width between the fenders where it may not stand over them. */
function tooWide({ trailer: { deck }, cargo = [] }: DecodedSpec): OnDeck {
  const [attention, notChecked, decisions]: [Note[], NotChecked[], Decision[]] = [[], [], []];
  const bounds = [
    ...(deck?.width === undefined
      ? []
      : [['the deck', inInches('deck width', deck.width), 'trailer.deck.width'] as const]),
    ...(deck?.betweenFenders === undefined || deck.overFenders === true
      ? []
      : [
          [
            'the room between the fenders',
            inInches('width between the fenders', deck.betweenFenders),
            'trailer.deck.betweenFenders',
          ] as const,
        ]),
  ];
  for (const [index, { name, width }] of cargo.entries())
    for (const [what, bound, path] of bounds) {
      if (width === undefined) {
        notChecked.push({
          what: `whether ${name} is wider than ${what}`,
          missing: 'its width',
          paths: [`cargo.${index}.width`],
        });
        continue;
      }
      const wide = inInches(`${name} width`, width);
      const fits = decide(wide, '<=', bound);
      decisions.push(fits);
      if (!fits.holds)
        attention.push({
          ...note('PieceTooWide', `${name} is wider than ${what}`, [wide, bound]),
          paths: [`cargo.${index}.width`, path],
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
      const side = sideBySide(one, other);
      decisions.push(...side.decisions);
      if (side.clear === true) continue;
      if (side.clear === undefined)
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
  const [deck, wide] = [offDeck(spec, weighed), tooWide(spec)];
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
    attention: [...deck.attention, ...wide.attention, ...pairs.attention],
    notChecked: [...deck.notChecked, ...wide.notChecked, ...pairs.notChecked],
    decisions: [...deck.decisions, ...wide.decisions, ...pairs.decisions],
  };
}
