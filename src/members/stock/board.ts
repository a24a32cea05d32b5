/** Boards and bars: solid rectangles and rounds by the foot. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import {
  type AnyDensity,
  type AnyLength,
  aboveZero,
  allHold,
  type Derived,
  findRow,
  fromTable,
  inInches,
  inPoundsPerCubicFoot,
  inUnit,
  over,
  result,
  times,
} from '../../trace/index.js';
import { inch } from '../../units/index.js';
import { pi } from '../constants.js';
import { lumberSizes } from '../data/lumber-sizes.js';
import type { MembersError } from '../errors.js';
import type { Member } from '../frame/member.js';
import { densityOfWood, type Wood } from './wood.js';

/** A dressed size of the table, or measured: hardwood and sizes of 6x and up are measured. */
export type BoardSize = string | { readonly thickness: AnyLength; readonly width: AnyLength };

export interface Board extends Member {
  readonly thickness: Derived<'in'>;
  readonly width: Derived<'in'>;
  readonly density: Derived<'lb/ft3'>;
  /** What a deck of these boards, laid edge to edge, weighs per square foot. */
  readonly weightPerSquareFoot: Derived<'lb/ft2'>;
}

/** `2x8`, `2 X 8`, `5/4x6` in the spelling of the table. */
const sizeKey = (size: string): string => size.trim().toLowerCase().replaceAll(/\s+/g, '').replaceAll('\u00d7', 'x');

interface Dressed {
  readonly name: string;
  readonly thickness: Derived<'in'>;
  readonly width: Derived<'in'>;
}

function dressed(size: BoardSize): Either<MembersError, Dressed> {
  if (typeof size !== 'string')
    return right({
      name: 'board',
      thickness: inInches('board thickness', size.thickness),
      width: inInches('board width', size.width),
    });
  const found = findRow(lumberSizes, (row) => row.nominal, sizeKey(size));
  if (isLeft(found)) return found;
  const { nominal, thickness, width } = found.right;
  const from = { table: lumberSizes.name, key: nominal, source: lumberSizes.source };
  return right({
    name: `${nominal} board`,
    thickness: fromTable(`${nominal} thickness`, inch(thickness), from),
    width: fromTable(`${nominal} width`, inch(width), from),
  });
}

/**
 * What does this board weigh per foot, and a deck of it per square foot?
 *
 * `w = thickness x width x density`; `deck = thickness x density`. Dressed dry sizes: a 2x8 is 1-1/2 by 7-1/4.
 *
 * Hardwood dresses thicker (2x to 1-3/4), and two tables disagree from 6x up: weigh those by measured size.
 *
 * @param size nominal size of dressed softwood, or thickness and width by tape
 * @param wood how its density is known
 * @returns lb/ft and lb/ft2; Left `NotTabulated` with the nearest sizes or species, `OutsideItsRange`, `OutsideItsRange`, `ColumnEmpty`
 * @example board('2x8', { by: 'NDS gravity', species: 'Southern Pine', moisture: percent(19) }) // Right 2.82 lb/ft
 * @source dressed sizes: two secondary tables quoting PS 20 (verify)
 */
export function board(size: BoardSize, wood: Wood): Either<MembersError, Board> {
  const cut = dressed(size);
  if (isLeft(cut)) return cut;
  const density = densityOfWood(wood);
  if (isLeft(density)) return density;
  const { name, thickness, width } = cut.right;
  const tested = allHold([aboveZero('board thickness', thickness), aboveZero('board width', width)]);
  if (isLeft(tested)) return tested;
  return right({
    designation: name,
    thickness,
    width,
    density: density.right,
    weightPerFoot: result(`${name} weight per foot`, times(density.right, inUnit(times(thickness, width), 'ft2'))),
    weightPerSquareFoot: result(`${name} weight per square foot`, times(density.right, inUnit(thickness, 'ft'))),
  });
}

/**
 * What does a flat or square bar weigh per foot?
 *
 * `w = thickness x width x density`. Rolled edges and mill tolerance are left out.
 *
 * @param thickness and @param width by calipers, any unit; @param density `steelDensity` and the like
 * @returns lb/ft; Left `OutsideItsRange`
 * @example flatBar(inch('0.25'), inch(3), steelDensity) // Right 2.552 lb/ft
 * @source geometry, derived
 */
export function flatBar(thickness: AnyLength, width: AnyLength, density: AnyDensity): Either<MembersError, Member> {
  const [t, b, perCubicFoot] = [
    inInches('bar thickness', thickness),
    inInches('bar width', width),
    inPoundsPerCubicFoot('density', density),
  ];
  const tested = allHold([
    aboveZero('bar thickness', t),
    aboveZero('bar width', b),
    aboveZero('density', perCubicFoot),
  ]);
  return isLeft(tested)
    ? tested
    : right({
        designation: 'flat bar',
        weightPerFoot: result('bar weight per foot', times(perCubicFoot, inUnit(times(t, b), 'ft2'))),
      });
}

/**
 * What does a round bar weigh per foot?
 *
 * `w = pi/4 x diameter^2 x density`.
 *
 * @param diameter by calipers, any unit; @param density `steelDensity` and the like
 * @returns lb/ft; Left `OutsideItsRange`
 * @example roundBar(inch(1), steelDensity) // Right 2.673 lb/ft
 * @source geometry, derived
 */
export function roundBar(diameter: AnyLength, density: AnyDensity): Either<MembersError, Member> {
  const [d, perCubicFoot] = [inInches('bar diameter', diameter), inPoundsPerCubicFoot('density', density)];
  const tested = allHold([aboveZero('bar diameter', d), aboveZero('density', perCubicFoot)]);
  if (isLeft(tested)) return tested;
  const area = result('bar area', over(times(pi, d, d), 4));
  return right({
    designation: 'round bar',
    weightPerFoot: result('bar weight per foot', times(perCubicFoot, inUnit(area, 'ft2'))),
  });
}
