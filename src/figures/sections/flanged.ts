/** The corners of rolled channels and beams. */
import type { Outline } from '../../members/index.js';
import { type AnyLength, asDerived, inInches, type Known } from '../../trace/index.js';
import { plain } from '../drawing/numbers.js';
import type { Corner } from './rounded-path.js';

export interface Contours {
  readonly width: number;
  readonly height: number;
  readonly contours: readonly (readonly Corner[])[];
  /** Dimensions in words for the text under it. */
  readonly sizes: readonly (readonly [name: string, inches: number])[];
}

/** A dimension as a number of inches. */
export const inchesOf = (length: AnyLength): number => plain(inInches('dimension', length));
const share = (slope: Known<'ratio'>): number => plain(asDerived('slope', slope));

/** The upper half of a flanged shape mirrored down; a beam mirrored to the left as well. */
export function flanged(
  outline: Extract<Outline, { readonly flangeWidth: AnyLength; readonly web: AnyLength }>,
): Contours {
  const [d, b, web, flange, root] = [
    inchesOf(outline.depth),
    inchesOf(outline.flangeWidth),
    inchesOf(outline.web),
    inchesOf(outline.flange),
    inchesOf(outline.rootRadius),
  ];
  const channel = outline.kind.endsWith('channel');
  const overhang = channel ? b - web : (b - web) / 2;
  const rise = 'slope' in outline ? share(outline.slope) * overhang : 0;
  const toe = 'toeRadius' in outline ? inchesOf(outline.toeRadius) : 0;
  const [tip, thick] = [flange - rise / 2, flange + rise / 2];
  const face = channel ? web : (b + web) / 2;
  const rightTop: readonly Corner[] = [
    { x: b, y: d },
    { x: b, y: d - tip, radius: toe },
    { x: face, y: d - thick, radius: root },
  ];
  const mirrored = (
    corners: readonly Corner[],
    x: (x: number) => number,
    y: (y: number) => number,
  ): readonly Corner[] => [...corners].reverse().map((corner) => ({ ...corner, x: x(corner.x), y: y(corner.y) }));
  const rightSide = [
    ...rightTop,
    ...mirrored(
      rightTop,
      (x) => x,
      (y) => d - y,
    ),
  ];
  const contour = channel
    ? [{ x: 0, y: d }, ...rightSide, { x: 0, y: 0 }]
    : [
        ...rightSide,
        ...mirrored(
          rightSide,
          (x) => b - x,
          (y) => y,
        ),
      ];
  return {
    width: b,
    height: d,
    contours: [contour],
    sizes: [
      ['depth', d],
      ['flange', b],
      ['web', web],
      ['flange thickness', flange],
      ['fillet', root],
    ],
  };
}
