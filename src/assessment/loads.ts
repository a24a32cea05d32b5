/** The trailer's own loads against its own ratings: gross, axles, tires. */
import { check, type Check, type Rating, rating, weight } from '../ratings/index.js';
import type { PressureForLoad } from '../tires/index.js';
import { constant, type Derived, quotient } from '../trace/index.js';
import { ratio } from '../units/index.js';
import type { NotChecked } from './not-checked.js';
import type { Stack } from './stack.js';
import { pressureNeeded } from './tires.js';
import type { Weighed } from './weigh.js';

export interface AxleLoad {
  readonly of: string;
  readonly load: Derived<'lb'>;
}

/** The load on each axle; none when the balance is not known. */
export function axleLoadsOf(stack: Stack, weighed: Weighed): readonly AxleLoad[] {
  const { balance } = weighed;
  const loads = balance === undefined ? [] : (stack.group?.loads(balance.axleLoad) ?? []);
  return loads.map((load, index) => ({ of: `axle ${index + 1}`, load }));
}

/** The load on one tire of each axle, shared alike; undefined where tires or load are not known. */
export function tireLoadsOf({ tires }: Stack, loads: readonly AxleLoad[]): readonly (Derived<'lb'> | undefined)[] {
  return tires.map((each, index) => {
    const load = loads[index]?.load;
    return each === undefined || load === undefined ? undefined : quotient(`${each.of} tire load`, load, constant(ratio(each.spec.count)));
  });
}

export function grossChecks(gvwr: Rating<'GVWR'> | undefined, { gross }: Weighed): { readonly checks: readonly Check[]; readonly notChecked: readonly NotChecked[] } {
  if (gvwr === undefined) return { checks: [], notChecked: [{ what: 'gross weight and payload against GVWR', missing: 'GVWR from the label' }] };
  return { checks: gross === undefined ? [] : [check(gvwr, weight('gross', gross))], notChecked: [] };
}

/** Each axle against its GAWR, or its weakest part when the label gives none; each tire against what it may carry as it runs. */
export function axleChecks({ systems, tires }: Stack, loads: readonly AxleLoad[], onTires: readonly (Derived<'lb'> | undefined)[]): readonly Check[] {
  const axles = systems.flatMap(({ gawr, rating: weakest, of }, index) => {
    const load = loads[index]?.load;
    if (load === undefined) return [];
    return [gawr === undefined ? check(rating('weakest part', weakest, { of }), weight('axle load', load)) : check(gawr, weight('axle load', load))];
  });
  const rolling = tires.flatMap((each, index) => {
    const load = onTires[index];
    const limit = each?.asRun ?? each?.rating?.rating;
    return each === undefined || load === undefined || limit === undefined ? [] : [check(rating('tire', limit, { of: each.of }), weight('tire load', load))];
  });
  return [...axles, ...rolling];
}

/** The cold pressures the loads need, where printed rows say so. */
export function pressuresFor({ tires }: Stack, onTires: readonly (Derived<'lb'> | undefined)[]): readonly { readonly of: string; readonly needed: PressureForLoad }[] {
  return tires.flatMap((each, index) => {
    const load = onTires[index];
    const needed = each === undefined || load === undefined ? undefined : pressureNeeded(each, load);
    return each === undefined || needed === undefined ? [] : [{ of: each.of, needed }];
  });
}
