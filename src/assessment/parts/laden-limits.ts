/** Every limit that a laden trailer meets, in every way of standing: what payload and places are worked out from, and what the checks ask. */
import { groupCapacity, type SharedAxles } from '../../axles/index.js';
import type { LadenLimit } from '../../load/index.js';
import type { Bound, Rating } from '../../ratings/index.js';
import type { DecodedSpec } from '../../spec/index.js';
import {
  constant,
  type Decision,
  type Derived,
  decide,
  inInches,
  inPounds,
  inShare,
  minus,
  over,
  plus,
  product,
  result,
  times,
} from '../../trace/index.js';
import { lb, ratio } from '../../units/index.js';
import type { Stack } from './running-gear.js';
import type { StancePart } from './stance-part.js';
import type { TowPart } from './tow-part.js';

type Lb = Derived<'lb'>;
type On = LadenLimit['on'];

/** What an answer knows of the rig before it asks what it may carry. */
export interface Rig {
  readonly spec: DecodedSpec;
  readonly gvwr: Rating<'GVWR'> | undefined;
  readonly stack: Stack;
  readonly tow: TowPart;
  readonly stance: StancePart;
}

/** Limits, and the comparisons by which they were chosen. */
export interface FoundLimits {
  readonly limits: readonly LadenLimit[];
  readonly decisions: readonly Decision[];
}

const nothing = constant(lb(0));

/** The limits of one rig, worked out once: payload and every window read the same figures. */
export interface LadenLimits {
  readonly gross: readonly LadenLimit[];
  readonly axles: readonly LadenLimit[];
  readonly tongue: FoundLimits;
  /** Those of each side, for a load that leans so. */
  readonly sides: (sides: readonly Side[]) => readonly LadenLimit[];
}

/** What the tires of an axle carry at the pressure they run, which is never above their rating; where no pressure is known, their rating. */
const tiresOfAxle = ({ systems, tires }: Stack, i: number): Lb | undefined => {
  const tire = tires[i];
  return tire?.asRun === undefined
    ? systems[i]?.governed.limits.find(({ name }) => name === 'tires')?.limit
    : product(`${tire.of} tires as they run`, tire.asRun, constant(ratio(tire.spec.count)));
};

/** What the axles carry with the tires of one of them full, as they run where that is known. */
function byTires(stack: Stack): Lb | undefined {
  const { group, tires } = stack;
  const each = tires.map((_, i) => tiresOfAxle(stack, i));
  return group === undefined || each.every((limit) => limit === undefined)
    ? undefined
    : groupCapacity(group, 'axle group by tires as they run', each);
}

