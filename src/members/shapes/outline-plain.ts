/** Bent and plain outlines in parts: formed channel, angle, flat. */
import { inInches, minus, notNegative, over, plus, result, times } from '../../trace/index.js';
import type { Taken } from './decomposition.js';
import { aSize, fits } from './fits.js';
import type { Angle, Flat, FormedChannel } from './outline.js';
import { type Part, quarterRing, rectangle } from './parts.js';

/**
 * Straight web, two straight flanges, two quarter rings; gross, not the effective width of a thin section.
 * `compose` adds them up: `Ix = sum of (own + a d^2)`.
 */
export function takeFormed(outline: FormedChannel): Taken {
  const depth = inInches('depth', outline.depth);
  const width = inInches('flange width', outline.flangeWidth);
  const thickness = inInches('thickness', outline.thickness);
  const inside = inInches('inside bend radius', outline.insideRadius);
  const outside = result('outside bend radius', plus(inside, thickness));
  const straightWeb = result('straight web', minus(depth, times(2, outside)));
  const straightFlange = result('straight flange', minus(width, outside));
  const parts = (): readonly Part[] => {
    const bend = quarterRing(inside, outside);
    return [
      rectangle('straight web', thickness, straightWeb, { count: 1, x: over(thickness, 2) }),
      rectangle('straight flange', straightFlange, thickness, {
        count: 2,
        x: plus(outside, over(straightFlange, 2)),
        y: over(minus(depth, thickness), 2),
      }),
      {
        count: 2,
        area: bend.area,
        x: minus(outside, bend.fromCentre),
        y: plus(over(straightWeb, 2), bend.fromCentre),
        Ix: bend.own,
        Iy: bend.own,
      },
    ];
  };
  return {
    guards: [
      ...aSize('depth', depth),
      ...aSize('thickness', thickness),
      notNegative('inside bend radius', inside),
      fits('flange width', width, '>=', outside, 'at least the outside bend radius'),
      fits('depth', depth, '>=', times(2, outside), 'at least twice the outside bend radius'),
    ],
    parts,
    width,
    height: depth,
    across: 'from the edge',
    up: 'symmetric',
  };
}

/** Two rectangles: the upright leg whole, the flat leg from there on. */
export function takeAngle(outline: Angle): Taken {
  const upright = inInches('upright leg', outline.uprightLeg);
  const flat = inInches('flat leg', outline.flatLeg);
  const thickness = inInches('thickness', outline.thickness);
  const rest = result('flat leg beside the upright', minus(flat, thickness));
  const parts = (): readonly Part[] => [
    rectangle('upright leg', thickness, upright, { count: 1, x: over(thickness, 2), y: over(upright, 2) }),
    rectangle('flat leg', rest, thickness, {
      count: 1,
      x: plus(thickness, over(rest, 2)),
      y: over(thickness, 2),
    }),
  ];
  return {
    guards: [
      ...aSize('thickness', thickness),
      fits('upright leg', upright, '>', thickness, 'longer than the thickness'),
      fits('flat leg', flat, '>', thickness, 'longer than the thickness'),
    ],
    parts,
    width: flat,
    height: upright,
    across: 'from the edge',
    up: 'from the edge',
  };
}

/** One rectangle. */
export function takeFlat(outline: Flat): Taken {
  const height = inInches('height', outline.height);
  const width = inInches('width', outline.width);
  return {
    guards: [...aSize('height', height), ...aSize('width', width)],
    parts: () => [rectangle('flat', width, height, { count: 1 })],
    width,
    height,
    across: 'symmetric',
    up: 'symmetric',
  };
}
