/** Rolled outlines in parts: tapered and parallel flanges, channels and beams. */
import {
  asDerived,
  atMost,
  constant,
  type Derived,
  inInches,
  minus,
  notNegative,
  over,
  plus,
  result,
  times,
} from '../../trace/index.js';
import { ratio } from '../../units/index.js';
import { type Corner, slopedCorner, squareCorner } from './corners.js';
import type { Taken } from './decomposition.js';
import { aSize, fits } from './fits.js';
import type { ParallelBeam, ParallelChannel, TaperedBeam, TaperedChannel } from './outline.js';
import { fourthPower, type Part, rectangle, wedge } from './parts.js';

const isChannel = (kind: string): boolean => kind.endsWith('channel');

/** A corner piece at its place: `x`, `y` are those of the corner; the piece lies toward `xSign`, `ySign` of it. */
function cornerPart(
  name: string,
  corner: Corner,
  radius: Derived<'in'>,
  at: { count: 2 | 4; x: Derived<'in'>; y: Derived<'in'>; hole?: true },
): Part {
  const [up, away] = [times(corner.up, radius), times(corner.away, radius)];
  const own = corner.own && times(corner.own, fourthPower(radius));
  return {
    count: at.count,
    area: result(`${name} area`, times(corner.area, radius, radius)),
    ...(at.hole && { hole: at.hole }),
    x: at.hole ? minus(at.x, away) : plus(at.x, away),
    y: at.hole ? plus(at.y, up) : minus(at.y, up),
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
  const overhang = result('flange overhang', channel ? minus(width, web) : over(minus(width, web), 2));
  const rise = slope && result('flange taper', times(slope, overhang));
  const tip = rise ? result('flange at the tip', minus(flange, over(rise, 2))) : flange;
  const thick = rise ? result('flange at the root', plus(flange, over(rise, 2))) : flange;
  const top = result('half the depth', over(depth, 2));
  const tipFace = minus(top, tip);
  const face = channel ? web : over(web, 2);
  const edge = channel ? width : over(width, 2);
  const pieces = channel ? 2 : 4;
  const parts = (): readonly Part[] => [
    rectangle('web', web, depth, { count: 1, ...(channel && { x: over(web, 2) }) }),
    rectangle('flange', overhang, tip, {
      count: pieces,
      x: plus(face, over(overhang, 2)),
      y: minus(top, over(tip, 2)),
    }),
    ...(rise
      ? [
          wedge('taper', overhang, rise, {
            count: pieces,
            x: plus(face, over(overhang, 3)),
            y: minus(tipFace, over(rise, 3)),
          }),
        ]
      : []),
    cornerPart('fillet', corner(), root, { count: pieces, x: face, y: minus(top, thick) }),
    ...(toe ? [cornerPart('toe', corner(), toe, { count: pieces, x: edge, y: tipFace, hole: true })] : []),
  ];
  return {
    guards: [
      ...aSize('depth', depth),
      ...aSize('web thickness', web),
      ...aSize('flange thickness', flange),
      notNegative('root radius', root),
      ...(toe ? [notNegative('toe radius', toe)] : []),
      ...(slope ? [notNegative('flange slope', slope), atMost('flange slope', slope, constant(ratio(1)))] : []),
      fits('flange width', width, '>', web, 'wider than the web'),
      fits('both flanges at the root', times(2, thick), '<', depth, 'less than the depth'),
      ...(rise ? [fits('flange thickness', flange, '>', over(rise, 2), 'thick enough for its slope to the tip')] : []),
    ],
    further: () => [
      fits(
        'root radius',
        result('fillet along the flange', times(corner().leg, root)),
        '<=',
        overhang,
        'no longer than the flange overhang',
      ),
      fits(
        'root radius',
        result('fillet along the web', times(corner().leg, root)),
        '<=',
        minus(top, thick),
        'no longer than half the web between the flanges',
      ),
      ...(toe
        ? [
            fits(
              'toe radius',
              result('toe along the tip', times(corner().leg, toe)),
              '<=',
              tip,
              'no larger than the flange tip',
            ),
            fits(
              'root and toe radius',
              plus(times(corner().leg, root), times(corner().leg, toe)),
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
