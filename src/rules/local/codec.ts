/** The shape of a user's rule file, as it comes out of JSON. What the names in it mean is checked in local.ts. */
import * as t from 'io-ts';
import { inShort } from '../../units/internal.js';

const printed = t.type({ value: t.string });
const share = t.type({ times: t.string, of: t.string });

const condition = t.intersection([
  t.type({ test: t.string, operator: t.string, unit: t.string }),
  t.partial({ value: t.string, times: t.string, of: t.string }),
]);

const rule = t.intersection([
  t.type({
    id: t.string,
    topic: t.string,
    jurisdiction: t.string,
    all: t.array(condition),
    effectWhen: t.keyof({ holds: null, fails: null }),
    effect: t.string,
    exceptions: t.array(t.string),
    clause: t.string,
    grade: t.string,
    read: t.string,
    source: t.string,
  }),
  t.partial({
    bindsWhere: t.string,
    when: t.array(t.string),
    unless: t.array(t.string),
    alsoPrinted: t.string,
    dated: t.string,
    caution: t.string,
  }),
]);

const stepTable = t.intersection([
  t.type({
    id: t.string,
    topic: t.string,
    jurisdiction: t.string,
    test: t.string,
    operator: t.string,
    unit: t.string,
    steps: t.array(t.type({ class: t.string, upTo: t.string })),
    effective: t.string,
    clause: t.string,
    source: t.string,
    grade: t.string,
    read: t.string,
  }),
  t.partial({ above: t.string }),
]);

/** The whole file. `notice` is for people: what the file is, and that it is invented when it is. */
export const localFile = t.intersection([
  t.type({
    jurisdictions: t.array(t.type({ id: t.string, name: t.string })),
    rules: t.array(rule),
    stepTables: t.array(stepTable),
  }),
  t.partial({ notice: t.string }),
]);

export type LocalFile = t.TypeOf<typeof localFile>;
export type FileRule = t.TypeOf<typeof rule>;
export type FileCondition = t.TypeOf<typeof condition>;
export type FileStepTable = t.TypeOf<typeof stepTable>;

/** The fields each kind of record may have; any other is a slip of the pen and is refused. */
export const fields = {
  file: ['jurisdictions', 'rules', 'stepTables', 'notice'],
  jurisdiction: ['id', 'name'],
  rule: [
    'id',
    'topic',
    'jurisdiction',
    'all',
    'effectWhen',
    'effect',
    'exceptions',
    'clause',
    'grade',
    'read',
    'source',
    'bindsWhere',
    'when',
    'unless',
    'alsoPrinted',
    'dated',
    'caution',
  ],
  condition: ['test', 'operator', 'unit', ...Object.keys(printed.props), ...Object.keys(share.props)],
  stepTable: [
    'id',
    'topic',
    'jurisdiction',
    'test',
    'operator',
    'unit',
    'steps',
    'above',
    'effective',
    'clause',
    'source',
    'grade',
    'read',
  ],
  step: ['class', 'upTo'],
} as const;

/** The first place where the shape is wrong, as a path and what was found there. */
export function firstFault(errors: t.Errors): { path: string; found: string; needed: string } {
  // Where alternatives were tried, the deepest complaint is the one about the figure the user wrote.
  const deepest = errors.reduce((best, next) => (next.context.length > best.context.length ? next : best));
  const last = deepest.context[deepest.context.length - 1];
  // The parts of an intersection stand in the context under their number; they are no part of the file.
  const keys = deepest.context
    .filter((_, i) => i > 0 && !(deepest.context[i - 1]?.type instanceof t.IntersectionType))
    .map(({ key }) => key);
  return { path: keys.join('.'), found: inShort(last?.actual), needed: last?.type.name ?? 'a rule file' };
}
