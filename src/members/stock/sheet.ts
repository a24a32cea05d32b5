/** Steel sheet by its gauge. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Derived, findRow, fromTable, type Source } from '../../trace/index.js';
import { inch, lbPerFt2 } from '../../units/index.js';
import { sheetGauges } from '../data/sheet-gauges.js';
import type { MembersError } from '../errors.js';

/** The gauge systems of steel sheet. Gauge 10 is 5.624, 5.492, 5.779 or 5.625 lb/ft2, so the number alone gives no weight. */
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
