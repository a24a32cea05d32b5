/** A rule of a State: the facts it tests, its printed figures, and what follows. */
import { left, right } from 'fp-ts/lib/Either.js';
import {
  computedWeights,
  type LengthFact,
  lengthFacts,
  operators,
  ruleKinds,
  weightFacts,
  yesNoFacts,
} from '../../rules/index.js';
import type { Grade } from '../../trace/index.js';
import { allUnits, dimensionOf, type UnitOf } from '../../units/index.js';
import { type Fault, fault, isRecord, pathOf } from '../codec/fault.js';
import { made } from '../codec/forms.js';
import type { Coded } from '../codec/kind.js';
import { choice, list, textUpTo } from '../codec/plain.js';
import { record } from '../codec/record.js';
import type { DecodedLocalRule, DecodedRuleCondition } from '../types/made.js';
import type { LocalRuleForm, LocalRuleInput, RuleConditionForm, RuleConditionInput } from '../types/rules.js';
import { digits } from './digits.js';

const grades: readonly Grade[] = ['A', 'B', 'C', 'derived', 'memory'];
/** How sure the copy is that was read. */
export const gradeCodec = choice(...grades);
/** A text of a rule file: long, and on one line. */
export const longText = textUpTo(2000);
/** The weights that a rule or a table may test. */
export const weightNames = [...weightFacts, ...computedWeights] as const;

const unitsOf = <D extends 'mass' | 'length'>(dimension: D): readonly UnitOf<D>[] =>
  allUnits.filter((unit) => dimensionOf(unit) === dimension) as unknown as readonly UnitOf<D>[];
/** The units of weight. */
export const weightUnits = unitsOf('mass');
const lengthUnits = unitsOf('length');

const conditionForm: Coded<RuleConditionForm, RuleConditionInput> = record(
  'RuleCondition',
  'a condition of a rule',
  {
    test: choice(...weightNames, ...lengthFacts),
    operator: choice(...operators),
    unit: choice(...weightUnits, ...lengthUnits),
  },
  { value: digits, times: digits, of: choice(...weightNames) },
);

const isLength = (name: string): name is LengthFact => (lengthFacts as readonly string[]).includes(name);

/** Either a printed figure, or a share of another weight. */
function lineOf({ test, value, times, of }: RuleConditionForm): DecodedRuleCondition['line'] | undefined {
  if (value !== undefined && times === undefined && of === undefined) return { value };
  return value === undefined && times !== undefined && of !== undefined && !isLength(test) ? { times, of } : undefined;
}

const written = (form: RuleConditionForm): string =>
  Object.entries(form)
    .filter(([, value]) => value !== undefined)
    .map(([key]) => key)
    .join(', ');

const conditionCodec: Coded<DecodedRuleCondition, RuleConditionInput> = made(
  conditionForm,
  (form, context) => {
    const { test, operator, unit } = form;
    const faults: Fault[] = [];
    const dimension = isLength(test) ? 'length' : 'mass';
    if (dimensionOf(unit) !== dimension) {
      const path = `${pathOf(context)}.unit`;
      faults.push(fault(unit, context, 'contradiction', `a unit of ${dimension}, as "${test}" is measured`, { path }));
    }
    const line = lineOf(form);
    if (line === undefined) {
      const needed = isLength(test) ? 'a value' : 'either value, or times and of';
      faults.push(fault(form, context, 'contradiction', needed, { got: written(form) }));
    }
    return faults.length > 0 || line === undefined
      ? left(faults)
      : right({ test, operator, line, unit } as DecodedRuleCondition);
  },
  ({ test, operator, line, unit }) => ({ test, operator, unit, ...line }) as RuleConditionForm,
  (input): input is DecodedRuleCondition => isRecord(input) && isRecord(input['line']),
);

const ruleForm: Coded<LocalRuleForm, LocalRuleInput> = record(
  'LocalRule',
  'a rule of a State',
  {
    id: longText,
    topic: longText,
    jurisdiction: longText,
    all: list('conditions', conditionCodec, 100, 1),
    kind: choice(...ruleKinds),
    effect: longText,
    exceptions: list('exceptions', longText),
    clause: longText,
    grade: gradeCodec,
    read: longText,
    source: longText,
  },
  {
    bindsWhere: longText,
    when: list('questions that must be answered yes', choice(...yesNoFacts)),
    unless: list('questions that must be answered no', choice(...yesNoFacts)),
    alsoPrinted: longText,
    dated: longText,
    caution: longText,
  },
);

/** The same record without its undefined keys. */
export const said = <R extends object>(form: R): R =>
  Object.fromEntries(Object.entries(form).filter(([, value]) => value !== undefined)) as R;

/** A rule: its form without undefined keys. */
export const ruleCodec: Coded<DecodedLocalRule, LocalRuleInput> = made(
  ruleForm,
  (form) => right({ ...said(form), when: form.when ?? [], unless: form.unless ?? [] } as DecodedLocalRule),
  (rule) => rule as LocalRuleForm,
  (input): input is DecodedLocalRule => isRecord(input),
);
