/** The corners of an outline in inches: x from the left, y from the bottom, outer contour first. */
import type { Outline } from '../../members/index.js';
import { type Contours, flanged, inchesOf } from './flanged.js';
import type { Corner } from './rounded-path.js';

const rectangle = (x: number, y: number, width: number, height: number, radius = 0): readonly Corner[] => [
  { x, y, radius },
  { x: x + width, y, radius },
  { x: x + width, y: y + height, radius },
  { x, y: y + height, radius },
];

/** The contours of any outline of `members`. */
export function contoursOf(outline: Outline): Contours {
  switch (outline.kind) {
    case 'tapered channel':
    case 'tapered beam':
    case 'parallel beam':
    case 'parallel channel':
      return flanged(outline);
    case 'formed channel': {
      const [d, b, t, r] = [
        inchesOf(outline.depth),
        inchesOf(outline.flangeWidth),
        inchesOf(outline.thickness),
        inchesOf(outline.insideRadius),
      ];
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
      const [h, b, wall] = [inchesOf(outline.height), inchesOf(outline.width), inchesOf(outline.wall)];
      const outside = outline.outsideRadius === 'twice the wall' ? 2 * wall : inchesOf(outline.outsideRadius);
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
      const [outside, wall] = [inchesOf(outline.outside), inchesOf(outline.wall)];
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
      const [up, across, t] = [inchesOf(outline.uprightLeg), inchesOf(outline.flatLeg), inchesOf(outline.thickness)];
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
      const [h, b] = [inchesOf(outline.height), inchesOf(outline.width)];
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
