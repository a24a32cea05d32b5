/** Flat steel and everything else that is weighed by the square foot. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../../ratings/index.js';
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
  needsVerification,
  result,
  type Source,
  times,
} from '../../trace/index.js';
import { inch, lbPerFt2 } from '../../units/index.js';
import { expandedMetal } from '../data/expanded-metal.js';
import { floorPlate } from '../data/floor-plate.js';
import { sheetGauges } from '../data/sheet-gauges.js';
import type { MembersError } from '../errors.js';

/**
 * What does a sheet or plate of this thickness weigh per square foot?
 *
 * `w = t x density`, t in ft, density in lb/ft3: 40.83 lb/ft2 per inch of steel at 490.
 *
 * For flat plate, rubber mat, aluminium sheet. Not for a raised pattern (`floorPlateWeight`), an expanded mesh, or a gauge number.
 *
 * @param thickness by micrometer or as ordered, any unit of length
 * @param density `steelDensity`, `steelDensityByPlate`, `aluminiumDensity`, or the maker's figure (rubber mats differ widely)
 * @returns lb/ft2; Left `OutsideItsRange`
 * @example plateWeight(inch('0.25'), steelDensity) // Right 10.2083 lb/ft2
 * @source Iowa DOT IM 569 for 490 lb/ft3
 */
export function plateWeight(thickness: AnyLength, density: AnyDensity): Either<MembersError, Derived<'lb/ft2'>> {
  const inches = inInches('thickness', thickness);
  const perCubicFoot = inPoundsPerCubicFoot('density', density);
  const tested = allHold([aboveZero('thickness', inches), aboveZero('density', perCubicFoot)]);
  return isLeft(tested) ? tested : right(result('weight per square foot', times(perCubicFoot, inUnit(inches, 'ft'))));
}

/** The gauge systems of steel sheet. Gauge 10 is 5.624, 5.492, 5.779 or 5.625 lb/ft2: the number alone says nothing. */
export const gaugeSystems = {
  "manufacturers' standard": ['standard', 'standardWeight'],
  "manufacturers' standard, 490 lb/ft3": ['standard', 'weightAt490'],
  galvanized: ['galvanized', 'galvanizedWeight'],
  'legal gauge, 15 U.S.C. 206': ['legal', 'legalWeight'],
} as const;

export type GaugeSystem = keyof typeof gaugeSystems;

export interface Sheet {
  readonly thickness: Derived<'in'>;
  readonly weight: Derived<'lb/ft2'>;
}

const legalGauge: Source = Object.freeze({
  id: '15-usc-206',
  title: '15 U.S.C. 206, copy',
  grade: 'B',
  note: 'wrought iron, 40 lb/ft2 per inch',
});

/**
 * What does sheet of this gauge weigh per square foot?
 *
 * The printed row of the gauge system asked for: thickness in inches, weight in lb/ft2.
 *
 * The manufacturers' standard weighs 41.82 lb/ft2 per inch, more than 490 lb/ft3, since its sheets run over: both columns are kept.
 *
 * @param gauge the number on the bill of materials
 * @param system which gauge table it means: ask the supplier
 * @returns thickness and weight; Left `NotTabulated`, or `ColumnEmpty` when that system does not print this gauge
 * @example sheetWeight(10, 'galvanized') // Right 0.1382 in, 5.779 lb/ft2
 * @source two sheet-metal gauge charts (verify); 15 U.S.C. 206, copy
 */
export function sheetWeight(gauge: number, system: GaugeSystem): Either<MembersError, Sheet> {
  const found = findRow(
    sheetGauges,
    (row) => row.gauge,
    String(gauge),
    (key) => Math.abs(Number(key) - gauge),
  );
  if (isLeft(found)) return found;
  const row: Partial<Record<string, string>> = found.right;
  const [thickness, weight] = gaugeSystems[system];
  const [inches, pounds] = [row[thickness], row[weight]];
  if (inches === undefined || pounds === undefined) {
    return left({
      chapter: 'members',
      tag: 'ColumnEmpty',
      table: sheetGauges.name,
      row: `gauge ${gauge}`,
      column: system,
    });
  }
  const from = {
    table: sheetGauges.name,
    key: `gauge ${gauge}, ${system}`,
    source: thickness === 'legal' ? legalGauge : sheetGauges.source,
  };
  return right({
    thickness: fromTable(`gauge ${gauge} thickness`, inch(inches), from),
    weight: fromTable(`gauge ${gauge} weight`, lbPerFt2(pounds), from),
  });
}

/** A weight per square foot from a table that wants verifying, and the note that says so. */
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
 * The whole table is from memory; the answer says so. Aluminium tread plate is not in it: use its maker's weight.
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
