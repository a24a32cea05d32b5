/** Facts that cannot all be true are refused before any rule is asked. Only what is really contradictory is. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Decision, type Derived, decide, inUnit, zeroIn } from '../../trace/index.js';
import { dimensionOf, show, type Unit, type UnitOf } from '../../units/index.js';
import { type RulesError, rulesError } from '../errors.js';
import {
  dimensionOfFact,
  type Facts,
  isGivenFact,
  isWeightName,
  isYesNoFact,
  lengthFacts,
  type WeightFact,
  weightFacts,
} from '../facts.js';
import { pathOf } from '../pounds.js';
import { givenFact } from './resolve.js';

/** Pairs where the first may not be above the second. A GAWR above the GVWR, or axles that sum below it, is no contradiction. */
const ordered: readonly (readonly [WeightFact, WeightFact, string])[] = [
  ['tow vehicle GVWR', 'label GCWR', 'a label GCWR not below the GVWR of the vehicle that shows it'],
  ['trailer unloaded', 'trailer gross', 'a loaded trailer that weighs no less than the empty one'],
  ['weight on tow vehicle', 'trailer gross', 'a tongue load that is part of the gross weight'],
];

/** When nobody is loaded above a rating, no gross weight is above its GVWR. */
const withinRatings: typeof ordered = [
  [
    'trailer gross',
    'trailer GVWR',
    'a gross weight not above the GVWR, or "actual weights within ratings" answered no',
  ],
  [
    'tow vehicle gross',
    'tow vehicle GVWR',
    'a gross weight not above the GVWR, or "actual weights within ratings" answered no',
  ],
];

/** These may be zero or point the other way: a tail-heavy load lifts the hitch, weight can be taken off. */
const anySign: ReadonlySet<string> = new Set(['weight on tow vehicle', 'added weight', 'path deviation']);

/**
 * Can all these facts be true together?
 *
 * @returns the comparisons it rests on; Left `OutOfRange`, `WrongRuleUnit` or `ContradictoryFacts` with the path of the figure
 */
export function consistent(facts: Facts): Either<RulesError, readonly Decision[]> {
  for (const name of Object.keys(facts)) {
    if (isYesNoFact(name)) continue;
    if (!isGivenFact(name))
      return left(rulesError({ tag: 'UnknownFact', found: name, known: [...weightFacts, ...lengthFacts] }, name));
    const figure = givenFact(facts, name);
    if (figure === undefined) continue;
    const { unit } = figure.value;
    if (dimensionOf(unit) !== dimensionOfFact(name))
      return left(
        rulesError({ tag: 'WrongRuleUnit', fact: name, found: unit, needed: dimensionOfFact(name) }, pathOf(figure)),
      );
    if (!anySign.has(name) && !decide<Unit>(figure, '>', zeroIn(unit)).holds) {
      return left(
        rulesError(
          {
            tag: 'OutOfRange',
            what: name,
            found: show(figure.value),
            needed: `a ${isWeightName(name) ? 'weight' : 'length'} greater than zero`,
          },
          pathOf(figure),
        ),
      );
    }
  }
  const decisions: Decision[] = [];
  for (const [less, more, needed] of facts['actual weights within ratings'] === true
    ? [...ordered, ...withinRatings]
    : ordered) {
    const [low, high] = [givenFact(facts, less), givenFact(facts, more)] as [
      Derived<UnitOf<'mass'>> | undefined,
      Derived<UnitOf<'mass'>> | undefined,
    ];
    if (low === undefined || high === undefined) continue;
    const decision = decide(inUnit(low, 'lb'), '<=', inUnit(high, 'lb'));
    decisions.push(decision);
    if (!decision.holds) {
      return left(
        rulesError(
          { tag: 'ContradictoryFacts', facts: [less, more], found: [show(low.value), show(high.value)], needed },
          pathOf(high) ?? pathOf(low),
        ),
      );
    }
  }
  return right(decisions);
}

/** The first Left, or all that is right. */
export function firstLeft<A>(answers: readonly Either<RulesError, A>[]): Either<RulesError, readonly A[]> {
  const out: A[] = [];
  for (const answer of answers) {
    if (isLeft(answer)) return answer;
    out.push(answer.right);
  }
  return right(out);
}
