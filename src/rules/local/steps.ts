/** Step tables: which class a weight falls in, and how many pounds remain to the next. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import {
  type AnyWeight,
  asDerived,
  type Decision,
  type Derived,
  decide,
  difference,
  fromTable,
  type Grade,
  inUnit,
  needsVerification,
  type Source,
} from '../../trace/index.js';
import { dimensionOf, quantity, show, showBrief, type UnitOf } from '../../units/index.js';
import { own, showInWords, signOfFigure } from '../../units/internal.js';
import { type RulesError, rulesError } from '../errors.js';
import type { Facts, WeightName } from '../facts.js';
import { consistent } from '../screen/consistency.js';
import { weightOf } from '../screen/resolve.js';

/** One printed step: the class, and the weight it goes up to. */
export interface Step {
  readonly class: string;
  readonly upTo: string;
}

/** Registration classes, fee steps and the like. `<=`: a weight on a step belongs to it; `<`: to the next one. */
export interface StepTable {
  readonly id: string;
  readonly topic: string;
  readonly jurisdiction: string;
  readonly test: WeightName;
  readonly operator: '<' | '<=';
  readonly unit: UnitOf<'mass'>;
  readonly steps: readonly Step[];
  /** The class above the last step, when the table has one. */
  readonly above?: string;
  readonly effective: string;
  readonly clause: string;
  readonly source: string;
  readonly grade: Grade;
  readonly read: string;
}

export interface StepFinding {
  readonly class: string;
  /** The class that follows; absent in the last. */
  readonly next?: string;
  /** What may still be added in this class, in the unit of the table; absent in an open last class. */
  readonly remaining?: Derived<UnitOf<'mass'>>;
  readonly text: string;
  readonly verify: boolean;
  readonly decisions: readonly Decision[];
}

const sourceOf = (table: StepTable): Source => ({
  id: table.id,
  title: table.source,
  grade: table.grade,
  clause: table.clause,
  edition: `effective ${table.effective}, read ${table.read}`,
});

/**
 * Which class does this weight fall in, and how much may be added before the next?
 *
 * The first step with `weight <= step` (or `<`, as the table prints it); `remaining = step - weight`.
 *
 * With `<=` the remaining weight may be added in full; with `<` adding all of it is the next class already.
 *
 * @param table a table from `readLocalRules`
 * @param figure the weight the table asks for, any unit of weight; compared in the unit of the table
 * @returns Left `OutOfRange`, or `BeyondLastStep` above the last step of a table without an open end
 * @example weightClassFor(table, lb(19800)) // Right: class, 200 lb remain
 * @source the table of the user
 */
export function weightClassFor(table: StepTable, figure: AnyWeight): Either<RulesError, StepFinding> {
  const taken = asDerived(table.test, figure);
  if (dimensionOf(taken.value.unit) !== 'mass' || signOfFigure(taken.value) <= 0)
    return left(
      rulesError({
        tag: 'OutOfRange',
        what: table.test,
        found: showInWords(taken.value),
        needed: 'greater than zero',
      }),
    );
  const weighed = inUnit(taken, table.unit) as Derived<'lb'>;
  const decisions: Decision[] = [];
  for (const [i, step] of table.steps.entries()) {
    const line = fromTable(`step ${step.class}`, quantity(step.upTo, table.unit), {
      table: table.id,
      key: step.class,
      source: sourceOf(table),
    }) as Derived<'lb'>;
    const fits = decide(weighed, table.operator, line);
    decisions.push(fits);
    if (!fits.holds) continue;
    const next = table.steps[i + 1]?.class ?? own(table, 'above');
    const remaining = difference(`remaining in ${step.class}`, line, weighed);
    const text = `${table.test} ${showBrief(weighed.value)} ${table.operator} ${show(line.value)}: ${step.class}; ${showBrief(remaining.value)} to ${next ?? 'the end of the table'}`;
    return right({
      class: step.class,
      ...(next !== undefined && { next }),
      remaining,
      text,
      verify: needsVerification(table.grade, 'regulation'),
      decisions,
    });
  }
  const last = table.steps[table.steps.length - 1];
  const above = own(table, 'above');
  if (above === undefined)
    return left(
      rulesError({
        tag: 'BeyondLastStep',
        table: table.id,
        found: showInWords(weighed.value),
        last: last === undefined ? 'no step' : `${last.upTo} ${table.unit}`,
      }),
    );
  return right({
    class: above,
    text: `${table.test} ${showBrief(weighed.value)}: ${above}, above the last step`,
    verify: needsVerification(table.grade, 'regulation'),
    decisions,
  });
}

/**
 * The same from the facts of a job: the table says which weight it asks for.
 *
 * @returns Left `MissingFacts` when that weight is not wholly known, and whatever `screen` and `weightClassFor` refuse
 * @example weightClassForFacts(table, { 'tow vehicle gross': lb(7400), 'trailer gross': lb(12400) })
 * @source the table of the user
 */
export function weightClassForFacts(table: StepTable, facts: Facts): Either<RulesError, StepFinding> {
  const sound = consistent(facts);
  if (isLeft(sound)) return sound;
  const { figure, missing } = weightOf(facts, table.test);
  if (figure === undefined || missing.length > 0) {
    const asked = `the step of ${table.id}`;
    return left(rulesError({ tag: 'MissingFacts', asked, missing: missing.length > 0 ? missing : [table.test] }));
  }
  const step = weightClassFor(table, figure);
  return isLeft(step) ? step : right({ ...step.right, decisions: [...sound.right, ...step.right.decisions] });
}
