/** Which published lines does this combination cross? */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Decision, needsVerification } from '../../trace/index.js';
import { dimensionOf } from '../../units/index.js';
import { type RulesError, rulesError } from '../errors.js';
import { dimensionOfFact, type Facts } from '../facts.js';
import { federalRules } from '../federal/federal.js';
import { generalCaution, type Rule } from '../rule.js';
import { type Answer, answer, askedYesNo, distanceText } from './compare.js';
import { consistent } from './consistency.js';

export type Outcome = 'applies' | 'does not apply' | 'cannot tell';

/** What one rule says to the facts given. It never says that something is allowed. */
export interface Finding {
  readonly rule: Rule;
  /** Whether what the rule says follows. A limit applies when it has been passed. */
  readonly outcome: Outcome;
  /** Every comparison the outcome rests on, written out, with its distance to the line. */
  readonly answers: readonly Answer[];
  /** What somebody must find out before the rule can answer. Empty unless the outcome is `cannot tell`. */
  readonly missing: readonly string[];
  /** True when the text of the rule, or of the one whose reach it shares, should be looked up first. */
  readonly verify: boolean;
  readonly caution: string;
  readonly decisions: readonly Decision[];
}

/** The findings, and every comparison of figures they rest on: while these stand, so do the findings. */
export interface Screening {
  readonly findings: readonly Finding[];
  readonly decisions: readonly Decision[];
}

/** All of them: no when one is no, otherwise not known when one is not known. */
/** Of three values: no if any is no, else unknown if any is unknown. */
function allOf(values: readonly (boolean | undefined)[]): boolean | undefined {
  if (values.includes(false)) return false;
  return values.includes(undefined) ? undefined : true;
}

const all = (answers: readonly Answer[]): boolean | undefined => allOf(answers.map(({ holds }) => holds));

const not = (holds: boolean | undefined): boolean | undefined => (holds === undefined ? undefined : !holds);

function outcomeOf(follows: boolean | undefined): Outcome {
  if (follows === undefined) return 'cannot tell';
  return follows ? 'applies' : 'does not apply';
}

function judge(rule: Rule, base: Rule | undefined, facts: Facts): Finding {
  const reach = [
    ...(base === undefined ? [] : reachOf(base, facts)),
    ...(rule.when ?? []).map((fact) => askedYesNo(fact, true, facts)),
    ...(rule.unless ?? []).map((fact) => askedYesNo(fact, false, facts)),
  ];
  const tested = rule.all.map((condition) => answer(rule, condition, facts));
  const met = all(tested);
  const follows = allOf([all(reach), rule.effectWhen === 'holds' ? met : not(met)]);
  const answers = [...reach, ...tested];
  return {
    rule,
    answers,
    outcome: outcomeOf(follows),
    missing: follows === undefined ? [...new Set(answers.flatMap(({ missing }) => missing))] : [],
    verify:
      needsVerification(rule.grade, 'regulation') ||
      (base !== undefined && needsVerification(base.grade, 'regulation')),
    caution: rule.caution === undefined ? generalCaution : `${rule.caution} ${generalCaution}`,
    decisions: answers.flatMap(({ decision }) => (decision === undefined ? [] : [decision])),
  };
}

/** The conditions of the rule whose reach another one shares. */
const reachOf = (base: Rule, facts: Facts): readonly Answer[] => [
  ...(base.when ?? []).map((fact) => askedYesNo(fact, true, facts)),
  ...(base.unless ?? []).map((fact) => askedYesNo(fact, false, facts)),
  ...base.all.map((condition) => answer(base, condition, facts)),
];

/** The rule that `bindsWhere` names: it must be known, stand on its own, and take effect when its condition holds. */
export function baseOf(
  rule: Rule,
  rules: readonly Rule[],
  path: string = rule.id,
): Either<RulesError, Rule | undefined> {
  if (rule.bindsWhere === undefined) return right(undefined);
  const fit = [...rules, ...federalRules].filter(
    (base) => base.bindsWhere === undefined && base.effectWhen === 'holds',
  );
  const found = fit.find(({ id }) => id === rule.bindsWhere);
  return found === undefined
    ? left(
        rulesError({ tag: 'UnknownRule', found: rule.bindsWhere, known: [...new Set(fit.map(({ id }) => id))] }, path),
      )
    : right(found);
}

