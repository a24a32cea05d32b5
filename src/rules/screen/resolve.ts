/** From the facts given to the quantity that a rule tests. */
import { asDerived, converted, type Derived } from '../../trace/index.js';
import type { UnitOf } from '../../units/index.js';
import { largestCombination } from '../definitions/gcwr.js';
import type { FactName, Facts, LengthFact, WeightFact, WeightName } from '../facts.js';
import { greatestKnown, lacking, notThere, type Partly, sumKnown, wholly } from './partly-known.js';

const ratings: ReadonlySet<FactName> = new Set<FactName>(['trailer GVWR', 'tow vehicle GVWR', 'label GCWR']);

/** A fact as it was given, under its own name and in its own unit. */
export function givenFact(
  facts: Facts,
  name: WeightFact | LengthFact,
): Derived<UnitOf<'mass'> | UnitOf<'length'>> | undefined {
  const figure = facts[name];
  if (figure === undefined || figure === 'not shown' || figure === 'none') return undefined;
  return asDerived<UnitOf<'mass'> | UnitOf<'length'>>(name, figure, ratings.has(name) ? 'label' : 'stated');
}

function inPounds(facts: Facts, name: WeightFact): Partly<'lb'> {
  const figure = givenFact(facts, name) as Derived<UnitOf<'mass'>> | undefined;
  return figure === undefined ? lacking(name) : wholly(converted(name, figure, 'lb'));
}

/** The greater of a rating and a weight; the weight is not missed when it is known not to be above the rating. */
function ratingOrGross(facts: Facts, symbol: string, gvwr: WeightFact, gross: WeightFact): Partly<'lb'> {
  const within = facts['actual weights within ratings'] === true && facts[gross] === undefined;
  return greatestKnown(symbol, within ? [inPounds(facts, gvwr)] : [inPounds(facts, gvwr), inPounds(facts, gross)]);
}

/**
 * The quantity a rule tests, from the facts given. Sums and greatest-of figures come out in lb with their working; a
 * fact that was given comes out in its own unit.
 */
export function resolve(facts: Facts, name: FactName): Partly<UnitOf<'mass'> | UnitOf<'length'>> {
  switch (name) {
    case 'tow vehicle GVWR or gross':
      return ratingOrGross(facts, name, 'tow vehicle GVWR', 'tow vehicle gross');
    case 'towed GVWR or gross':
      return ratingOrGross(facts, name, 'trailer GVWR', 'trailer gross');
    case 'combined gross':
      return sumKnown(name, [inPounds(facts, 'tow vehicle gross'), inPounds(facts, 'trailer gross')]);
    case 'GCWR':
      return largestCombination(
        weightOf(facts, 'tow vehicle GVWR or gross'),
        weightOf(facts, 'towed GVWR or gross'),
        facts['label GCWR'] === 'not shown' ? 'not shown' : inPounds(facts, 'label GCWR'),
      );
    case 'greatest of GVWR, gross, GCWR':
      return greatestKnown(name, [
        weightOf(facts, 'tow vehicle GVWR or gross'),
        weightOf(facts, 'towed GVWR or gross'),
        weightOf(facts, 'GCWR'),
      ]);
    default: {
      if (facts[name] === 'none') return notThere;
      const figure = givenFact(facts, name);
      return figure === undefined ? lacking(name) : wholly(figure);
    }
  }
}

/** The same for a weight, in lb. */
export function weightOf(facts: Facts, name: WeightName): Partly<'lb'> {
  const { figure, ...known } = resolve(facts, name);
  return {
    ...known,
    figure: figure === undefined ? undefined : converted(name, figure as Derived<UnitOf<'mass'>>, 'lb'),
  };
}
