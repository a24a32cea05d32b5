/** Rules and step tables that a user brings: State brake lines, registration classes. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import type { UnitOf } from '../../units/index.js';
import { type RulesError, rulesError } from '../errors.js';
import { computedWeights, type WeightName, weightFacts } from '../facts.js';
import { federalRules } from '../federal/federal.js';
import type { Rule } from '../rule.js';
import { firstLeft } from '../screen/consistency.js';
import { baseOf } from '../screen/screen.js';
import { type FileRule, type FileStepTable, firstFault, localFile } from './codec.js';
import { conditionOf, grades, oneOf, questions, risingSteps, strayFields, unitFor } from './local-parts.js';
import type { StepTable } from './steps.js';

/** What a rule file says, checked. `rules` go to `screen`, tables to `weightClassFor`. */
export interface LocalRules {
  readonly jurisdictions: readonly { readonly id: string; readonly name: string }[];
  readonly rules: readonly Rule[];
  readonly stepTables: readonly StepTable[];
}

type Read<A> = Either<RulesError, A>;

function ruleOf(file: FileRule, places: readonly string[], path: string): Read<Rule> {
  const place = oneOf('UnknownJurisdiction', places, file.jurisdiction, `${path}.jurisdiction`);
  if (isLeft(place)) return place;
  const grade = oneOf('UnknownGrade', grades, file.grade, `${path}.grade`);
  if (isLeft(grade)) return grade;
  const all = firstLeft(file.all.map((condition, i) => conditionOf(condition, `${path}.all.${i}`)));
  if (isLeft(all)) return all;
  const when = questions(file.when ?? [], `${path}.when`);
  if (isLeft(when)) return when;
  const unless = questions(file.unless ?? [], `${path}.unless`);
  if (isLeft(unless)) return unless;
  if (file.all.length === 0)
    return left(
      rulesError({ tag: 'UnreadableRules', found: 'no condition', needed: 'at least one condition' }, `${path}.all`),
    );
  return right({
    ...file,
    jurisdiction: place.right,
    grade: grade.right,
    all: all.right,
    when: when.right,
    unless: unless.right,
  });
}

function stepTableOf(file: FileStepTable, places: readonly string[], path: string): Read<StepTable> {
  const place = oneOf('UnknownJurisdiction', places, file.jurisdiction, `${path}.jurisdiction`);
  if (isLeft(place)) return place;
  const grade = oneOf('UnknownGrade', grades, file.grade, `${path}.grade`);
  if (isLeft(grade)) return grade;
  const operator = oneOf('UnknownOperator', ['<', '<='] as const, file.operator, `${path}.operator`);
  if (isLeft(operator)) return operator;
  const test = oneOf<WeightName>('UnknownFact', [...weightFacts, ...computedWeights], file.test, `${path}.test`);
  if (isLeft(test)) return test;
  const unit = unitFor(test.right, file.unit, `${path}.unit`);
  if (isLeft(unit)) return unit;
  const steps = risingSteps(file.steps, unit.right as UnitOf<'mass'>, `${path}.steps`);
  if (isLeft(steps)) return steps;
  return right({
    ...file,
    jurisdiction: place.right,
    grade: grade.right,
    operator: operator.right,
    test: test.right,
    unit: unit.right as UnitOf<'mass'>,
    steps: steps.right,
  });
}

/**
 * What does this rule file say?
 *
 * The file is JSON: `jurisdictions` (the places its rules may name), `rules` (the fields of `Rule`, a condition having
 * `value`, or `times` and `of`) and `stepTables`. Figures are text, so that no digit is lost.
 *
 * No local rule is shipped: brake lines run from 1,500 to 5,000 lb with different operators and change. Bring the text of
 * your State, its date and its source.
 *
 * @param input what `JSON.parse` made of the file
 * @returns the rules and tables. Left with the path: `UnreadableRules` for the shape, a stray field, steps that do not rise
 * or an id used twice; `UnknownOperator`, `UnknownJurisdiction`, `UnknownFact`, `UnknownUnit`, `UnknownGrade`,
 * `UnknownRule`, `WrongRuleUnit`.
 * @example readLocalRules(JSON.parse(text)) // Right { jurisdictions, rules, stepTables }
 * @source the file of the user
 */
export function readLocalRules(input: unknown): Either<RulesError, LocalRules> {
  const shape = localFile.decode(input);
  if (isLeft(shape)) {
    const { path, found, needed } = firstFault(shape.left);
    return left(rulesError({ tag: 'UnreadableRules', found, needed }, path));
  }
  const file = shape.right;
  const stray = strayFields(file);
  if (isLeft(stray)) return stray;
  const places = file.jurisdictions.map(({ id }) => id).filter((id) => id !== 'federal');
  const rules = firstLeft(file.rules.map((rule, i) => ruleOf(rule, places, `rules.${i}`)));
  if (isLeft(rules)) return rules;
  const tables = firstLeft(file.stepTables.map((table, i) => stepTableOf(table, places, `stepTables.${i}`)));
  if (isLeft(tables)) return tables;
  const ids = [...federalRules, ...rules.right, ...tables.right].map(({ id }) => id);
  const twice = ids.find((id, i) => ids.indexOf(id) !== i);
  if (twice !== undefined)
    return left(
      rulesError({ tag: 'UnreadableRules', found: `the id "${twice}" twice`, needed: 'one rule an id' }, twice),
    );
  const bases = firstLeft(rules.right.map((rule, i) => baseOf(rule, rules.right, `rules.${i}.bindsWhere`)));
  return isLeft(bases)
    ? bases
    : right({ jurisdictions: file.jurisdictions, rules: rules.right, stepTables: tables.right });
}