/**
 * Which published lines does this combination cross, and how far away are the others?
 *
 * A rule applies when its questions are answered yes and its condition holds (for a limit: fails). Each fact is converted
 * exactly to the unit the rule prints and compared with the printed operator: 10,000 lb and 10,001 lb are two answers,
 * although both are printed as 4,536 kg. `distance = figure - line`.
 *
 * Not a statement that a combination is lawful; not State law, except for the rules a user brings.
 *
 * @param facts what is known about the job, in any unit of weight or length: ratings from labels, weights from tickets. A
 * fact left out makes the rules that need it answer `cannot tell`, unless what is known settles them.
 * @param rules `federalRules`, and whatever `decodeLocalRules` made of a user's file
 * @returns one finding for every rule, in the order of the rules. Left `ContradictoryFacts`, `OutOfRange`, `WrongRuleUnit`,
 * `UnknownFact`, `UnknownRule`.
 * @example screen({ 'trailer GVWR': lb(10000), 'overall width': inch(102) }, federalRules) // Right: conspicuity does not apply, rear guard applies
 * @source the clause of each rule; the reading of missing facts is our own
 */
export function screen(facts: Facts, rules: readonly Rule[]): Either<RulesError, Screening> {
  const asked = askable(facts, rules);
  if (isLeft(asked)) return asked;
  const findings = asked.right.rules.map(({ rule, base }) => judge(rule, base, facts));
  return right({ findings, decisions: [...asked.right.decisions, ...findings.flatMap(({ decisions }) => decisions)] });
}

/** Rules that can be asked, each with the rule whose reach it shares, and the comparisons by which the facts agree. */
export interface Askable {
  readonly rules: readonly { readonly rule: Rule; readonly base: Rule | undefined }[];
  readonly decisions: readonly Decision[];
}

/**
 * Can these rules be asked of these facts?
 *
 * Nothing is judged: facts must agree with each other, and each rule must stand in a unit that its facts have.
 *
 * @returns the rules with what they lean on; Left as `screen`
 * @example askable({ 'trailer GVWR': lb(10000) }, federalRules)._tag // Right
 * @source the reading of facts is our own
 */
export function askable(facts: Facts, rules: readonly Rule[]): Either<RulesError, Askable> {
  const sound = consistent(facts);
  if (isLeft(sound)) return sound;
  const asked: { rule: Rule; base: Rule | undefined }[] = [];
  for (const rule of rules) {
    const base = baseOf(rule, rules);
    if (isLeft(base)) return base;
    for (const { test, unit } of rule.all) {
      if (dimensionOf(unit) !== dimensionOfFact(test))
        return left(
          rulesError({ tag: 'WrongRuleUnit', fact: test, found: unit, needed: dimensionOfFact(test) }, rule.id),
        );
    }
    asked.push({ rule, base: base.right });
  }
  return right({ rules: asked, decisions: sound.right });
}

/** A finding in one line. @example findingText(finding).startsWith('commercial motor vehicle: cannot tell') // true */
export function findingText({ rule, outcome, answers, missing, verify }: Finding): string {
  const compared = answers.map(({ text, distance }) =>
    distance === undefined ? text : `${text} (${distanceText(distance)})`,
  );
  const parts = [
    `${rule.topic}: ${outcome}${outcome === 'applies' ? `: ${rule.effect}` : ''}`,
    ...(compared.length === 0 ? [] : [compared.join('; ')]),
    ...(missing.length === 0 ? [] : [`not given: ${missing.join(', ')}`]),
  ];
  return `${parts.join('. ')}. [${rule.clause}; read ${rule.read}${verify ? '; verify' : ''}]`;
}
