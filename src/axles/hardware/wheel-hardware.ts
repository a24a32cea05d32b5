/** Wheel nuts, hubs and bolt circles: what charts print. None of it says what an axle may carry. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import {
  type AnyLength,
  asDerived,
  constant,
  type Derived,
  fromTable,
  inUnit,
  type NotTabulated,
  notTabulated,
  over,
  quotient,
  result,
  type Source,
  sin,
} from '../../trace/index.js';
import { degree, quantity, ratio } from '../../units/index.js';
import { nearestKeys } from '../../units/internal.js';
import { type TorqueRange, type WheelTorqueRow, wheelTorque } from '../data/wheel-torque.js';
import type { HardwareError } from './hardware-errors.js';
import { allPositive } from './hardware-guards.js';

/** From and to, as printed. */
export interface PrintedTorque {
  readonly low: Derived<'lbf*ft'>;
  readonly high: Derived<'lbf*ft'>;
}

/** One chart's row: stages in order, the last is the final torque when the chart prints one. */
export interface TorqueChart {
  readonly chart: string;
  readonly stage1?: PrintedTorque;
  readonly stage2?: PrintedTorque;
  readonly final?: PrintedTorque;
}

export interface WheelNutTorque {
  readonly charts: readonly TorqueChart[];
  /** The charts do not print the same: ask the wheel maker, do not pick the one that suits. */
  readonly disagree: boolean;
}

/** After how many miles the charts ask for the nuts to be tightened again. */
export const retorqueAfterMiles = ['10', '25', '50'] as const;

const rowName = ({ wheel, stud }: WheelTorqueRow): string => (stud === undefined ? wheel : `${wheel}, ${stud} stud`);

/** Rows of the same wheel first, then those of its rim diameter. */
function wheelDistance(wheel: string, name: string): number {
  if (name.startsWith(`${wheel},`)) return 0;
  return name.startsWith(wheel.slice(0, 2)) ? 1 : 2;
}

function printed(row: WheelTorqueRow, stage: string, range: TorqueRange): PrintedTorque {
  const from = {
    table: wheelTorque.name,
    key: `${rowName(row)}, chart ${row.chart}, ${stage}`,
    source: wheelTorque.source as Source,
  };
  return {
    low: fromTable(`${stage} torque, from`, quantity(range[0], 'lbf*ft'), from),
    high: fromTable(`${stage} torque, to`, quantity(range[1], 'lbf*ft'), from),
  };
}

/**
 * Which torque do the charts print for this wheel?
 *
 * A table, no formula. Charts of different makers disagree, most on 9/16 studs (120-130 against 90-120): all are returned.
 *
 * Not for a wheel or nut the row does not name. The wheel maker's own figure outranks every chart. Dry threads, tightened
 * in stages and crosswise; again after 10, 25 and 50 miles.
 *
 * @param wheel as the chart names it: `16 in and 16.5x6.75`
 * @param stud stud diameter in inches as text, `9/16`; leave it out where the chart prints none
 * @returns lbf ft, a row for each chart; Left `NotTabulated` with the nearest rows
 * @example wheelNutTorque('16 in and 16.5x6.75', '9/16') // Right 120 lbf*ft, 130 lbf*ft, 90 lbf*ft; two charts that disagree
 * @source axle and running-gear makers' manuals, 2014 and undated
 */
export function wheelNutTorque(wheel: string, stud?: string): Either<NotTabulated, WheelNutTorque> {
  const all: readonly WheelTorqueRow[] = wheelTorque.rows;
  const rows = all.filter((row) => row.wheel === wheel && row.stud === stud);
  if (rows.length === 0) {
    const asked = stud === undefined ? wheel : `${wheel}, ${stud} stud`;
    const near = nearestKeys(all.map(rowName), (name) => wheelDistance(wheel, name));
    return left(notTabulated(wheelTorque.name, asked, near));
  }
  const charts = rows.map(
    (row): TorqueChart => ({
      chart: row.chart,
      ...(row.stage1 && { stage1: printed(row, 'stage 1', row.stage1) }),
      ...(row.stage2 && { stage2: printed(row, 'stage 2', row.stage2) }),
      ...(row.final && { final: printed(row, 'final', row.final) }),
    }),
  );
  return right({ charts, disagree: rows.length > 1 });
}

/**
 * Which bolt circle do these studs have, measured between two neighbours?
 *
 * `D = chord / sin(180 deg / n)`. chord centre to centre of two studs side by side, in; n studs. With an even number one can
 * measure straight across; with five one cannot.
 *
 * A bolt circle says which wheel goes on. It never says what hub, bearing or axle may carry.
 *
 * @param betweenNeighbours with a caliper, stud centre to stud centre, any unit of length
 * @returns in; Left `HardwareNotAboveZero`
 * @example boltCircle(inch('2.645'), 5) // Right 4.5 in
 * @source plane geometry, derived
 */
export function boltCircle(
  betweenNeighbours: AnyLength,
  studs: 4 | 5 | 6 | 8 | 10,
): Either<HardwareError, Derived<'in'>> {
  const chord = inUnit(asDerived('between neighbouring studs', betweenNeighbours), 'in');
  const positive = allPositive([['between neighbouring studs', chord]]);
  if (isLeft(positive)) return positive;
  const halfAngle = quotient('half the angle between studs', constant(degree(180)), constant(ratio(studs)));
  return right(
    result('bolt circle', over(chord, sin(halfAngle)), {
      id: 'geometry',
      title: 'plane geometry, derived',
      grade: 'derived',
    }),
  );
}
