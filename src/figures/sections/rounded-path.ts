/** A polygon with rounded corners as path data. */
import { tenth } from '../drawing/element.js';

/** A corner; a radius of zero is sharp. */
export interface Corner {
  readonly x: number;
  readonly y: number;
  readonly radius?: number;
}

const apart = (a: Corner, b: Corner): number => Math.hypot(b.x - a.x, b.y - a.y);

/** The point at a distance from one corner toward another. */
function toward(from: Corner, to: Corner, distance: number): Corner {
  const whole = apart(from, to);
  const part = whole === 0 ? 0 : Math.min(0.5, distance / whole);
  return { x: from.x + (to.x - from.x) * part, y: from.y + (to.y - from.y) * part };
}

/** Half the angle between the two sides that meet in a corner. */
function halfAngle(before: Corner, corner: Corner, after: Corner): number {
  const [a, b] = [
    [before.x - corner.x, before.y - corner.y],
    [after.x - corner.x, after.y - corner.y],
  ] as const;
  const size = Math.hypot(...a) * Math.hypot(...b);
  const cosine = size === 0 ? -1 : (a[0] * b[0] + a[1] * b[1]) / size;
  return Math.acos(Math.max(-1, Math.min(1, cosine))) / 2;
}

const turnsRight = (before: Corner, corner: Corner, after: Corner): boolean =>
  (corner.x - before.x) * (after.y - corner.y) - (corner.y - before.y) * (after.x - corner.x) > 0;

/** Closed path data; arcs touch both sides of each rounded corner. Coordinates as they come: scale first. */
export function roundedPath(corners: readonly Corner[]): string {
  const parts = corners.map((corner, i) => {
    const before = corners.at(i - 1) ?? corner;
    const after = corners[(i + 1) % corners.length] ?? corner;
    const { radius = 0 } = corner;
    if (radius <= 0) return `L${tenth(corner.x)} ${tenth(corner.y)}`;
    const leg = radius / Math.tan(halfAngle(before, corner, after));
    const [start, end] = [toward(corner, before, leg), toward(corner, after, leg)];
    const sweep = turnsRight(before, corner, after) ? 1 : 0;
    return `L${tenth(start.x)} ${tenth(start.y)}A${tenth(radius)} ${tenth(radius)} 0 0 ${sweep} ${tenth(end.x)} ${tenth(end.y)}`;
  });
  return `${parts.join('').replace(/^L/, 'M')}Z`;
}
