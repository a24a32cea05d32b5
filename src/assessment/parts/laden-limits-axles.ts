/** Limits of axles and tires on a laden trailer: level, off level, with the bars on. */
import { groupCapacity, type SharedAxles } from '../../axles/index.js';
import type { LadenLimit } from '../../load/index.js';
import type { Bound } from '../../ratings/index.js';
import { constant, type Derived, plus, product } from '../../trace/index.js';
import { ratio } from '../../units/index.js';
import { collected } from '../../units/internal.js';
import { type Lb, limitsOn } from './rig.js';
import type { Stack } from './running-gear.js';
import type { StancePart } from './stance-part.js';

/** What the tires of an axle carry at the pressure they run, which is never above their rating; where no pressure is known, their rating. */
const tiresOfAxle = ({ systems, tires }: Stack, i: number): Lb | undefined => {
  const tire = tires[i];
  return tire?.asRun === undefined
    ? systems[i]?.governed.limits.find(({ name }) => name === 'tires')?.limit
    : product(`${tire.of} tires as they run`, tire.asRun, constant(ratio(tire.spec.count)));
};

/** What the axles carry with the tires of one of them full, as they run where that is known. */
export function byTires(stack: Stack): Lb | undefined {
  const { group, tires } = stack;
  const each = tires.map((_, i) => tiresOfAxle(stack, i));
  return group === undefined || each.every((limit) => limit === undefined)
    ? undefined
    : groupCapacity(group, 'axle group by tires as they run', each);
}

/** The axles' limits level: part by part, or axle by axle where they share by their springs; the tires as they run. */
export function levelLimits({ group }: Stack, tires: Lb | undefined): readonly Bound[] {
  const limits = (group?.limits ?? []).filter(({ name }) => name !== 'tires');
  return tires === undefined ? limits : [...limits, { name: 'tires', limit: tires }];
}

/** What the group carries when axle i, and no other, carries this load. */
const whenAxle = (group: SharedAxles, i: number, name: string, load: Lb): Lb =>
  groupCapacity(
    group,
    name,
    group.axles.map((_, k) => (k === i ? load : undefined)),
  );
export interface OffLevel {
  readonly rated: readonly Bound[];
  readonly tires: readonly Bound[];
  readonly presses: readonly Bound[];
}

/** Off level an axle is unloaded by a figure that no load changes: each of its limits is raised, or lowered, by that much. */
export function offLevelLimits(stack: Stack, { offLevel }: StancePart): OffLevel {
  const { group, systems } = stack;
  const unloading = offLevel?.unloading;
  if (group === undefined || unloading === undefined) return { rated: [], tires: [], presses: [] };
  const each = (part: string, limitOf: (i: number) => Lb | undefined): readonly Bound[] =>
    collected(unloading, (less, i) => {
      const limit = limitOf(i);
      const name = `axle ${i + 1}${part} off level`;
      return limit === undefined
        ? []
        : [{ name, limit: whenAxle(group, i, `axle group by ${name}`, plus(limit, less)) }];
    });
  return {
    rated: each('', (i) => systems[i]?.rating),
    tires: each(' tires', (i) => tiresOfAxle(stack, i)),
    presses: unloading.map((less, i) => {
      const name = `axle ${i + 1} presses off level`;
      return { name, limit: whenAxle(group, i, name, less) };
    }),
  };
}

/** Axles and tires, both sides alike: level, off level, with the bars on, and both together. */
export function axleLimits(
  level: readonly Bound[],
  off: OffLevel,
  returned: Derived<'ratio'> | undefined,
): readonly LadenLimit[] {
  const tilted = [...off.rated, ...off.tires];
  return [
    ...limitsOn('axles', level),
    ...limitsOn('axles', tilted),
    ...(returned === undefined
      ? []
      : [
          ...limitsOn('axles', level, { returned }, ' bars on'),
          ...limitsOn('axles', tilted, { returned }, ' and bars on'),
        ]),
    ...limitsOn('axles', off.presses, { atLeast: true }),
  ];
}
