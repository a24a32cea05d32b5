/** Which published lines does this combination cross? */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import type { Decision } from '../../trace/index.js';
import { dimensionOf } from '../../units/index.js';
import { collected } from '../../units/internal.js';
import { type RulesError, rulesError } from '../errors.js';
import { dimensionOfFact, type Facts } from '../facts.js';
import type { Rule } from '../rule.js';
import { consistent } from './consistency.js';
import type { Finding } from './finding.js';
import { findingsOf } from './judge.js';
import { bookOf, type RulesOfQuestion, rulesByQuestion, soundGroups } from './questions.js';

/** The findings, and every comparison of figures they depend on: while its outcomes hold, so do the findings. */
export interface Screening {
  readonly findings: readonly Finding[];
  readonly decisions: readonly Decision[];
}

/**
 * Which published lines does this combination cross, and how far away are the others?
 *
 * A duty applies when its questions are answered yes and its conditions hold. A limit is kept when they hold and crossed
 * when one fails. Each fact is converted exactly to the unit the rule prints and compared with the printed operator:
 * 10,000 lb and 10,001 lb are two answers, although both are printed as 4,536 kg. `distance = figure - line`. Rules that are
 * alternatives of one question are one finding, and a rule that binds where another applies reads what that one says.
 *
 * Not a statement that a combination is lawful; not State law, except for the rules a user brings.
 *
 * @param facts what is known about the job, in any unit of weight or length: ratings from labels, weights from tickets. A
 * rule that needs a fact left out cannot be decided, unless the known facts settle it.
 * @param rules `federalRules`, and whatever `decodeLocalRules` made of a user's file
 * @returns one finding for every question, in the order of the rules. Left `ContradictoryFacts`, `OutOfRange`,
 * `WrongRuleUnit`, `UnknownFact`, `UnknownRule`.
 * @example screen({ 'trailer GVWR': lb(10000), 'overall width': inch(102) }, federalRules) // Right: conspicuity does not apply, rear guard applies
 * @source the clause of each rule; the reading of missing facts is our own
 */
export function screen(facts: Facts, rules: readonly Rule[]): Either<RulesError, Screening> {
  const asked = askable(facts, rules);
  if (isLeft(asked)) return asked;
  const { groups, decisions } = asked.right;
  const findings = findingsOf(groups, bookOf(groups), facts);
  return right({ findings, decisions: [...decisions, ...collected(findings, (finding) => finding.decisions)] });
}

/** Questions that can be asked, each with the rules that answer it, and the comparisons by which the facts agree. */
export interface Askable {
  readonly groups: readonly RulesOfQuestion[];
  readonly decisions: readonly Decision[];
}

/**
 * Can these rules be asked of these facts?
 *
 * Checks the input only: facts must agree with each other, each rule must use a unit that its facts have, and refer to a
 * duty that is known and does not refer back to it.
 *
 * @returns the questions with their rules; Left as `screen`
 * @example askable({ 'trailer GVWR': lb(10000) }, federalRules)._tag // Right
 * @source the reading of facts is our own
 */
export function askable(facts: Facts, rules: readonly Rule[]): Either<RulesError, Askable> {
  const sound = consistent(facts);
  if (isLeft(sound)) return sound;
  const misfit = collected(rules, unitFaults)[0];
  if (misfit !== undefined) return left(misfit);
  const groups = soundGroups(rulesByQuestion(rules));
  return isLeft(groups) ? groups : right({ groups: groups.right, decisions: sound.right });
}

/** Conditions of a rule in a unit that does not measure what they test. */
const unitFaults = ({ id, where = [], all }: Rule): readonly RulesError[] =>
  collected([...where, ...all], ({ test, unit }) =>
    dimensionOf(unit) === dimensionOfFact(test)
      ? []
      : [rulesError({ tag: 'WrongRuleUnit', fact: test, found: unit, needed: dimensionOfFact(test) }, id)],
  );
