/** Axles and tires against their ratings in one attitude. */
import { type Check, checkLoad, rating, weight } from '../../ratings/index.js';
import { greatestOf } from '../../trace/index.js';
import { collected } from '../../units/internal.js';
import type { Stack } from './running-gear.js';
import { type How, type OnTires, qualifier, type Standing } from './ways-of-standing.js';

/** Each axle against its GAWR, or its weakest part when the label gives none. */
function axleChecks({ systems }: Stack, { how, loads }: Standing): readonly Check[] {
  return collected(systems, ({ gawr, rating: weakest, label: of }, i) => {
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
  return collected(tires, (tire, i) => {
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
/** The greatest load on one tire of each axle, over the attitudes that the spec gives. */
export const heaviestOnTires = (stack: Stack, standings: readonly [Standing, ...Standing[]]): OnTires =>
  stack.tires.map((tire, i) => {
    const [level, ...others] = standings.map(({ onTires, onHeavierSide }) => onHeavierSide[i] ?? onTires[i]);
    const known = others.filter((load) => load !== undefined);
    return tire === undefined || level === undefined || known.length === 0
      ? level
      : greatestOf(`${tire.of} tire load, heaviest as it stands`, [level, ...known]);
  });