/** The axles' limits level: part by part, or axle by axle where they share by their springs; the tires as they run. */
function levelLimits({ group }: Stack, tires: Lb | undefined): readonly Bound[] {
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

interface OffLevel {
  readonly rated: readonly Bound[];
  readonly tires: readonly Bound[];
  readonly presses: readonly Bound[];
}

/** Off level an axle is unloaded by a figure that no load changes: each of its limits is raised, or lowered, by that much. */
function offLevelLimits(stack: Stack, { offLevel }: StancePart): OffLevel {
  const { group, systems } = stack;
  const unloading = offLevel?.unloading;
  if (group === undefined || unloading === undefined) return { rated: [], tires: [], presses: [] };
  const each = (part: string, limitOf: (i: number) => Lb | undefined): readonly Bound[] =>
    unloading.flatMap((less, i) => {
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

const limitsOn = (
  on: On,
  bounds: readonly Bound[],
  more: Partial<Pick<LadenLimit, 'returned' | 'lean' | 'atLeast'>> = {},
  suffix = '',
): readonly LadenLimit[] => bounds.map(({ name, limit }) => ({ name: `${name}${suffix}`, on, limit, ...more }));

/** Axles and tires, both sides alike: level, off level, with the bars on, and both together. */
function axleLimits(
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

/** One side: what a pound of load adds to twice that side, and what the rest adds. */
export interface Side {
  readonly name: string;
  readonly lean: Derived<'ratio'>;
  /** Twice what stays adds to this side; none when all that leans is the load itself. */
  readonly added?: Lb;
}

/** The tires of each side, and that the side presses. Twice a side is `W - T + q P` and what stays off the middle. */
function sideLimits(
  { stance, tow: { shareReturnedByBars: returned } }: Rig,
  tires: Lb | undefined,
  off: OffLevel,
  sides: readonly Side[],
): readonly LadenLimit[] {
  const change = stance.offLevel?.tongueChange;
  return sides.flatMap(({ name, lean, added }) => {
    const less = (bounds: readonly Bound[]): readonly Bound[] =>
      bounds.map(({ name: what, limit }) => ({
        name: `${what} ${name}`,
        limit: added === undefined ? limit : result(`${what} ${name} less what stays`, minus(limit, added)),
      }));
    const level = less(tires === undefined ? [] : [{ name: 'tires', limit: tires }]);
    const tilted = less(off.tires);
    const presses = less([
      { name: 'side presses', limit: nothing },
      ...(change === undefined ? [] : [{ name: 'side presses off level', limit: change }]),
    ]);
    return [
      ...limitsOn('axles', level, { lean }),
      ...limitsOn('axles', tilted, { lean }),
      ...(returned === undefined
        ? []
        : [
            ...limitsOn('axles', level, { lean, returned }, ' bars on'),
            ...limitsOn('axles', tilted, { lean, returned }, ' and bars on'),
          ]),
      ...limitsOn('axles', presses, { lean, atLeast: true }),
    ];
  });
}

/** The tongue load at which the jack is full: `rating (a - x) / (a margin)`, x its place behind the ball. */
function byJack({ spec: { trailer }, stack: { group } }: Rig): readonly Bound[] {
  const { jack } = trailer;
  if (jack === undefined || group === undefined) return [];
  const ahead = minus(group.at, inInches('jack position', jack.at));
  const rated = inPounds('jack rating', jack.rating);
  return [
    {
      name: 'jack',
      limit: result('tongue load by jack', over(times(rated, ahead), times(group.at, inShare('margin', jack.margin)))),
    },
  ];
}

/**
 * Bars that restore a part p of what the tongue takes off the front axle leave `T (1 - p)` to relieve it. Where they restore
 * all of it, nothing relieves an axle that is over its rating without a trailer.
 */
function leastWithBars(vehicle: DecodedSpec['tow'], least: readonly Bound[]): FoundLimits {
  const restore = vehicle?.bars && inShare('share to restore', vehicle.bars.restore);
  if (restore === undefined || least.length === 0) return { limits: [], decisions: [] };
  const some = decide(restore, '<', constant(ratio(1)));
  if (some.holds)
    return {
      limits: limitsOn(
        'tongue',
        least.map(({ name, limit }) => ({
          name: `${name} bars on`,
          limit: result(`tongue load by ${name} bars on`, over(limit, minus(1, restore))),
        })),
        { atLeast: true },
      ),
      decisions: [some],
    };
  const fine = least.map(({ limit }) => decide(limit, '<=', nothing));
  return {
    limits: limitsOn(
      'gross',
      least.filter((_, i) => fine[i]?.holds === false).map(({ name }) => ({ name: `${name} bars on`, limit: nothing })),
    ),
    decisions: [some, ...fine],
  };
}

/** What the ball may carry, level and off level, and what it must. */
function tongueLimits(rig: Rig): FoundLimits {
  const {
    spec: { trailer, tow: vehicle },
    tow: { largest, shareReturnedByBars, offLevel: hitch },
    stance: { offLevel },
  } = rig;
  const { coupler } = trailer;
  const level: readonly Bound[] =
    largest?.limits.filter(({ on }) => on === 'tongue') ??
    (coupler?.tongue === undefined
      ? []
      : [{ name: 'coupler tongue', limit: inPounds('coupler tongue rating', coupler.tongue) }]);
  const change = offLevel?.tongueChange;
  const shifted = (bounds: readonly Bound[]): readonly Bound[] =>
    change === undefined
      ? []
      : bounds.map(({ name, limit }) => ({
          name: `${name} off level`,
          limit: result(`tongue load by ${name} off level`, minus(limit, change)),
        }));
  const least = [...(largest?.least ?? []), ...shifted(largest?.least ?? [])];
  const withBars = shareReturnedByBars === undefined ? undefined : leastWithBars(vehicle, least);
  const limits: readonly LadenLimit[] = [
    ...limitsOn('tongue', [...level, ...shifted(level), ...byJack(rig)]),
    ...limitsOn('tongue', least, { atLeast: true }),
    ...(withBars?.limits ?? []),
    ...(change === undefined || hitch === undefined
      ? []
      : limitsOn(
          'tongue',
          [{ name: 'tongue off level', limit: result('tongue load that presses off level', minus(nothing, change)) }],
          { atLeast: true },
        )),
  ];
  return { limits, decisions: withBars?.decisions ?? [] };
}

/** What the whole may weigh: label, coupler, chains by both readings, hitch and tow vehicle. */
function grossLimits({ spec: { trailer }, gvwr, tow: { largest } }: Rig): readonly LadenLimit[] {
  const { coupler, chains } = trailer;
  const each = chains && inPounds('breaking strength of one chain', chains.each, 'label');
  const ofTow: readonly Bound[] = (largest?.limits ?? []).filter(
    ({ name, on }) => on === 'gross' && name !== 'coupler gross',
  );
  return limitsOn('gross', [
    ...(gvwr === undefined ? [] : [{ name: 'GVWR', limit: gvwr.limit }]),
    ...(coupler?.gross === undefined
      ? []
      : [{ name: 'coupler gross', limit: inPounds('coupler gross rating', coupler.gross) }]),
    ...(each === undefined ? [] : [{ name: 'safety chains each', limit: each }]),
    ...ofTow,
  ]);
}

/** Works them out. */
export function ladenLimits(rig: Rig): LadenLimits {
  const { stack, stance, tow } = rig;
  const tires = byTires(stack);
  const off = offLevelLimits(stack, stance);
  return {
    gross: grossLimits(rig),
    axles: axleLimits(levelLimits(stack, tires), off, tow.shareReturnedByBars),
    tongue: tongueLimits(rig),
    sides: (sides) => sideLimits(rig, tires, off, sides),
  };
}
