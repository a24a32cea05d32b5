/** Published sections: the printed row, each figure a table figure with its source. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import {
  type Derived,
  fromTable,
  notTabulated,
  over,
  result,
  root,
  type Source,
  type Table,
} from '../../trace/index.js';
import { quantity, type Unit } from '../../units/index.js';
import { collected, nearestKeys } from '../../units/internal.js';
import type { MembersError } from '../errors.js';
import type { Member } from '../frame/member.js';
import { shapeTables } from '../tables.js';
import { type ReadDesignation, readSectionName } from './designation.js';
import { sameShape, shapeDistance } from './same-shape.js';
import type { AngleRow, AnyShapeRow, BeamRow, ChannelRow, RectangularTubeRow, RoundTubeRow } from './shape-rows.js';

/** A section as published. `row` holds the printed dimensions as text; `dimension` takes one into a working, in inches. */
export interface SectionOf<Row extends AnyShapeRow> extends Member {
  readonly row: Row;
  readonly table: string;
  readonly source: Source;
  readonly area: Derived<'in2'>;
  readonly Ix: Derived<'in4'>;
  readonly Sx: Derived<'in3'>;
  readonly rx: Derived<'in'>;
  readonly Iy: Derived<'in4'>;
  readonly Sy: Derived<'in3'>;
  readonly ry: Derived<'in'>;
}

/** Told apart by `row.shape`: C and MC, W S and M, L, HSS, PIPE. */
export type Section =
  | SectionOf<ChannelRow>
  | SectionOf<BeamRow>
  | SectionOf<AngleRow>
  | SectionOf<RectangularTubeRow>
  | SectionOf<RoundTubeRow>;

/** A table figure under its name, with the row it was read from. */
function figures(
  row: AnyShapeRow,
  table: Table<AnyShapeRow>,
): <U extends Unit>(name: string, digits: string, unit: U) => Derived<U> {
  const from = { table: table.name, key: row.designation, source: table.source };
  Object.freeze(row); // shared by every answer that names the section
  return (name, digits, unit) => fromTable(`${row.designation} ${name}`, quantity(digits, unit), from);
}

function sectionOf(row: AnyShapeRow, table: Table<AnyShapeRow>): Section {
  const figure = figures(row, table);
  const area = figure('area', row.area, 'in2');
  const [Ix, Iy] = [figure('Ix', row.Ix, 'in4'), figure('Iy', row.Iy, 'in4')];
  const gyration = (name: string, I: Derived<'in4'>, printed: string | undefined): Derived<'in'> =>
    printed === undefined ? result(`${row.designation} ${name}`, root(over(I, area))) : figure(name, printed, 'in');
  return {
    designation: row.designation,
    row,
    table: table.name,
    source: table.source,
    weightPerFoot: figure('weight per foot', row.weight, 'lb/ft'),
    area,
    Ix,
    Sx: figure('Sx', row.Sx, 'in3'),
    rx: gyration('rx', Ix, row.rx),
    Iy,
    Sy: figure('Sy', row.Sy, 'in3'),
    ry: gyration('ry', Iy, row.ry),
  } as Section;
}

/** A printed dimension of a section as a table figure. @example sectionDimension(c5, 'depth', c5.row.depth) // 5 in */
export const sectionDimension = (of: Section, name: string, digits: string): Derived<'in'> =>
  fromTable(`${of.designation} ${name}`, quantity(digits, 'in'), {
    table: of.table,
    key: of.designation,
    source: of.source,
  });

interface Entry {
  readonly read: ReadDesignation;
  readonly row: AnyShapeRow;
  readonly table: Table<AnyShapeRow>;
}

let entries: readonly Entry[] | undefined;

/** Every printed row with its designation read, made at the first question and kept. */
function index(): readonly Entry[] {
  entries ??= collected(shapeTables, (table) =>
    collected(table.rows, (row) => {
      const read = readSectionName(row.designation);
      return isLeft(read) ? [] : [{ read: read.right, row, table }];
    }),
  );
  return entries;
}

/**
 * What is published of this section?
 *
 * Reads a designation as people type it and finds the printed row: nominal weight, area, Ix, Sx, rx, Iy, Sy, ry, dimensions.
 * Rows of the copy that prints no radii of gyration get them from `r = sqrt(I / A)`, r in in, I in in4, A in in2.
 *
 * The tables are a selection of sizes met in trailers. A tube named on its side (2x3 for 3x2) is not turned round: its Sx would
 * be another. Nothing is interpolated.
 *
 * @param designation from the drawing, the mill tag or the bill of materials: `C5x6.7`, `HSS 3x2x3/16`, `Pipe 2 STD`
 * @returns weight in lb/ft, properties in in2, in4, in3, in; Left `UnreadableDesignation`, or `NotTabulated` with the nearest sizes
 * @example publishedSection('c 5 X 6.7') // Right C5X6.7, 6.7 lb/ft
 * @source AISC Shapes Database v16.0 / Steel Construction Manual 16th ed., August 2023, a selection of rows; 19 further rows
 * from one copy of those tables
 */
export function publishedSection(designation: string): Either<MembersError, Section> {
  const asked = readSectionName(designation);
  if (isLeft(asked)) return asked;
  const found = index().find(({ read }) => sameShape(asked.right, read));
  if (found !== undefined) return right(sectionOf(found.row, found.table));
  const all = index().map(({ row }) => row.designation);
  return left(
    notTabulated(
      'published sections',
      designation.trim(),
      nearestKeys(all, (key) => shapeDistance(asked.right, key)),
    ),
  );
}

/** Every published section of this chapter, in table order. @example allSections().length */
export const allSections = (): readonly Section[] =>
  collected(shapeTables, (table) => table.rows.map((row) => sectionOf(row, table)));
