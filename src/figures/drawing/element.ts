/** SVG elements as text. Coordinates are rounded to a tenth, so that the same figure is the same text everywhere. */
import { escaped } from './escape.js';

export type Attributes = Readonly<Record<string, string | number | undefined>>;

/** Nothing is drawn further out than this; it keeps a figure of absurd size finite. */
const furthest = 100_000;

/** A coordinate to a tenth; never NaN, never -0. */
export function tenth(coordinate: number): string {
  const held = Math.min(furthest, Math.max(-furthest, Number.isNaN(coordinate) ? 0 : coordinate));
  return String(Math.round(held * 10) / 10 + 0);
}

const attribute = ([name, value]: readonly [string, string | number | undefined]): string =>
  value === undefined ? '' : ` ${name}="${typeof value === 'number' ? tenth(value) : escaped(value)}"`;

/** `<name a="1">children</name>`; children are elements already written. */
export function element(name: string, attributes: Attributes, ...children: readonly string[]): string {
  const written = Object.entries(attributes).map(attribute).join('');
  return children.length === 0 ? `<${name}${written}/>` : `<${name}${written}>${children.join('')}</${name}>`;
}

export interface LabelStyle {
  /** The anchor of the text: its start by default. */
  readonly anchor?: 'start' | 'middle' | 'end';
  /** In units of the viewBox; 12 by default. */
  readonly size?: number;
  readonly bold?: boolean;
  readonly fill?: string;
}

/** A line of text at a place. */
export const label = (x: number, y: number, text: string, style: LabelStyle = {}): string =>
  element(
    'text',
    {
      x,
      y,
      'text-anchor': style.anchor === 'start' ? undefined : style.anchor,
      'font-size': style.size === 12 ? undefined : style.size,
      'font-weight': style.bold === true ? '600' : undefined,
      fill: style.fill,
    },
    escaped(text),
  );

/** A straight line; a hairline by default. */
export const line = (x1: number, y1: number, x2: number, y2: number, attributes: Attributes): string =>
  element('line', { x1, y1, x2, y2, ...attributes });

/** A rectangle; a negative width or height is none. */
export const box = (x: number, y: number, width: number, height: number, attributes: Attributes): string =>
  element('rect', { x, y, width: Math.max(0, width), height: Math.max(0, height), ...attributes });

/** Points as an attribute of a polygon. */
export const points = (list: readonly (readonly [number, number])[]): string =>
  list.map(([x, y]) => `${tenth(x)},${tenth(y)}`).join(' ');

/** A vertical arrow from `tail` to `tip`, pointing at the tip. */
export function arrow(x: number, tail: number, tip: number, paint: string, width = 2): string {
  const back = tip > tail ? -7 : 7;
  const neck = Math.abs(tip - tail) < 7 ? tail : tip + back;
  return (
    line(x, tail, x, neck, { stroke: paint, 'stroke-width': width }) +
    element('polygon', {
      points: points([
        [x, tip],
        [x - 4, tip + back],
        [x + 4, tip + back],
      ]),
      fill: paint,
    })
  );
}
