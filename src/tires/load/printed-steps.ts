/** The printed steps of a tire, and what to say where none of them answers. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import { type NotTabulated, notTabulated } from '../../trace/index.js';
import { show } from '../../units/index.js';
import { collected } from '../../units/internal.js';
import { designationOf } from '../designation/cache.js';
import type { Designation } from '../designation/designation.js';
import { showDesignation } from '../designation/show-designation.js';
import type { TiresError } from '../errors.js';
import { type PressureStep, type PressureSteps, pressureSteps } from './pressure-steps.js';
import type { Fitment } from './published-rows.js';

export interface TableChoice {
  /** Keep to this table; otherwise all are used and the lower print governs. */
  readonly table?: string;
}

/** The tables that print a step, each once. */
export const printedTables = (step: PressureStep): readonly string[] => [
  ...new Set(step.rows.map((row) => row.table.name)),
];

const rowText = ({ pressure, load }: PressureStep): string => `${show(load.value)} at ${show(pressure.value)}`;

export const outside = (d: Designation, asked: string, nearest: readonly (PressureStep | undefined)[]): NotTabulated =>
  notTabulated(
    'tire load and pressure tables',
    `${showDesignation(d)}, ${asked}`,
    collected(nearest, (step) => (step === undefined ? [] : [rowText(step)])),
  );

export function begin(
  designation: string | Designation,
  fitment: Fitment,
  choice: TableChoice,
): Either<TiresError, { d: Designation; found: PressureSteps }> {
  const read = designationOf(designation);
  if (isLeft(read)) return read;
  const found = pressureSteps(read.right, fitment, choice.table);
  return isLeft(found) ? found : right({ d: read.right, found: found.right });
}
