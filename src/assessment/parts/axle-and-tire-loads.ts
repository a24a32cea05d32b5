/** The ways the laden trailer stands - level, off level, with the bars set, both together, each with its heavier side - and what its axles and tires carry in each. */
import { axleLoads, type TandemSplit } from '../../axles/index.js';
import type { WheelShares } from '../../load/index.js';
import { type Check, checkLoad, rating, weight } from '../../ratings/index.js';
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
import type { Stack } from './running-gear.js';
import type { StancePart } from './stance-part.js';
import type { TowPart } from './tow-part.js';
import type { Weighed } from './weights.js';

export interface AxleLoad {
  readonly of: string;
  readonly load: Derived<'lb'>;
}

/** A load on one tire of each axle; undefined where tires or load are not known. */
type OnTires = readonly (Derived<'lb'> | undefined)[];

/** The way the trailer stands; level means with the bars off. */
type How = 'level' | 'off level' | 'bars on' | 'bars on and off level';

/** The qualifier of a check; none for level, bars off. */
const qualifier = (how: How): string | undefined => (how === 'level' ? undefined : how);
/** The suffix of a name in formulas; empty for level, bars off. */
const suffix = (how: How): string => (how === 'level' ? '' : `, ${how}`);

export interface Standing {
  readonly how: How;
  readonly loads: readonly AxleLoad[];
  /** Both sides alike. */
  readonly onTires: OnTires;
  /** On the heavier side; none where the cargo's place from side to side is not known. */
  readonly onHeavierSide: OnTires;
}

/** The load on each axle standing level, bars off; none when the balance is not known. */
export function axleLoadsOf(stack: Stack, { balance }: Weighed): readonly AxleLoad[] {
  const loads = balance === undefined || stack.group === undefined ? [] : axleLoads(stack.group, balance.axleLoad);
  return loads.map((load, index) => ({ of: `axle ${index + 1}`, load }));
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

/** What the bars put on the axles comes on top of what stands there off level. */
function together({ group }: Stack, offLevel: TandemSplit, bars: WeightDistribution): readonly Derived<'lb'>[] {
  const added = group === undefined ? [] : axleLoads(group, bars.ontoTrailer);
  return added.map((load, i) =>
    plus(offLevel.loads[i] as Derived<'lb'>, renamed(`put on axle ${i + 1} by the bars`, load)),
  );
}

/** Level first, then whatever else the spec speaks of. */
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

/** Each axle against its GAWR, or its weakest part when the label gives none. */
function axleChecks({ systems }: Stack, { how, loads }: Standing): readonly Check[] {
  return systems.flatMap(({ gawr, rating: weakest, label: of }, i) => {
    const load = loads[i]?.load;
    if (load === undefined) return [];
    return [
      gawr === undefined
        ? checkLoad(rating('weakest part', weakest, { part: of }), weight('axle load', load), qualifier(how))
        : checkLoad(gawr, weight('axle load', load), qualifier(how)),
    ];
  });
}

/** Each tire against what it may carry as it runs. */
function tireChecks({ tires }: Stack, how: How, onTires: OnTires, side: '' | ' heavier side'): readonly Check[] {
  return tires.flatMap((tire, i) => {
    const [load, limit] = [onTires[i], tire?.asRun ?? tire?.rating?.rating];
    return tire === undefined || load === undefined || limit === undefined
      ? []
      : [checkLoad(rating('tire', limit, { part: `${tire.of}${side}` }), weight('tire load', load), qualifier(how))];
  });
}

/** Axles and tires of one way of standing. */
export const checksOf = (stack: Stack, standing: Standing): readonly Check[] => [
  ...axleChecks(stack, standing),
  ...tireChecks(stack, standing.how, standing.onTires, ''),
];

/** The tires of the heavier side. */
export const heavierSideChecks = (stack: Stack, { how, onHeavierSide }: Standing): readonly Check[] =>
  tireChecks(stack, how, onHeavierSide, ' heavier side');

/** The greatest load that one tire of each axle sees, as far as the spec speaks of its ways of standing. */
export const heaviestOnTires = (stack: Stack, standings: readonly [Standing, ...Standing[]]): OnTires =>
  stack.tires.map((tire, i) => {
    const [level, ...others] = standings.map(({ onTires, onHeavierSide }) => onHeavierSide[i] ?? onTires[i]);
    const known = others.flatMap((load) => load ?? []);
    return tire === undefined || level === undefined || known.length === 0
      ? level
      : greatestOf(`${tire.of} tire load, heaviest as it stands`, [level, ...known]);
  });
