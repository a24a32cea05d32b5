/** Facts that cannot all be true are refused before any rule is asked. Only what is really contradictory is. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Decision, type Derived, decide, inUnit, zeroIn } from '../../trace/index.js';
import { dimensionOf, type Unit, type UnitOf } from '../../units/index.js';
import { showCrossed, showInWords } from '../../units/internal.js';
import { type RulesError, rulesError } from '../errors.js';
import {
  dimensionOfFact,
  type Facts,
  isGivenFact,
  isYesNoFact,
  type LengthFact,
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
const anySign: ReadonlySet<string> = new Set(['weight on tow vehicle', 'added weight']);
/** These may be zero. */
const zeroToo: ReadonlySet<string> = new Set(['path deviation']);

/** What a figure is in need of: its dimension, and a size that such a thing can have. */
function faultOfFigure(
  name: WeightFact | LengthFact,
  figure: Derived<UnitOf<'mass'> | UnitOf<'length'>>,
): RulesError | undefined {
  const { unit } = figure.value;
  const dimension = dimensionOfFact(name);
  if (dimensionOf(unit) !== dimension)
    return rulesError({ tag: 'WrongRuleUnit', fact: name, found: unit, needed: dimension }, pathOf(figure));
  const zero = zeroIn(unit);
  if (anySign.has(name) || decide<Unit>(figure, zeroToo.has(name) ? '>=' : '>', zero).holds) return undefined;
  const needed = zeroToo.has(name) ? 'zero or more' : 'greater than zero';
  return rulesError({ tag: 'OutOfRange', what: name, found: showInWords(figure.value), needed }, pathOf(figure));
}

function faultOfFact(facts: Facts, name: string): RulesError | undefined {
  if (isYesNoFact(name)) return undefined;
  if (!isGivenFact(name))
    return rulesError({ tag: 'UnknownFact', found: name, known: [...weightFacts, ...lengthFacts] }, name);
  const figure = givenFact(facts, name);
  return figure && faultOfFigure(name, figure);
}

/** Whether the first of a pair is not above the second, where both are known. */
function inOrder(
  facts: Facts,
  [less, more, needed]: (typeof ordered)[number],
): Either<RulesError, Decision | undefined> {
  const [low, high] = [givenFact(facts, less), givenFact(facts, more)] as [
    Derived<UnitOf<'mass'>> | undefined,
    Derived<UnitOf<'mass'>> | undefined,
  ];
  if (low === undefined || high === undefined) return right(undefined);
  const decision = decide(inUnit(low, 'lb'), '<=', inUnit(high, 'lb'));
  if (decision.holds) return right(decision);
  const found = showCrossed(low.value, high.value);
  return left(
    rulesError({ tag: 'ContradictoryFacts', facts: [less, more], found, needed }, pathOf(high) ?? pathOf(low)),
  );
}

/**
 * Can all these facts be true together?
 *
 * @returns the comparisons it rests on; Left `OutOfRange`, `WrongRuleUnit` or `ContradictoryFacts` with the path of the figure
 */
export function consistent(facts: Facts): Either<RulesError, readonly Decision[]> {
  for (const name of Object.keys(facts)) {
    const fault = faultOfFact(facts, name);
    if (fault !== undefined) return left(fault);
  }
  const decisions: Decision[] = [];
  const pairs = facts['actual weights within ratings'] === true ? [...ordered, ...withinRatings] : ordered;
  for (const pair of pairs) {
    const found = inOrder(facts, pair);
    if (isLeft(found)) return found;
    if (found.right !== undefined) decisions.push(found.right);
  }
  return right(decisions);
}
