/** Shear and moment between the stations of a beam as path data: straight lines and parabolas, which they are. */
import type { BeamStation } from '../../members/index.js';
import { tenth } from '../drawing/element.js';
import { plain } from '../drawing/numbers.js';

type Scale = (value: number) => number;

/** Shear: a straight line between stations, a step at each. Closed along the axis. */
export function shearPath(stations: readonly BeamStation[], x: Scale, y: Scale): string {
  const [first, last] = [stations[0], stations.at(-1)];
  if (first === undefined || last === undefined) return '';
  const points = stations.flatMap(({ at, shearLeft, shearRight }) => [
    `L${tenth(x(plain(at)))} ${tenth(y(plain(shearLeft)))}`,
    `L${tenth(x(plain(at)))} ${tenth(y(plain(shearRight)))}`,
  ]);
  return `M${tenth(x(plain(first.at)))} ${tenth(y(0))}${points.join('')}L${tenth(x(plain(last.at)))} ${tenth(y(0))}Z`;
}

/** Moment: a parabola between stations, its control point where the end tangents meet: halfway, `M + V h / 2`. */
export function momentPath(stations: readonly BeamStation[], x: Scale, y: Scale): string {
  const [first, last] = [stations[0], stations.at(-1)];
  if (first === undefined || last === undefined) return '';
  const curves = stations.slice(1).map((to, i) => {
    const from = stations[i] ?? to;
    const half = (plain(to.at) - plain(from.at)) / 2;
    const control = plain(from.moment) + plain(from.shearRight) * half;
    return `Q${tenth(x(plain(from.at) + half))} ${tenth(y(control))} ${tenth(x(plain(to.at)))} ${tenth(y(plain(to.moment)))}`;
  });
  return `M${tenth(x(plain(first.at)))} ${tenth(y(0))}L${tenth(x(plain(first.at)))} ${tenth(y(plain(first.moment)))}${curves.join('')}L${tenth(x(plain(last.at)))} ${tenth(y(0))}Z`;
}
