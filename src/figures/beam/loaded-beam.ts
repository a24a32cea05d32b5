/** The beam with its loads above and its reactions below, arrows to one scale. */
import type { Load } from '../../members/index.js';
import { asDerived, converted, type Derived, inInches } from '../../trace/index.js';
import { arrow, box, element, label, line, points } from '../drawing/element.js';
import { ink, paint } from '../drawing/look.js';
import { plain } from '../drawing/numbers.js';
import { stacked } from '../drawing/stack.js';
import { cut, textWidth } from '../drawing/words.js';

interface Shown {
  readonly name: string;
  readonly text: string;
  readonly from: number;
  readonly to: number;
  readonly total: number;
  readonly point: boolean;
}

/** A load in numbers, with its own words. */
export function shown(load: Load, forceText: (force: Derived<'lbf'>) => string): Shown {
  if (load.kind === 'point') {
    const force = converted(load.name, asDerived(load.name, load.force), 'lbf');
    const at = plain(inInches('place', load.at));
    return { name: load.name, text: forceText(force), from: at, to: at, total: plain(force), point: true };
  }
  const perInch = converted(load.name, asDerived(load.name, load.perLength), 'lbf/in');
  const perFoot = converted(load.name, perInch, 'lbf/ft');
  const [from, to] = [plain(inInches('start', load.from)), plain(inInches('end', load.to))];
  return {
    name: load.name,
    text: `${plain(perFoot).toFixed(1).replace(/\.0$/, '')} lbf/ft`,
    from,
    to,
    total: plain(perInch) * (to - from),
    point: false,
  };
}

/** Height of the longest arrow. */
const longest = 44;

interface Space {
  readonly x: (place: number) => number;
  readonly width: number;
  readonly end: number;
}

const spread = ({ from, to }: Shown, { x }: Space, base: number): string => {
  const [left, right] = [x(from), x(to)];
  const count = Math.max(1, Math.round((right - left) / 26));
  const arrows = Array.from({ length: count + 1 }, (_, i) =>
    arrow(left + ((right - left) * i) / count, base - 18, base, paint('load'), 1),
  );
  return line(left, base - 18, right, base - 18, { stroke: paint('load'), 'stroke-width': 1 }) + arrows.join('');
};

const support = (at: number, y: number): string =>
  element('polygon', {
    points: points([
      [at, y],
      [at - 7, y + 12],
      [at + 7, y + 12],
    ]),
    fill: 'none',
    stroke: ink,
    'stroke-width': '1.5',
  });

/** Draws it from the top down; gives back how high it came out. */
export function loadedBeam(
  loads: readonly Shown[],
  reactions: readonly { readonly at: number; readonly force: number; readonly text: string }[],
  space: Space,
): { readonly parts: readonly string[]; readonly height: number } {
  const { x, width, end } = space;
  const text = (load: Shown): string => cut(`${load.name} ${load.text}`, width - 4);
  const labels = stacked(
    loads.filter(({ point }) => point).map((load) => ({ load, at: x(load.from), width: textWidth(text(load)) })),
    2,
    width - 2,
  );
  const spreads = loads.filter(({ point }) => !point);
  const rows = labels.reduce((sum, { row }) => Math.max(sum, row + 1), 0) + spreads.length;
  const base = rows * 16 + longest + 12;
  const most = Math.max(
    1,
    ...loads.map(({ total }) => Math.abs(total)),
    ...reactions.map(({ force }) => Math.abs(force)),
  );
  const sized = (force: number): number => Math.max(8, (Math.abs(force) / most) * longest);
  const above = [
    ...spreads.map((load, i) => label(2, i * 16 + 12, text(load))),
    ...labels.map(({ label: { load }, at, row }) => {
      const y = (rows - row) * 16 - 4;
      return (
        label(at, y, text(load), { anchor: 'middle' }) +
        line(at, y + 4, x(load.from), base - sized(load.total), { stroke: paint('hairline'), 'stroke-width': 1 })
      );
    }),
  ];
  const arrows = loads.map((load) =>
    load.point ? arrow(x(load.from), base - sized(load.total), base, paint('load')) : spread(load, space, base),
  );
  const held = stacked(
    reactions.map(({ at, text, force }) => ({ at: x(at), width: textWidth(text), text, force })),
    0,
    width,
  );
  const under = held.flatMap(({ label: { at, text, force }, at: middle, row }) => {
    const length = sized(force);
    const up = force >= 0;
    return [
      support(at, base + 6),
      arrow(at, up ? base + 24 + longest : base + 24, up ? base + 24 + longest - length : base + 24 + length, ink),
      label(middle, base + 24 + longest + 16 + row * 16, text, { anchor: 'middle', bold: true }),
    ];
  });
  const lower = Math.max(0, ...held.map(({ row }) => row)) * 16;
  return {
    parts: [...above, ...arrows, box(x(0), base, x(end) - x(0), 6, { fill: paint('steel') }), ...under],
    height: base + 24 + longest + 24 + lower,
  };
}
