/** The forces a hitch is tested with. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import {
  type AnyWeight,
  asForce,
  type Decision,
  type Derived,
  fromTable,
  inPounds,
  plus,
  result,
  times,
} from '../../trace/index.js';
import { lbf, quantity, ratio } from '../../units/index.js';
import { collected } from '../../units/internal.js';
import { type HitchTestRow, hitchTestForceTable } from '../data/hitch-test-forces.js';
import type { NotAboveZero } from '../errors.js';
import { allAboveZero } from '../figures.js';

export interface HitchTestForce {
  readonly step: string;
  readonly component: 'vertical' | 'longitudinal' | 'transverse';
  readonly direction: string;
  readonly force: Derived<'lbf'>;
}

export interface HitchTest {
  readonly forces: readonly HitchTestForce[];
  /** The moment of the bars in step 1 of a weight distributing hitch; its unit is presumed. */
  readonly moment?: Derived<'lbf*in'>;
  readonly decisions: readonly Decision[];
}

const components = { V: 'vertical', L: 'longitudinal', T: 'transverse' } as const;
const from = (row: HitchTestRow): { table: string; key: string; source: typeof hitchTestForceTable.source } => ({
  table: hitchTestForceTable.name,
  key: `${row.hitch}, step ${row.step}, ${row.component}`,
  source: hitchTestForceTable.source,
});

/**
 * With which forces is a hitch of this rating tested?
 *
 * `force = slope x R + intercept`, R the gross weight rating of the trailer, lb. Test forces, not loads to tow with.
 *
 * @param rating the trailer gross weight the hitch is rated for; that this is the R of the table is from memory
 * @param hitch weight carrying or weight distributing
 * @returns forces in lbf, in the order of the steps; Left `NotAboveZero`
 * @example hitchTestForces(lb(5000), 'weight carrying') // Right 'vertical' 2,830 lbf
 * @source Md. COMAR 11.13.08.10, table, current to 2024-12-27
 */
export function hitchTestForces(rating: AnyWeight, hitch: HitchTestRow['hitch']): Either<NotAboveZero, HitchTest> {
  const r = inPounds('trailer gross weight rating', rating, 'label');
  const above = allAboveZero([['trailer gross weight rating', r]]);
  if (isLeft(above)) return above;
  const rows = (hitchTestForceTable.rows as readonly HitchTestRow[]).filter((row) => row.hitch === hitch);
  const forces = collected(rows, (row): HitchTestForce[] => {
    if (row.component === 'M') return [];
    const slope = fromTable('slope', ratio(row.slope), from(row));
    const intercept = fromTable('intercept', lbf(row.intercept), from(row));
    const component = components[row.component];
    return [
      {
        step: row.step,
        component,
        direction: row.direction,
        force: result(`step ${row.step} ${component}`, plus(times(slope, asForce(r)), intercept)),
      },
    ];
  });
  const bars = rows.find(({ component }) => component === 'M');
  return right({
    forces,
    ...(bars && { moment: fromTable('bar moment', quantity(bars.intercept, 'lbf*in'), from(bars)) }),
    decisions: above.right,
  });
}
