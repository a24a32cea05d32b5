/** The corners of an outline in inches: x from the left, y from the bottom, outer contour first. */
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

const of = (length: AnyLength): number => plain(inInches('dimension', length));
const share = (slope: Known<'ratio'>): number => plain(asDerived('slope', slope));

const rectangle = (x: number, y: number, width: number, height: number, radius = 0): readonly Corner[] => [
  { x, y, radius },
  { x: x + width, y, radius },
  { x: x + width, y: y + height, radius },
  { x, y: y + height, radius },
];

/** The upper half of a flanged shape mirrored down; a beam mirrored to the left as well. */
function flanged(outline: Extract<Outline, { readonly flangeWidth: AnyLength; readonly web: AnyLength }>): Contours {
  const [d, b, web, flange, root] = [
    of(outline.depth),
    of(outline.flangeWidth),
    of(outline.web),
    of(outline.flange),
    of(outline.rootRadius),
  ];
  const channel = outline.kind.endsWith('channel');
  const overhang = channel ? b - web : (b - web) / 2;
  const rise = 'slope' in outline ? share(outline.slope) * overhang : 0;
  const toe = 'toeRadius' in outline ? of(outline.toeRadius) : 0;
  const [tip, thick] = [flange - rise / 2, flange + rise / 2];
  const face = channel ? web : (b + web) / 2;
  const rightTop: readonly Corner[] = [
    { x: b, y: d },
    { x: b, y: d - tip, radius: toe },
    { x: face, y: d - thick, radius: root },
  ];
  const mirrored = (corners: readonly Corner[], x: (x: number) => number, y: (y: number) => number): readonly Corner[] =>
    [...corners].reverse().map((corner) => ({ ...corner, x: x(corner.x), y: y(corner.y) }));
  const rightSide = [...rightTop, ...mirrored(rightTop, (x) => x, (y) => d - y)];
  const contour = channel
    ? [{ x: 0, y: d }, ...rightSide, { x: 0, y: 0 }]
    : [...rightSide, ...mirrored(rightSide, (x) => b - x, (y) => y)];
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

/** The contours of any outline of `members`. */
export function contoursOf(outline: Outline): Contours {
  switch (outline.kind) {
    case 'tapered channel':
    case 'tapered beam':
    case 'parallel beam':
    case 'parallel channel':
      return flanged(outline);
    case 'formed channel': {
      const [d, b, t, r] = [of(outline.depth), of(outline.flangeWidth), of(outline.thickness), of(outline.insideRadius)];
      return {
        width: b,
        height: d,
        contours: [
          [
            { x: 0, y: d, radius: r + t },
            { x: b, y: d },
            { x: b, y: d - t },
            { x: t, y: d - t, radius: r },
            { x: t, y: t, radius: r },
            { x: b, y: t },
            { x: b, y: 0 },
            { x: 0, y: 0, radius: r + t },
          ],
        ],
        sizes: [
          ['depth', d],
          ['flange', b],
          ['web', t],
          ['inside radius', r],
        ],
      };
    }
    case 'rectangular tube': {
      const [h, b, wall] = [of(outline.height), of(outline.width), of(outline.wall)];
      const outside = outline.outsideRadius === 'twice the wall' ? 2 * wall : of(outline.outsideRadius);
      return {
        width: b,
        height: h,
        contours: [
          rectangle(0, 0, b, h, outside),
          rectangle(wall, wall, b - 2 * wall, h - 2 * wall, Math.max(0, outside - wall)),
        ],
        sizes: [
          ['height', h],
          ['width', b],
          ['wall', wall],
          ['outside radius', outside],
        ],
      };
    }
    case 'round tube': {
      const [outside, wall] = [of(outline.outside), of(outline.wall)];
      return {
        width: outside,
        height: outside,
        contours: [
          rectangle(0, 0, outside, outside, outside / 2),
          rectangle(wall, wall, outside - 2 * wall, outside - 2 * wall, outside / 2 - wall),
        ],
        sizes: [
          ['outside', outside],
          ['wall', wall],
        ],
      };
    }
    case 'angle': {
      const [up, across, t] = [of(outline.uprightLeg), of(outline.flatLeg), of(outline.thickness)];
      return {
        width: across,
        height: up,
        contours: [
          [
            { x: 0, y: up },
            { x: t, y: up },
            { x: t, y: t },
            { x: across, y: t },
            { x: across, y: 0 },
            { x: 0, y: 0 },
          ],
        ],
        sizes: [
          ['upright leg', up],
          ['flat leg', across],
          ['thickness', t],
        ],
      };
    }
    case 'flat': {
      const [h, b] = [of(outline.height), of(outline.width)];
      return {
        width: b,
        height: h,
        contours: [rectangle(0, 0, b, h)],
        sizes: [
          ['height', h],
          ['width', b],
        ],
      };
    }
  }
}
