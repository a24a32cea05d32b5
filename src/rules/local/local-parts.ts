/** The parts of a user's rule file, one by one: names from closed lists, units, digits, conditions, steps, stray fields. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import type { Grade } from '../../trace/index.js';
import {
  allUnits,
  compare,
  dimensionOf,
  isUnit,
  parseQuantity,
  type Quantity,
  type Unit,
  type UnitOf,
} from '../../units/index.js';
import { type RulesError, rulesError } from '../errors.js';
import {
  computedWeights,
  dimensionOfFact,
  type FactName,
  isFactName,
  isWeightName,
  isYesNoFact,
  lengthFacts,
  type WeightName,
  weightFacts,
  type YesNoFact,
  yesNoFacts,
} from '../facts.js';
import { type Condition, type Line, type Operator, operators } from '../rule.js';
import { firstLeft } from '../screen/consistency.js';
import { type FileCondition, fields, type LocalFile } from './codec.js';
import type { Step } from './steps.js';

export const grades: readonly Grade[] = ['A', 'B', 'C', 'derived', 'memory'];
const tested = [...weightFacts, ...computedWeights, ...lengthFacts];
type Read<A> = Either<RulesError, A>;

/** A name from a closed list, or the error that names the list. */
export function oneOf<A extends string>(
  tag: 'UnknownOperator' | 'UnknownFact' | 'UnknownGrade' | 'UnknownJurisdiction',
  list: readonly A[],
  found: string,
  path: string,
): Read<A> {
  const name = list.find((candidate) => candidate === found);
  return name === undefined ? left(rulesError({ tag, found, known: list }, path)) : right(name);
}

export function unitFor(fact: FactName, found: string, path: string): Read<UnitOf<'mass'> | UnitOf<'length'>> {
  const needed = dimensionOfFact(fact);
  if (!isUnit(found))
    return left(
      rulesError({ tag: 'UnknownUnit', found, known: allUnits.filter((unit) => dimensionOf(unit) === needed) }, path),
    );
  return dimensionOf(found) === needed
    ? right(found as UnitOf<'mass'>)
    : left(rulesError({ tag: 'WrongRuleUnit', fact, found, needed }, path));
}

/** Digits greater than zero, and nothing else. A plain number has no word behind it, so its digits are read as if in percent. */
function digits(text: string, unit: Unit, path: string): Read<Quantity<Unit>> {
  const word = unit === 'ratio' ? '%' : unit;
  const read = parseQuantity(`${text} ${word}`, word);
  return isLeft(read) || !read.right.value.gt(0)
    ? left(
        rulesError(
          { tag: 'UnreadableRules', found: `"${text}"`, needed: 'digits of a figure greater than zero' },
          path,
        ),
      )
    : right(read.right);
}

function lineOf(file: FileCondition, test: FactName, unit: Unit, path: string): Read<Line> {
  const { value, times, of } = file;
  if (value !== undefined && times === undefined && of === undefined) {
    const read = digits(value, unit, `${path}.value`);
    return isLeft(read) ? read : right({ value: plain(read.right) });
  }
  if (value !== undefined || times === undefined || of === undefined || !isWeightName(test)) {
    return left(
      rulesError(
        {
          tag: 'UnreadableRules',
          found: Object.keys(file).join(', '),
          needed: isWeightName(test) ? 'either value, or times and of' : 'a value',
        },
        path,
      ),
    );
  }
  const share = digits(times, 'ratio', `${path}.times`);
  if (isLeft(share)) return share;
  const other = oneOf<WeightName>('UnknownFact', [...weightFacts, ...computedWeights], of, `${path}.of`);
  return isLeft(other) ? other : right({ times: plain(share.right), of: other.right });
}

const plain = (figure: Quantity<Unit>): string => figure.value.toFixed();

export function conditionOf(file: FileCondition, path: string): Read<Condition> {
  if (!isFactName(file.test))
    return left(rulesError({ tag: 'UnknownFact', found: file.test, known: tested }, `${path}.test`));
  const operator = oneOf<Operator>('UnknownOperator', operators, file.operator, `${path}.operator`);
  if (isLeft(operator)) return operator;
  const unit = unitFor(file.test, file.unit, `${path}.unit`);
  if (isLeft(unit)) return unit;
  const line = lineOf(file, file.test, unit.right, path);
  return isLeft(line)
    ? line
    : right({ test: file.test, operator: operator.right, line: line.right, unit: unit.right } as Condition);
}

export function questions(names: readonly string[], path: string): Read<readonly YesNoFact[]> {
  return firstLeft(
    names.map(
      (name, i): Read<YesNoFact> =>
        isYesNoFact(name)
          ? right(name)
          : left(rulesError({ tag: 'UnknownFact', found: name, known: yesNoFacts }, `${path}.${i}`)),
    ),
  );
}

export function risingSteps(file: readonly Step[], unit: UnitOf<'mass'>, path: string): Read<readonly Step[]> {
  if (file.length === 0)
    return left(rulesError({ tag: 'UnreadableRules', found: 'no step', needed: 'at least one step' }, path));
  const figures = firstLeft(file.map(({ upTo }, i) => digits(upTo, unit, `${path}.${i}.upTo`)));
  if (isLeft(figures)) return figures;
  const fall = figures.right.findIndex(
    (figure, i) => i > 0 && compare(figure, figures.right[i - 1] as Quantity<Unit>) <= 0,
  );
  if (fall >= 0)
    return left(
      rulesError(
        {
          tag: 'UnreadableRules',
          found: `${file[fall]?.upTo} after ${file[fall - 1]?.upTo}`,
          needed: 'steps that rise',
        },
        `${path}.${fall}.upTo`,
      ),
    );
  return right(file.map((step, i) => ({ class: step.class, upTo: plain(figures.right[i] as Quantity<Unit>) })));
}

/** A field that no record of this kind has. */
function strayField(record: object, allowed: readonly string[], path: string): Read<true> {
  const stray = Object.keys(record).find((key) => !allowed.includes(key));
  return stray === undefined
    ? right(true)
    : left(
        rulesError(
          { tag: 'UnreadableRules', found: `the field "${stray}"`, needed: `only ${allowed.join(', ')}` },
          path === '' ? stray : `${path}.${stray}`,
        ),
      );
}

export function strayFields(file: LocalFile): Read<readonly true[]> {
  return firstLeft([
    strayField(file, fields.file, ''),
    ...file.jurisdictions.map((place, i) => strayField(place, fields.jurisdiction, `jurisdictions.${i}`)),
    ...file.rules.flatMap((rule, i) => [
      strayField(rule, fields.rule, `rules.${i}`),
      ...rule.all.map((part, j) => strayField(part, fields.condition, `rules.${i}.all.${j}`)),
    ]),
    ...file.stepTables.flatMap((table, i) => [
      strayField(table, fields.stepTable, `stepTables.${i}`),
      ...table.steps.map((step, j) => strayField(step, fields.step, `stepTables.${i}.steps.${j}`)),
    ]),
  ]);
}
