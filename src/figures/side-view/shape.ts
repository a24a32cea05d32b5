/** The trailer itself: ground, coupler, frame, deck, wheels, cargo as boxes. All to one scale. */
import { box, element, line, points } from '../drawing/element.js';
import { ink, paint } from '../drawing/look.js';
import type { Piece, Scene } from './scene.js';

/** Where things are on the paper. */
export interface Paper {
  /** Pixels of an inch. */
  readonly scale: number;
  /** A place behind the coupler. */
  readonly x: (place: number) => number;
  /** The ground. */
  readonly ground: number;
  /** Top of the deck. */
  readonly deck: number;
  /** Top of the boxes: how high a piece is nobody says. */
  readonly boxes: number;
}

/** A quartered circle: the mark of a balance point. */
export const balanceMark = (x: number, y: number): string =>
  element('circle', { cx: x, cy: y, r: 5, fill: paint('paper'), stroke: ink, 'stroke-width': 1 }) +
  element('path', { d: `M${x.toFixed(1)} ${y.toFixed(1)}v-5a5 5 0 0 1 5 5zv5a5 5 0 0 1 -5 -5z`, fill: ink });

/** The outline of a piece: closed below and at the sides, broken above, because its height is not given. A page that lets it be dragged reads which piece it is, and the pixels of an inch. */
function boxOf({ front, length }: Piece, index: number, { x, deck, boxes, scale }: Paper): string {
  if (front === undefined || length === undefined) return '';
  const [left, right] = [x(front), x(front + length)];
  return element(
    'g',
    { 'data-piece': String(index), 'data-scale': scale.toFixed(2) },
    box(left, boxes, right - left, deck - boxes, { fill: paint('room'), 'fill-opacity': '0.6' }),
    element('path', {
      d: `M${left.toFixed(1)} ${boxes.toFixed(1)}V${deck.toFixed(1)}H${right.toFixed(1)}V${boxes.toFixed(1)}`,
      fill: 'none',
      stroke: ink,
      'stroke-width': '1.5',
    }),
    line(left, boxes, right, boxes, { stroke: ink, 'stroke-width': 1, 'stroke-dasharray': '4 4' }),
  );
}

/** Frame from the coupler to the end of the deck; a gooseneck comes down from above the deck. */
function frame({ deck, gooseneck, wheels }: Scene, { x, deck: top, scale }: Paper): string {
  const depth = Math.max(4, 8 * scale);
  const rear = deck?.rear ?? Math.max(0, ...wheels.map(({ at }) => at + 30));
  const front = deck?.front ?? 0;
  const steel = { stroke: paint('steel'), 'stroke-width': depth * 0.8, fill: 'none' };
  const under = top + 3 + depth / 2;
  const neck = gooseneck
    ? element('path', {
        d: `M${x(0).toFixed(1)} ${(top - 20 * scale).toFixed(1)}V${(top - 44 * scale).toFixed(1)}H${x(front * 0.7).toFixed(1)}L${x(front).toFixed(1)} ${under.toFixed(1)}`,
        ...steel,
      })
    : line(x(0), under, x(front), under, steel);
  const coupler = gooseneck
    ? ''
    : element('path', {
        d: `M${(x(0) - 5).toFixed(1)} ${(under + 4).toFixed(1)}a5 5 0 0 1 10 0v-4h-10z`,
        fill: paint('steel'),
      });
  return (
    neck +
    coupler +
    box(x(front), top + 3, x(rear) - x(front), depth, { fill: paint('steel') }) +
    (deck === undefined ? '' : box(x(front), top, x(rear) - x(front), 3, { fill: paint('timber') }))
  );
}

/** Everything that tilts with the frame. */
export const tilting = (scene: Scene, paper: Paper): string =>
  scene.pieces.map((piece, i) => boxOf(piece, i, paper)).join('') + frame(scene, paper);

/** What stays on the ground. */
export function standing({ wheels }: Scene, { x, ground, scale }: Paper, width: number): string {
  return (
    wheels
      .map(({ at, radius }) => {
        const r = radius * scale;
        return (
          element('circle', { cx: x(at), cy: ground - r, r, fill: paint('paper'), stroke: ink, 'stroke-width': 2 }) +
          element('circle', { cx: x(at), cy: ground - r, r: r * 0.5, fill: 'none', stroke: paint('hairline') }) +
          element('polygon', {
            points: points([
              [x(at) - 2, ground - r],
              [x(at), ground - r - 2],
              [x(at) + 2, ground - r],
              [x(at), ground - r + 2],
            ]),
            fill: ink,
          })
        );
      })
      .join('') + line(0, ground, width, ground, { stroke: ink, 'stroke-width': 1 })
  );
}
