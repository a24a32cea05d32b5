/** Moving a machine along the deck: by its box in the side view, or by a slider that keys and screen readers use. */
import type { Assessment } from '../../src/assessment/index.js';
import { inInches } from '../../src/trace/index.js';
import {
  convert,
  inch,
  type Quantity,
  roundCapacityDown,
  roundLoadUp,
  showBrief,
  showFeetInches,
} from '../../src/units/index.js';
import { byId, fill, h } from './dom.js';

/** An end of the window of a piece, for its front face: rounded into the window. */
export interface End {
  readonly at: number;
  readonly setBy: string;
}

export interface Piece {
  readonly index: number;
  readonly name: string;
  /** Front face, inches behind the coupler. */
  readonly front: number;
  readonly least: number;
  readonly most: number;
  readonly ends: readonly End[];
}

const sixteenth = inch('0.0625');
const inchesOf = (length: Quantity<'in'>): number => length.value.toNumber();

/** The ends of the window of a piece, where it has one. */
function endsOf({ placement }: Assessment, index: number): readonly End[] {
  const window = placement.pieces.find((piece) => piece.index === index)?.window;
  if (window === undefined || window.empty) return [];
  const words = (end: typeof window.lower): string => [...new Set(end.setBy.map((limit) => limit.name))].join(' and ');
  return [
    { at: inchesOf(roundLoadUp(window.lower.machineFront.value, sixteenth)), setBy: words(window.lower) },
    { at: inchesOf(roundCapacityDown(window.upper.machineFront.value, sixteenth)), setBy: words(window.upper) },
  ];
}

/** The pieces that have a front face, each with how far it may be moved on the deck. */
export function piecesOf(assessment: Assessment): readonly Piece[] {
  const { trailer, cargo = [] } = assessment.spec;
  const { deck } = trailer;
  if (deck === undefined) return [];
  const [from, to] = [inchesOf(inInches('deck', deck.front).value), inchesOf(inInches('deck', deck.rear).value)];
  return cargo.flatMap(({ name, front, length }, index) => {
    if (front === undefined) return [];
    const own = length === undefined ? 0 : inchesOf(inInches('length', length).value);
    const at = inchesOf(inInches('front', front).value);
    return [
      {
        index,
        name,
        front: at,
        least: Math.min(at, from),
        most: Math.max(at, to - own),
        ends: endsOf(assessment, index),
      },
    ];
  });
}

/** How near an end of its window a piece snaps to it, inches. */
const near = 2;

/** The place, or the end of the window it is near. */
export function snapped(
  at: number,
  { least, most, ends }: Piece,
): { readonly at: number; readonly end: End | undefined } {
  const held = Math.max(least, Math.min(most, at));
  const end = ends.find((each) => Math.abs(each.at - held) <= near);
  return end === undefined ? { at: Math.round(held * 4) / 4, end } : { at: end.at, end };
}

const placeText = (at: number, units: 'us' | 'metric'): string =>
  units === 'metric' ? showBrief(convert(inch(at), 'm'), 3) : showFeetInches(inch(at));

/** What a change of place asks of the page. */
export type Move = (index: number, inches: number, end: End | undefined) => void;

/** One slider a piece: an inch a key, a foot with shift. */
export function buildSliders(pieces: readonly Piece[], move: Move): void {
  fill(
    byId('sliders'),
    ...pieces.map(({ index, name, least, most }) => {
      const id = `slide-${index}`;
      const made = h('input', { type: 'range', id, min: Math.floor(least), max: Math.ceil(most), step: 'any' });
      made.addEventListener('input', () => move(index, Number(made.value), undefined));
      made.addEventListener('keydown', (event) => {
        const way = { ArrowLeft: -1, ArrowDown: -1, ArrowRight: 1, ArrowUp: 1 }[event.key];
        if (way === undefined) return;
        event.preventDefault();
        move(index, Number(made.value) + way * (event.shiftKey ? 12 : 1), undefined);
      });
      return h(
        'p',
        { class: 'slider' },
        h('label', { for: id }, `front of ${name}, behind the coupler`),
        made,
        h('output', { id: `${id}-at`, for: id }),
      );
    }),
  );
}

/** Brings the sliders to where the pieces are. */
export function refreshSliders(pieces: readonly Piece[], units: 'us' | 'metric'): void {
  for (const { index, front, least, most } of pieces) {
    const slider = document.getElementById(`slide-${index}`);
    if (!(slider instanceof HTMLInputElement)) continue;
    slider.min = String(Math.floor(least));
    slider.max = String(Math.ceil(most));
    slider.value = String(front);
    const text = placeText(front, units);
    slider.setAttribute('aria-valuetext', text);
    byId(`slide-${index}-at`).textContent = text;
  }
}

/** Lets the boxes of the side view be dragged. The picture is drawn anew while it is dragged, so the frame around it keeps the pointer. */
export function letDrag(frame: HTMLElement, pieces: () => readonly Piece[], move: Move, done: () => void): void {
  let held: { piece: Piece; from: number; perInch: number; start: number } | undefined;
  frame.addEventListener('pointerdown', (event) => {
    const box = event.target instanceof Element ? event.target.closest<SVGGElement>('[data-piece]') : null;
    const picture = box?.ownerSVGElement;
    if (box === null || picture === null || picture === undefined) return;
    const piece = pieces().find(({ index }) => index === Number(box.dataset['piece']));
    if (piece === undefined) return;
    const shown = picture.getBoundingClientRect().width / picture.viewBox.baseVal.width;
    held = { piece, from: event.clientX, perInch: Number(box.dataset['scale']) * shown, start: piece.front };
    frame.setPointerCapture(event.pointerId);
    event.preventDefault();
  });
  frame.addEventListener('pointermove', (event) => {
    if (held === undefined) return;
    const { at, end } = snapped(held.start + (event.clientX - held.from) / held.perInch, held.piece);
    move(held.piece.index, at, end);
  });
  for (const ending of ['pointerup', 'pointercancel'] as const)
    frame.addEventListener(ending, () => {
      if (held !== undefined) done();
      held = undefined;
    });
}
