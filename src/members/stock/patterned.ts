/** Floor plate and expanded metal, by the square foot. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../../ratings/index.js';
import { type Derived, findRow, fromTable, needsVerification, type Source } from '../../trace/index.js';
import { lbPerFt2 } from '../../units/index.js';
import { expandedMetal } from '../data/expanded-metal.js';
import { floorPlate } from '../data/floor-plate.js';
import type { MembersError } from '../errors.js';

/** A weight per square foot from a table that needs verification, with a note. */
export interface SurfaceWeight {
  readonly weight: Derived<'lb/ft2'>;
  readonly grade: Source['grade'];
  readonly notes: readonly Note[];
}

function surface(
  symbol: string,
  pounds: string,
  table: { name: string; source: Source },
  key: string,
  caution: string,
): SurfaceWeight {
  return {
    weight: fromTable(symbol, lbPerFt2(pounds), { table: table.name, key, source: table.source }),
    grade: table.source.grade,
    notes: needsVerification(table.source.grade) ? [note('WantsVerifying', caution)] : [],
  };
}

/**
 * What does raised-pattern steel floor plate weigh per square foot?
 *
 * The row as remembered: plain plate plus about 1.05 lb/ft2 of pattern from 1/8 in up.
 *
 * The whole table is from memory; a note in the answer says this. Aluminium tread plate is not in it: use its maker's weight.
 *
 * @param nominal thickness without the pattern: `1/8`, `3/16`, `1/4`, `16 ga`
 * @returns lb/ft2 with grade and note; Left `NotTabulated` with the nearest
 * @example floorPlateWeight('1/8') // Right 6.16 lb/ft2, grade memory
 * @source older AISC Manual Part 1 table, from memory
 */
export function floorPlateWeight(nominal: string): Either<MembersError, SurfaceWeight> {
  const found = findRow(floorPlate, (row) => row.nominal, nominal.trim());
  return isLeft(found)
    ? found
    : right(
        surface(
          `${nominal.trim()} floor plate`,
          found.right.weight,
          floorPlate,
          nominal.trim(),
          'floor plate weights are from memory: verify with the supplier',
        ),
      );
}

/**
 * What does expanded metal of this style weigh per square foot?
 *
 * The row of the catalogue page. Only 1/2 #13 and 3/4 #9 were printed as pairs; the other weights were paired with their styles
 * by the reader of that page, and the answer says so. Grating is named by its weight and needs no table.
 *
 * @param style opening and gauge: `3/4 #9`
 * @returns lb/ft2 with grade and note; Left `NotTabulated` with the nearest
 * @example expandedMetalWeight('3/4 #9') // Right 1.80 lb/ft2
 * @source steel service-centre catalogue page (verify)
 */
export function expandedMetalWeight(style: string): Either<MembersError, SurfaceWeight> {
  const found = findRow(expandedMetal, (row) => row.style, style.trim());
  if (isLeft(found)) return found;
  const caution =
    found.right.pairing === 'printed'
      ? 'a catalogue weight: verify with the supplier'
      : 'style and weight were paired by the reader of the page: verify with the supplier';
  return right(surface(`${style.trim()} expanded metal`, found.right.weight, expandedMetal, style.trim(), caution));
}
