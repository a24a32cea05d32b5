/** What a heap of loose material weighs. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import {
  type AnyDensity,
  aboveZero,
  allHold,
  asDerived,
  type Derived,
  findRow,
  fromTable,
  inOrder,
  inPoundsPerCubicFoot,
  inUnit,
  type Known,
  type NotTabulated,
  type OutsideItsRange,
  result,
  type Table,
  times,
} from '../../trace/index.js';
import { lbPerFt3, type UnitOf } from '../../units/index.js';
import { type BulkRow, bulkDensity } from '../data/bulk-density.js';

/** Loose materials and what they weigh, lb/ft3, from memory: a start to put your own rows in the place of. */
export const bulkMaterials: Table<BulkRow> = bulkDensity;

/** A material by its row of a table, or by the density of a ticket. */
export type BulkMaterial = string | { readonly low: AnyDensity; readonly high: AnyDensity };

/** The least and the most that the heap weighs. */
export interface BulkWeight {
  readonly least: Derived<'lb'>;
  readonly most: Derived<'lb'>;
}

/**
 * What does so much loose material weigh?
 *
 * `W = volume x density`, once with the low and once with the high density of the material.
 *
 * Water and packing decide: load by the higher figure, and weigh. A material that shifts or flows is no fixed load.
 *
 * @param volume as it lies in the box, by tape: length x width x mean depth
 * @param material a row of the table, or densities of your own
 * @param table your own rows in the place of those from memory
 * @returns lb; Left `NotTabulated` with the nearest rows, `OutsideItsRange`
 * @example orThrow(bulkWeight(quantity(54, 'ft3'), 'gravel')).most // 6,210 lb
 * @source weight is volume times density; the densities from memory (verify)
 */
export function bulkWeight(
  volume: Known<UnitOf<'volume'>>,
  material: BulkMaterial,
  table: Table<BulkRow> = bulkMaterials,
): Either<NotTabulated | OutsideItsRange, BulkWeight> {
  const heap = inUnit(asDerived('volume', volume), 'ft3');
  let ends: { readonly low: Derived<'lb/ft3'>; readonly high: Derived<'lb/ft3'> };
  if (typeof material === 'string') {
    const row = findRow(table, (each) => each.material, material);
    if (isLeft(row)) return row;
    const from = { table: table.name, key: row.right.material, source: table.source };
    ends = {
      low: fromTable('least density', lbPerFt3(row.right.low), from),
      high: fromTable('greatest density', lbPerFt3(row.right.high), from),
    };
  } else
    ends = {
      low: inPoundsPerCubicFoot('least density', material.low),
      high: inPoundsPerCubicFoot('greatest density', material.high),
    };
  const guarded = allHold([
    aboveZero('the volume', heap),
    aboveZero('the least density', ends.low),
    inOrder('densities', ends.low, ends.high),
  ]);
  if (isLeft(guarded)) return guarded;
  return right({
    least: result('least weight of the heap', times(ends.low, heap)),
    most: result('greatest weight of the heap', times(ends.high, heap)),
  });
}
