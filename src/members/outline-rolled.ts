/** Rolled outlines in parts: tapered and parallel flanges, channels and beams. */
import {
  asDerived,
  atMost,
  type Derived,
  difference,
  inInches,
  notNegative,
  product,
  quotient,
  sum,
} from '../trace/index.js';
import { number } from './constants.js';
import { type Corner, slopedCorner, squareCorner } from './corners.js';
import { aSize, fits } from './fits.js';
import type { ParallelBeam, ParallelChannel, TaperedBeam, TaperedChannel } from './outline.js';
import { fourth, half, type Part, rectangle, squared, twice, wedge } from './parts.js';
import type { Taken } from './taken.js';

const third = (a: Derived<'in'>): Derived<'in'> => quotient(null, a, number(3));
const isChannel = (kind: string): boolean => kind.endsWith('channel');

/** A corner piece at its place: `x`, `y` are those of the corner; the piece lies toward `xSign`, `ySign` of it. */
function cornerPart(
  name: string,
  corner: Corner,
  radius: Derived<'in'>,
  at: { times: 2 | 4; x: Derived<'in'>; y: Derived<'in'>; hole?: true },
): Part {
  const [up, away] = [product(null, corner.up, radius), product(null, corner.away, radius)];
  const own = corner.own === undefined ? undefined : product(null, corner.own, fourth(radius));
  return {
    times: at.times,
    area: product(`${name} area`, corner.area, squared(radius)),
    ...(at.hole && { hole: at.hole }),
    x: at.hole ? difference(null, at.x, away) : sum(null, [at.x, away]),
    y: at.hole ? sum(null, [at.y, up]) : difference(null, at.y, up),
    ...(own && { Ix: own, Iy: own }),
  };
}

/** Web, flanges, wedges, fillets, toes. A channel is measured from its back, a beam from its middle; both from mid-depth. */
export function takeRolled(outline: TaperedChannel | TaperedBeam | ParallelBeam | ParallelChannel): Taken {
  const tapered = 'slope' in outline ? outline : undefined;
  const channel = isChannel(outline.kind);
  const depth = inInches('depth', outline.depth);
  const width = inInches('flange width', outline.flangeWidth);
  const web = inInches('web', outline.web);
  const flange = inInches('flange', outline.flange);
  const root = inInches('root radius', outline.rootRadius);
  const toe = tapered && inInches('toe radius', tapered.toeRadius);
  const slope = tapered && asDerived('flange slope', tapered.slope);
  let made: Corner | undefined;
  const corner = (): Corner => (made ??= slope === undefined ? squareCorner() : slopedCorner(slope));
  const overhang = channel
    ? difference('flange overhang', width, web)
    : half('flange overhang', difference(null, width, web));
  const rise = slope && product('flange taper', slope, overhang);
  const tip = rise ? difference('flange at the tip', flange, half(null, rise)) : flange;
  const thick = rise ? sum('flange at the root', [flange, half(null, rise)]) : flange;
  const top = half('half the depth', depth);
  const tipFace = difference(null, top, tip);
  const face = channel ? web : half(null, web);
  const edge = channel ? width : half(null, width);
  const times = channel ? 2 : 4;
  const parts = (): readonly Part[] => [
    rectangle('web', web, depth, { times: 1, ...(channel && { x: half(null, web) }) }),
    rectangle('flange', overhang, tip, {
      times,
      x: sum(null, [face, half(null, overhang)]),
      y: difference(null, top, half(null, tip)),
    }),
    ...(rise
      ? [
          wedge('taper', overhang, rise, {
            times,
            x: sum(null, [face, third(overhang)]),
            y: difference(null, tipFace, third(rise)),
          }),
        ]
      : []),
    cornerPart('fillet', corner(), root, { times, x: face, y: difference(null, top, thick) }),
    ...(toe ? [cornerPart('toe', corner(), toe, { times, x: edge, y: tipFace, hole: true })] : []),
  ];
  return {
    guards: [
      ...aSize('depth', depth),
      ...aSize('web thickness', web),
      ...aSize('flange thickness', flange),
      notNegative('root radius', root),
      ...(toe ? [notNegative('toe radius', toe)] : []),
      ...(slope ? [notNegative('flange slope', slope), atMost('flange slope', slope, number(1))] : []),
      fits('flange width', width, '>', web, 'wider than the web'),
      fits('both flanges at the root', twice(null, thick), '<', depth, 'less than the depth'),
      ...(rise
        ? [fits('flange thickness', flange, '>', half(null, rise), 'thick enough for its slope to the tip')]
        : []),
    ],
    further: () => [
      fits(
        'root radius',
        product('fillet along the flange', corner().leg, root),
        '<=',
        overhang,
        'no longer than the flange overhang',
      ),
      fits(
        'root radius',
        product('fillet along the web', corner().leg, root),
        '<=',
        difference(null, top, thick),
        'no longer than half the web between the flanges',
      ),
      ...(toe
        ? [
            fits(
              'toe radius',
              product('toe along the tip', corner().leg, toe),
              '<=',
              tip,
              'no larger than the flange tip',
            ),
            fits(
              'root and toe radius',
              sum(null, [product(null, corner().leg, root), product(null, corner().leg, toe)]),
              '<=',
              overhang,
              'no longer together than the flange overhang',
            ),
          ]
        : []),
    ],
    parts,
    width,
    height: depth,
    across: channel ? 'from the edge' : 'symmetric',
    up: 'symmetric',
  };
}
