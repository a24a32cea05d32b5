/** Tow vehicle inputs converted to lb, the hitch lever, and the names of missing inputs. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../../ratings/index.js';
import { type AnyWeight, type Decision, type Derived, inPounds, sum } from '../../trace/index.js';
import { collected, has } from '../../units/internal.js';
import { isMissing, type LoadOrMissing } from '../checks/checks-or-missing.js';
import type { TowingError } from '../errors.js';
import { type Called, noneBelowZero } from '../figures.js';
import { hitchLever, type Lever, type LeverRead } from '../hitch/hitch-lever.js';
import type { TowVehicle } from './tow-vehicle.js';

/** Named facts, some of them missing. */
export type Facts = Readonly<Record<string, Derived<'lb'> | undefined>>;

export interface TowFacts {
  readonly front: Derived<'lb'> | undefined;
  readonly rear: Derived<'lb'> | undefined;
  /** Hitch parts not included in the scale weights, under their name; undefined when none were given. */
  readonly hardware: Facts;
  /** The truck alone, hitch parts and all. */
  readonly alone: LoadOrMissing;
  readonly lever: Lever | { readonly missing: readonly string[] };
  readonly notes: readonly Note[];
  readonly decisions: readonly Decision[];
}

const ifGiven = (symbol: string, figure: AnyWeight | undefined): Derived<'lb'> | undefined =>
  figure === undefined ? undefined : inPounds(symbol, figure);

/** Figures under their names, in pounds. */
export const readFacts = (facts: Readonly<Record<string, AnyWeight | undefined>>): Facts =>
  Object.fromEntries(Object.entries(facts).map(([name, figure]) => [name, ifGiven(name, figure)]));

/** The names of the facts that are missing. */
export const wanting = (facts: Facts): readonly string[] =>
  Object.entries(facts)
    .filter(([, fact]) => fact === undefined)
    .map(([name]) => name);

/** The facts that are there, as an error would call them. */
export const present = (facts: Facts): readonly Called[] =>
  collected(Object.entries(facts), ([name, fact]) => (fact === undefined ? [] : [[name, fact] as const]));

/** A sum of facts, or the names of those that are missing. */
export function sumOrMissing(symbol: string, facts: Facts): LoadOrMissing {
  const missing = wanting(facts);
  return missing.length > 0
    ? { missing }
    : sum(
        symbol,
        present(facts).map(([, fact]) => fact as Derived<'lb'>),
      );
}

/** The missing facts of several loads, each once. */
export const missingOf = (...loads: readonly (object | undefined)[]): readonly string[] => [
  ...new Set(
    collected(loads, (load) => (load !== undefined && 'missing' in load ? (load.missing as readonly string[]) : [])),
  ),
];

function leverOf({
  hitch,
  overhang,
  wheelbase,
}: TowVehicle): Either<TowingError, LeverRead | { readonly missing: readonly string[] }> {
  if (overhang === undefined)
    return right({ missing: ['overhang', ...(wheelbase === undefined ? ['wheelbase'] : [])] });
  if (overhang === 'unknown')
    return hitch === 'gooseneck' ? right({ missing: ['overhang'] }) : hitchLever({ hitch, overhang });
  if (has(overhang, 'ofWheelbase')) return hitchLever({ hitch, overhang });
  return wheelbase === undefined ? right({ missing: ['wheelbase'] }) : hitchLever({ hitch, overhang, wheelbase });
}

const hardwareNote = note(
  'HitchHardwareTakenAsScaled',
  'No weight of hitch parts was given: they are taken to have been on the truck when it was scaled.',
);

/** Reads a tow vehicle. Left `BelowZero`, `NotAboveZero` (wheelbase), `HitchContradicts`. */
export function towFacts(vehicle: TowVehicle): Either<TowingError, TowFacts> {
  const axles = readFacts({ 'front axle, truck alone': vehicle.front, 'rear axle, truck alone': vehicle.rear });
  const hardware = vehicle.hitchHardware === undefined ? {} : readFacts({ 'hitch hardware': vehicle.hitchHardware });
  const weighed = noneBelowZero([...present(axles), ...present(hardware)]);
  if (isLeft(weighed)) return weighed;
  const read = leverOf(vehicle);
  if (isLeft(read)) return read;
  const known = 'lever' in read.right ? read.right : undefined;
  return right({
    front: axles['front axle, truck alone'],
    rear: axles['rear axle, truck alone'],
    hardware,
    alone: sumOrMissing('tow vehicle alone', { ...axles, ...hardware }),
    lever: 'lever' in read.right ? read.right.lever : read.right,
    notes: [...(known?.notes ?? []), ...(vehicle.hitchHardware === undefined ? [hardwareNote] : [])],
    decisions: [...weighed.right, ...(known?.decisions ?? [])],
  });
}

/** A sum of loads of which any may be missing. */
export const sumLoads = (symbol: string, ...loads: readonly LoadOrMissing[]): LoadOrMissing =>
  loads.some(isMissing) ? { missing: missingOf(...loads) } : sum(symbol, loads as readonly Derived<'lb'>[]);
