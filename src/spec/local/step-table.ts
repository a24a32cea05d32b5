/** A step table of a State: registration classes, fees by weight. */
import { left, right } from 'fp-ts/lib/Either.js';
import { compare, quantity } from '../../units/index.js';
import { type Fault, fault, isRecord, pathOf } from '../codec/fault.js';
import { made } from '../codec/forms.js';
import type { Coded } from '../codec/kind.js';
import { choice, list } from '../codec/plain.js';
import { record } from '../codec/record.js';
import type { DecodedStepTable } from '../types/made.js';
import type { StepTableForm, StepTableInput } from '../types/rules.js';
import { digits } from './digits.js';
import { gradeCodec, longText, said, weightNames, weightUnits } from './rule.js';

const step = record('Step', 'a step of a table', { class: longText, upTo: digits }, {});

const tableForm: Coded<StepTableForm, StepTableInput> = record(
  'StepTable',
  'a step table of a State',
  {
    id: longText,
    topic: longText,
    jurisdiction: longText,
    test: choice(...weightNames),
    operator: choice('<', '<='),
    unit: choice(...weightUnits),
    steps: list('steps', step, 1000, 1),
    effective: longText,
    clause: longText,
    source: longText,
    grade: gradeCodec,
    read: longText,
  },
  { above: longText },
);

/** A step table whose steps rise. */
export const stepTableCodec: Coded<DecodedStepTable, StepTableInput> = made(
  tableForm,
  (form, context) => {
    const faults: Fault[] = [];
    form.steps.forEach(({ upTo }, i) => {
      const before = form.steps[i - 1];
      if (before === undefined || compare(quantity(upTo, 'lb'), quantity(before.upTo, 'lb')) > 0) return;
      const path = `${pathOf(context)}.steps.${i}.upTo`;
      const got = `${upTo} after ${before.upTo}`;
      faults.push(fault(upTo, context, 'contradiction', 'steps that rise', { path, got }));
    });
    return faults.length > 0 ? left(faults) : right(said(form) as DecodedStepTable);
  },
  (table) => table as StepTableForm,
  (input): input is DecodedStepTable => isRecord(input),
);
