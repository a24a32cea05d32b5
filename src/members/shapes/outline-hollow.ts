/** Hollow outlines in parts: rectangular tube with rounded corners, round tube and pipe. */
import {
  constant,
  type Derived,
  fromMemory,
  type Guard,
  inInches,
  minus,
  over,
  result,
  times,
} from '../../trace/index.js';
import { ratio } from '../../units/index.js';
import type { MembersError } from '../errors.js';
import { squareCorner } from './corners.js';
import type { Taken } from './decomposition.js';
import { aSize, fits } from './fits.js';
import type { RectangularTube, RoundTube, WallForProperties } from './outline.js';
import { disc, fourthPower, type Part, rectangle } from './parts.js';

/** The share of the nominal wall that counts as design wall in common welded tube. */
const designShare = constant(
  ratio('0.93'),
  'design wall share',
  fromMemory('AISC 360 B4.2, design wall of welded tube'),
);

function wallFor(properties: WallForProperties, nominal: Derived<'in'>): Derived<'in'> {
  if (properties === 'nominal wall') return nominal;
  return properties === '0.93 of nominal wall'
    ? result('design wall', times(designShare, nominal))
    : inInches('design wall', properties.designWall);
}

const corner = squareCorner();

/** A rectangle less its four rounded-off corners, solid or as a hole. */
function rounded(
  name: string,
  width: Derived<'in'>,
  height: Derived<'in'>,
  radius: Derived<'in'>,
  inner: boolean,
): readonly Part[] {
  const own = times(corner.own, fourthPower(radius));
  const from = times(corner.up, radius);
  const cut: Part = {
    count: 4,
    area: result(`${name} corner area`, times(corner.area, radius, radius)),
    Ix: own,
    Iy: own,
    x: minus(over(width, 2), from),
    y: minus(over(height, 2), from),
  };
  const body = rectangle(name, width, height, { count: 1 });
  return inner ? [{ ...body, hole: true }, cut] : [body, { ...cut, hole: true }];
}

/** Outer rounded rectangle minus the inner one. */
export function takeRectangularTube(outline: RectangularTube): Taken {
  const height = inInches('height', outline.height);
  const width = inInches('width', outline.width);
  const nominal = inInches('nominal wall', outline.wall);
  const design = wallFor(outline.properties, nominal);
  const radiusFor = (wall: Derived<'in'>): Derived<'in'> =>
    outline.outsideRadius === 'twice the wall'
      ? result('outside corner radius', times(2, wall))
      : inInches('outside corner radius', outline.outsideRadius);
  const partsFor = (wall: Derived<'in'>) => (): readonly Part[] => [
    ...rounded('outside', width, height, radiusFor(wall), false),
    ...rounded(
      'inside',
      minus(width, times(2, wall)),
      minus(height, times(2, wall)),
      result('inside corner radius', minus(radiusFor(wall), wall)),
      true,
    ),
  ];
  const guardsFor = (wall: Derived<'in'>, name: string): readonly Guard<MembersError>[] => [
    ...aSize(name, wall),
    fits('outside corner radius', radiusFor(wall), '>=', wall, 'at least the wall'),
    fits('outside corners', times(2, radiusFor(wall)), '<=', width, 'no wider than the tube'),
    fits('outside corners', times(2, radiusFor(wall)), '<=', height, 'no higher than the tube'),
    fits('both walls', times(2, wall), '<', width, 'less than the width'),
    fits('both walls', times(2, wall), '<', height, 'less than the height'),
  ];
  return {
    guards: [
      ...aSize('height', height),
      ...aSize('width', width),
      ...guardsFor(nominal, 'nominal wall'),
      ...(design === nominal ? [] : guardsFor(design, 'design wall')),
    ],
    parts: partsFor(design),
    ...(design === nominal ? {} : { weighed: partsFor(nominal) }),
    width,
    height,
    across: 'symmetric',
    up: 'symmetric',
  };
}

/** Outer circle minus the inner one. */
export function takeRoundTube(outline: RoundTube): Taken {
  const outside = inInches('outside diameter', outline.outside);
  const nominal = inInches('nominal wall', outline.wall);
  const design = wallFor(outline.properties, nominal);
  const partsFor = (wall: Derived<'in'>) => (): readonly Part[] => [
    disc('outside', outside, { count: 1 }),
    disc('inside', result('inside diameter', minus(outside, times(2, wall))), { count: 1, hole: true }),
  ];
  const guardsFor = (wall: Derived<'in'>, name: string): readonly Guard<MembersError>[] => [
    ...aSize(name, wall),
    fits('both walls', times(2, wall), '<=', outside, 'no more than the diameter'),
  ];
  return {
    guards: [
      ...aSize('outside diameter', outside),
      ...guardsFor(nominal, 'nominal wall'),
      ...(design === nominal ? [] : guardsFor(design, 'design wall')),
    ],
    parts: partsFor(design),
    ...(design === nominal ? {} : { weighed: partsFor(nominal) }),
    width: outside,
    height: outside,
    across: 'symmetric',
    up: 'symmetric',
  };
}
