/** The names of the limits: at the ends of their lines, or in a list below with a letter at each in a narrow picture. */
import { label, line } from '../drawing/element.js';
import { paint } from '../drawing/look.js';
import { stacked } from '../drawing/stack.js';
import { cut } from '../drawing/words.js';
import type { Chart } from './chart.js';
import type { Curve } from './curves.js';

/** The last share at which a line is inside the picture. */
const lastInside = ({ payload }: Curve, { grid, top, bottom }: Chart): number | undefined =>
  [...grid].reverse().find((share) => payload(share) <= top && payload(share) >= bottom);

/** Labels and how far down they reach. */
export function endLabels(
  curves: readonly Curve[],
  space: Chart,
): { readonly parts: readonly string[]; readonly height: number } {
  const { x, y, right, width, narrow, below } = space;
  const ends = curves.flatMap((curve) => {
    const share = lastInside(curve, space);
    return share === undefined ? [] : [{ name: curve.name, x: x(share), y: y(curve.payload(share)) }];
  });
  const same = new Map<string, { readonly names: string[]; readonly x: number; readonly y: number }>();
  for (const { name, ...end } of ends) {
    const key = `${Math.round(end.x)} ${Math.round(end.y)}`;
    const found = same.get(key);
    if (found === undefined) same.set(key, { names: [name], ...end });
    else found.names.push(name);
  }
  const groups = [...same.values()];
  const placed = stacked(
    groups.map((group) => ({ ...group, at: group.y, width: 14 })),
    8,
    narrow ? below : below + 30,
    1,
  );
  if (narrow) {
    const parts = placed.flatMap(({ label: { names }, at }, i) => {
      const letter = String.fromCharCode(97 + (i % 26));
      return [
        label(right + 4, at + 4, letter, { size: 11, bold: true }),
        label(2, below + 56 + i * 16, cut(`${letter}  ${names.join(', ')}`, width - 4)),
      ];
    });
    return { parts, height: below + 60 + groups.length * 16 };
  }
  const parts = placed.flatMap(({ label: group, at }) => [
    line(group.x, group.y, right + 8, at, { stroke: paint('hairline'), 'stroke-width': '0.75' }),
    label(right + 12, at + 4, cut(group.names.join(', '), width - right - 14, 11), { size: 11 }),
  ]);
  return { parts, height: Math.max(0, ...placed.map(({ at }) => at + 10)) };
}
