/** Whether each piece of cargo is on the deck and clear of its neighbours. */
import { type Note, note } from '../../ratings/index.js';
import type { DecodedSpec } from '../../spec/index.js';
import { type Decision, decide, inInches, minus, over, plus } from '../../trace/index.js';
import { collected } from '../../units/internal.js';
import { type Covered, coveredBy, mostPieces, type OnDeck, pathsOf } from './cargo-footprint.js';
import { tooWide } from './cargo-width.js';
import type { OpenQuestion } from './open-questions.js';
import { wantingOf } from './wanting-keys.js';
import type { Weighed } from './weights.js';

/** The ends of each piece, or at least its balance point, are between the ends of the deck; asked whether it has a window or not. */
function offDeck({ trailer: { deck }, cargo = [] }: DecodedSpec, { cargo: placed }: Weighed): OnDeck {
  if (deck === undefined) return { attention: [], notChecked: [], decisions: [] };
  const [from, to] = [inInches('deck front end', deck.front), inInches('deck rear end', deck.rear)];
  const attention: Note[] = [];
  const notChecked: OpenQuestion[] = [];
  const decisions: Decision[] = [];
  for (const [index, piece] of cargo.entries()) {
    const { name, length, balancePoint } = piece;
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
        id: 'on-deck',
        what: `whether ${name} stands on the deck`,
        missing: [length === undefined && 'its length', balancePoint === undefined && 'its balance point']
          .filter((each) => each !== false)
          .join(' and '),
        paths: wantingOf(`cargo.${index}`, piece, 'length', 'balancePoint'),
        piece: index,
      });
  }
  return { attention, notChecked, decisions };
}

/** Whether two pieces are clear of each other across the deck: by their widths where known, never when both are at the same offset. */
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

/** Two pieces that cover one place of the deck; side by side they may, where their places across the deck differ. */
function overlaps(pieces: readonly Covered[]): OnDeck {
  const attention: Note[] = [];
  const notChecked: OpenQuestion[] = [];
  const decisions: Decision[] = [];
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
          id: 'side-by-side',
          what: `whether ${one.name} and ${other.name} stand clear of each other side by side`,
          missing: 'their widths, by tape',
          paths: collected([one, other], (each) => wantingOf(`cargo.${each.index}`, each, 'width')),
          piece: one.index,
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
  const covered = (spec.cargo ?? []).map(coveredBy).filter((piece) => piece !== undefined);
  const pairs: OnDeck =
    covered.length > mostPieces
      ? {
          attention: [],
          notChecked: [
            {
              id: 'pieces-apart',
              what: 'whether pieces stand on one another',
              missing: `at most ${mostPieces} pieces`,
              paths: [],
            },
          ],
          decisions: [],
        }
      : overlaps(covered);
  return {
    attention: [...deck.attention, ...wide.attention, ...pairs.attention],
    notChecked: [...deck.notChecked, ...wide.notChecked, ...pairs.notChecked],
    decisions: [...deck.decisions, ...wide.decisions, ...pairs.decisions],
  };
}
