/** Weights from above, tongue and axles from below: arrows to one scale, their figures in rows. */
import { arrow, label, line } from '../drawing/element.js';
import { ink, paint } from '../drawing/look.js';
import { loadText, plain } from '../drawing/numbers.js';
import type { Setting } from '../drawing/options.js';
import { stacked } from '../drawing/stack.js';
import { cut, textWidth } from '../drawing/words.js';
import { type LoadArrow, lifts } from './loads.js';
import { balanceMark } from './shape.js';

export interface Row {
  readonly arrow: LoadArrow;
  readonly name: string;
  readonly figure: string;
  readonly at: number;
  readonly width: number;
}

/** The colour of a state; a word next to it says the same, so that colour alone carries no meaning. */
const colour = ({ state }: LoadArrow): string => paint(state);

/** A load with the word of its state; one below zero lifts, whatever else it is. */
function named({ name, word, load }: LoadArrow): string {
  if (lifts(load)) return `${name} lifts`;
  return word === undefined ? name : `${name}, ${word}`;
}

/** Name and figure of each load, in rows that do not touch. */
export function labelled(loads: readonly LoadArrow[], x: (place: number) => number, { width, units }: Setting) {
  const rows = loads.map((each): Row => {
    const name = cut(named(each), width * 0.45);
    const figure = loadText(each.load.value, units);
    return {
      arrow: each,
      name,
      figure,
      at: x(each.at),
      width: Math.max(textWidth(name), textWidth(figure, 13) * 1.08),
    };
  });
  const placed = stacked(rows, 2, width - 2);
  return { placed, rows: placed.reduce((most, { row }) => Math.max(most, row + 1), 0) };
}

type Labelled = ReturnType<typeof labelled>;

/** Height of a row of labels: a name and a figure. */
export const rowHeight = 34;

const twoLines = (at: number, y: number, { name, figure, arrow }: Row): string => {
  const fill = arrow.state === 'load' ? undefined : colour(arrow);
  return (
    label(at, y, name, { anchor: 'middle', ...(fill !== undefined && { fill }) }) +
    label(at, y + 15, figure, { anchor: 'middle', bold: true, size: 13, ...(fill !== undefined && { fill }) })
  );
};

/** Weights: labels above, a leader down to the arrow, which ends on the deck; cargo has the mark of its balance point. */
export function weightsDown(
  { placed, rows }: Labelled,
  deck: number,
  pixels: (pounds: number) => number,
): readonly string[] {
  return placed.map(({ label: row, at, row: place }) => {
    const y = (rows - 1 - place) * rowHeight + 12;
    const length = pixels(plain(row.arrow.load));
    const empty = row.arrow.name === 'trailer, empty';
    return (
      twoLines(at, y, row) +
      line(at, y + 19, row.at, deck - length - (empty ? 0 : 12), { stroke: paint('hairline'), 'stroke-width': 1 }) +
      arrow(row.at, deck - length, deck, colour(row.arrow), empty ? 1.5 : 3) +
      (empty ? '' : balanceMark(row.at, deck - length - 6))
    );
  });
}

/** Reactions: arrows up to the ground, all from one line, labels below. One below zero points down and is labelled so. */
export function reactionsUp(
  { placed }: Labelled,
  ground: number,
  room: number,
  pixels: (pounds: number) => number,
): readonly string[] {
  return placed.map(({ label: row, at, row: place }) => {
    const pounds = plain(row.arrow.load);
    const length = pixels(Math.abs(pounds));
    const y = ground + room + 18 + place * rowHeight;
    const body =
      pounds < 0
        ? arrow(row.at, ground + 4, ground + 4 + length, paint('over'), 3)
        : arrow(row.at, ground + 4 + length, ground + 4, colour(row.arrow), 3);
    return (
      body +
      line(row.at, ground + 4 + length, at, y - 12, { stroke: paint('hairline'), 'stroke-width': 1 }) +
      twoLines(at, y, row)
    );
  });
}

/** From the coupler down to the ground, where its arrow is drawn. */
export const plumb = (x: number, from: number, to: number): string =>
  line(x, from, x, to, { stroke: ink, 'stroke-width': 1, 'stroke-dasharray': '2 3' });
