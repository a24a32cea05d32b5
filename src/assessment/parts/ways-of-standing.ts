/** The loads of axles and tires in each attitude: level, bars on, off level, and both together. */
import { axleLoads, type TandemSplit } from '../../axles/index.js';
import type { WheelShares } from '../../load/index.js';
import type { WeightDistribution } from '../../towing/index.js';
import {
  constant,
  type Derived,
  greatestOf,
  minus,
  over,
  plus,
  quotient,
  renamed,
  result,
  times,
} from '../../trace/index.js';
import { ratio } from '../../units/index.js';
import type { AxleLoad } from './axle-and-tire-loads.js';
import type { Stack } from './running-gear.js';
import type { StancePart } from './stance-part.js';
import type { TowPart } from './tow-part.js';
import type { Weighed } from './weights.js';

/** A load on one tire of each axle; undefined where tires or load are not known. */
export type OnTires = readonly (Derived<'lb'> | undefined)[];

/** The attitude of the trailer; level means with the bars off. */
export type How = 'level' | 'off level' | 'bars on' | 'bars on and off level';

/** The qualifier of a check; none for level, bars off. */
export const qualifier = (how: How): string | undefined => (how === 'level' ? undefined : how);

/** The suffix of a name in formulas; empty for level, bars off. */
export const suffix = (how: How): string => (how === 'level' ? '' : `, ${how}`);

export interface Standing {
  readonly how: How;
  readonly loads: readonly AxleLoad[];
  /** Both sides alike. */
  readonly onTires: OnTires;
  /** On the heavier side; none where the cargo's place from side to side is not known. */
  readonly onHeavierSide: OnTires;
}

/** The load of each axle over its tires, shared alike. */
const onTiresOf = ({ tires }: Stack, loads: readonly AxleLoad[], how: How): OnTires =>
  tires.map((tire, i) => {
    const load = loads[i]?.load;
    return tire === undefined || load === undefined
      ? undefined
      : quotient(`${tire.of} tire load${suffix(how)}`, load, constant(ratio(tire.spec.count)));
  });
function level(
  stack: Stack,
  { balance }: Weighed,
  loads: readonly AxleLoad[],
  sides: WheelShares | undefined,
): Standing {
  const heavier = sides && greatestOf('heavier side of the axles', [sides.left, sides.right]);
  const onHeavierSide =
    heavier === undefined || balance === undefined
      ? []
      : stack.tires.map((tire, i) => {
          const load = loads[i]?.load;
          return tire === undefined || load === undefined
            ? undefined
            : result(
                `${tire.of} tire load, heavier side`,
                over(times(heavier, over(load, balance.axleLoad)), constant(ratio(tire.spec.count / 2))),
              );
        });
  return { how: 'level', loads, onTires: onTiresOf(stack, loads, 'level'), onHeavierSide };
}

/** Another way of standing: what it adds to an axle comes onto both sides alike. */
function changed(how: How, stack: Stack, from: Standing, axles: readonly Derived<'lb'>[]): Standing {
  const loads = axles.map((load, i) => ({
    of: `axle ${i + 1}`,
    load: renamed(`axle ${i + 1} load${suffix(how)}`, load),
  }));
  const onTires = onTiresOf(stack, loads, how);
  const onHeavierSide = from.onHeavierSide.map((heavier, i) => {
    const [now, before] = [onTires[i], from.onTires[i]];
    return heavier === undefined || now === undefined || before === undefined
      ? undefined
      : result(`${stack.tires[i]?.of} tire load, heavier side${suffix(how)}`, plus(heavier, minus(now, before)));
  });
  return { how, loads, onTires, onHeavierSide };
}

/** The load that the bars put on the axles is added to the off-level load. */
function together({ group }: Stack, offLevel: TandemSplit, bars: WeightDistribution): readonly Derived<'lb'>[] {
  const added = group === undefined ? [] : axleLoads(group, bars.ontoTrailer);
  return added.map((load, i) =>
    plus(offLevel.loads[i] as Derived<'lb'>, renamed(`put on axle ${i + 1} by the bars`, load)),
  );
}

/** Level first, then whatever else the spec refers to. */
export function standingsOf(
  stack: Stack,
  weighed: Weighed,
  levelLoads: readonly AxleLoad[],
  { sides, offLevel }: StancePart,
  { bars }: TowPart,
): readonly [Standing, ...Standing[]] {
  const flat = level(stack, weighed, levelLoads, sides);
  return [
    flat,
    ...(offLevel ? [changed('off level', stack, flat, offLevel.loads)] : []),
    ...(bars && stack.group ? [changed('bars on', stack, flat, axleLoads(stack.group, bars.barsOn.trailerAxles))] : []),
    ...(offLevel && bars ? [changed('bars on and off level', stack, flat, together(stack, offLevel, bars))] : []),
  ];
}
