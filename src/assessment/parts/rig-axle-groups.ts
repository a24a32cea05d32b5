/** Every run of consecutive axles of a rig, where places and loads of all are known; and the heaviest of a kind. */
import { type Either, right } from 'fp-ts/lib/Either.js';
import type { AxleGroup } from '../../axles/index.js';
import { type AxleGroupFinding, type AxleGroupOptions, axleGroups, type RulesError } from '../../rules/index.js';
import type { DecodedSpec } from '../../spec/index.js';
import { constant, type Derived, decide, greatestOf, inInches, plus } from '../../trace/index.js';
import { inch, lb } from '../../units/index.js';
import { collected, orNone } from '../../units/internal.js';
import type { AxleLoad } from './axle-and-tire-loads.js';
import type { TowPart } from './tow-part.js';

/** What the groups of a rig are read from. */
export interface AxlesOfRig {
  readonly spec: DecodedSpec;
  readonly group: AxleGroup | undefined;
  readonly axleLoads: readonly AxleLoad[];
  readonly tow: TowPart;
}

const nothing = constant(lb(0));

/** Which axles count as one, and what stands on them, does not depend on how a State rounds: any way of counting tells it. */
const anyCounting: AxleGroupOptions = { tie: 'down', lengthRounding: 'none' };

/** Every run of axles from the front of the truck to the rear of the trailer; undefined where a place or a load is not known. */
export function rigAxleGroups({
  spec: { tow, rules },
  group,
  axleLoads,
  tow: { hitched },
}: AxlesOfRig): Either<RulesError, readonly AxleGroupFinding[] | undefined> {
  const { overhang, wheelbase } = orNone(tow);
  if (
    hitched === undefined ||
    group === undefined ||
    wheelbase === undefined ||
    overhang === undefined ||
    overhang === 'unknown'
  )
    return right(undefined);
  const base = inInches('wheelbase', wheelbase);
  const ball = plus(base, inInches('overhang', overhang));
  const axles = [
    { behind: constant(inch(0)), weight: hitched.front },
    { behind: base, weight: hitched.rear },
    ...group.axles.map(({ at }, i) => ({ behind: plus(ball, at), weight: (axleLoads[i] as AxleLoad).load })),
  ];
  // A lifted axle is reported by the checks; it belongs to no group.
  if (axles.some(({ weight }) => !decide(weight, '>', nothing).holds)) return right(undefined);
  const found = axleGroups(axles, rules?.axleGroups ?? anyCounting);
  return found._tag === 'Left' ? found : right(found.right.groups);
}

/** The heaviest of the groups that count as one axle, or as a tandem; `none` where no group does. */
export function heaviestGroup(groups: readonly AxleGroupFinding[], kind: 'single' | 'tandem'): Derived<'lb'> | 'none' {
  const loads = collected(groups, (group) =>
    group.kind === kind && group.check !== undefined ? [group.check.load] : [],
  );
  return loads.length === 0 ? 'none' : greatestOf(`heaviest ${kind}`, loads);
}
