/** The outline behind a published section, where one is known that comes close to its printed figures. */
import { type Either, left, right } from 'fp-ts/lib/Either.js';
import { type Derived, fromTable, minus, plus, result, times } from '../../trace/index.js';
import { inch } from '../../units/index.js';
import { standardTaper } from '../constants.js';
import { leastWebs } from '../data/least-webs.js';
import type { MembersError } from '../errors.js';
import { type Section, sectionDimension } from '../sections/published-section.js';
import type { BeamRow, ChannelRow } from '../sections/shape-rows.js';
import type { Outline } from './outline.js';

const withoutOutline = (designation: string, why: string): Either<MembersError, never> =>
  left({ chapter: 'members', tag: 'NoOutline', designation, why });

/** Root radius least web + 0.10 in, toe radius 0.6 of the least web of that depth. */
function tapered(
  of: Section,
  row: ChannelRow | BeamRow,
  kind: 'tapered channel' | 'tapered beam',
  leastWeb: Derived<'in'>,
): Outline {
  return {
    kind,
    name: of.designation,
    slope: standardTaper,
    depth: sectionDimension(of, 'depth', row.depth),
    flangeWidth: sectionDimension(of, 'flange width', row.flangeWidth),
    web: sectionDimension(of, 'web', row.web),
    flange: sectionDimension(of, 'flange', row.flange),
    rootRadius: result('root radius', plus(leastWeb, inchesOf('0.10'))),
    toeRadius: result('toe radius', times(0.6, leastWeb)),
  };
}

const inchesOf = (digits: string): Derived<'in'> =>
  fromTable('root allowance', inch(digits), { table: leastWebs.name, key: 'rule', source: leastWebs.source });

function channelOutline(of: Section, row: ChannelRow): Either<MembersError, Outline> {
  const found = leastWebs.rows.find(({ depth }) => depth === row.depth);
  if (row.shape === 'MC' || found === undefined)
    return withoutOutline(of.designation, 'a flange slope that differs by size');
  return right(
    tapered(
      of,
      row,
      'tapered channel',
      fromTable('least web', inch(found.web), {
        table: leastWebs.name,
        key: `${found.depth} in`,
        source: leastWebs.source,
      }),
    ),
  );
}

function beamOutline(of: Section, row: BeamRow): Either<MembersError, Outline> {
  const flange = sectionDimension(of, 'flange', row.flange);
  if (row.shape === 'M') return withoutOutline(of.designation, 'dimensions that miss its published area by up to 9 %');
  if (row.shape === 'S') return right(tapered(of, row, 'tapered beam', sectionDimension(of, 'web', row.web)));
  if (row.k === undefined) return withoutOutline(of.designation, 'a copy of the table without the fillet distance k');
  return right({
    kind: 'parallel beam',
    name: of.designation,
    flange,
    depth: sectionDimension(of, 'depth', row.depth),
    flangeWidth: sectionDimension(of, 'flange width', row.flangeWidth),
    web: sectionDimension(of, 'web', row.web),
    rootRadius: result('root radius', minus(sectionDimension(of, 'k', row.k), flange)),
  });
}

/**
 * From what outline can this published section be computed again?
 *
 * C and S: tapered 1 in 6, root radius least web + 0.10 in, toe radius 0.6 of the least web of the depth (the S rows held here
 * are the lightest of their depth). W: root radius k - flange. Tube: design wall of the table, outside radius twice the wall.
 * Angle: two rectangles.
 *
 * For drawing and teaching: where a published section has its table, the table governs.
 *
 * @param of from `section`
 * @returns Left `NoOutline` for MC and M shapes, and for W rows of a copy that prints no fillet distance k
 * @example outlineOf(c5) // Right a tapered channel of 5 in depth
 * @source radius rule from memory, borne out by the published properties
 */
export function outlineOf(of: Section): Either<MembersError, Outline> {
  const { row } = of;
  switch (row.shape) {
    case 'C':
    case 'MC':
      return channelOutline(of, row);
    case 'W':
    case 'S':
    case 'M':
      return beamOutline(of, row);
    case 'L':
      return right({
        kind: 'angle',
        name: of.designation,
        uprightLeg: sectionDimension(of, 'long leg', row.longLeg),
        flatLeg: sectionDimension(of, 'short leg', row.shortLeg),
        thickness: sectionDimension(of, 'thickness', row.thickness),
      });
    case 'HSS':
    case 'PIPE': {
      const [wall, properties] = [
        sectionDimension(of, 'nominal wall', row.wall),
        { designWall: sectionDimension(of, 'design wall', row.designWall) },
      ];
      return right(
        'outside' in row
          ? {
              kind: 'round tube',
              name: of.designation,
              outside: sectionDimension(of, 'outside diameter', row.outside),
              wall,
              properties,
            }
          : {
              kind: 'rectangular tube',
              name: of.designation,
              height: sectionDimension(of, 'height', row.height),
              width: sectionDimension(of, 'width', row.width),
              wall,
              properties,
              outsideRadius: 'twice the wall',
            },
      );
    }
  }
}
