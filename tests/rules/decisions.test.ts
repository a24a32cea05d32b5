/** Every comparison that an answer on rules depends on is in its decisions; a guard of a figure above zero refuses and is not one. */
import { describe, expect, it } from 'vitest';
import {
  type AxleGroupFinding,
  axleGroupLimit,
  axleGroups,
  brakeException,
  type CombinationWeights,
  commercialByWeight,
  coupledAxleLoad,
  federalRules,
  gcwrByDefinition,
  licenceGroup,
  type StepTable,
  screen,
  surgeBrakes,
  weightClassFor,
  weightClassForFacts,
} from '../../src/rules/index.js';
import { type Decision, recordingDecisions } from '../../src/trace/index.js';
import { foot, inch, lb, percent, show } from '../../src/units/index.js';
import { facts, orFail } from './helpers.js';

const plain = { tie: 'down', lengthRounding: 'none' } as const;
const pair: CombinationWeights = {
  powerUnit: { gvwr: lb(11000), gross: lb(9000) },
  towed: [{ gvwr: lb(14000), gross: 'not above GVWR' }],
  labelGcwr: lb(26000),
};
const table: StepTable = {
  id: 'invented',
  topic: 'invented steps',
  jurisdiction: 'nowhere',
  test: 'combined gross',
  operator: '<=',
  unit: 'lb',
  steps: [
    { class: 'light', upTo: '10000' },
    { class: 'middle', upTo: '20000' },
  ],
  above: 'heavy',
  effective: '2026-01',
  clause: 'none',
  source: 'invented',
  grade: 'A',
  read: '2026-11',
};
const job = facts('tow vehicle gross: 7400 lb, trailer gross: 12400 lb, trailer unloaded: 3000 lb');
const placed = (...inches: readonly number[]) => inches.map((at) => ({ behind: inch(at) }));
const decisionsOf = (findings: readonly AxleGroupFinding[]): readonly Decision[] =>
  findings.flatMap(({ decisions }) => decisions);

const questions: Readonly<Record<string, () => { readonly decisions: readonly Decision[] }>> = {
  'a group of axles': () => orFail(axleGroupLimit({ count: 3, length: foot(9), twoTandems: false }, plain)),
  'two tandems of 36 ft': () => orFail(axleGroupLimit({ count: 4, length: foot(36), twoTandems: true }, plain)),
  'every group of a rig': () => orFail(axleGroups(placed(0, 48, 384, 432), plain)),
  'the brake exception': () =>
    orFail(
      brakeException({
        kind: 'full trailer',
        gross: lb(3000),
        trailerAxleWeights: lb(2000),
        towingAxleWeights: lb(5000),
      }),
    ),
  'the axles of a coupled trailer': () =>
    orFail(coupledAxleLoad({ gvwr: lb(7000), tongueShare: percent(10), sumOfGawrs: lb(7000) })),
  'the rating of a combination': () => orFail(gcwrByDefinition(pair)),
  'the commercial line': () => orFail(commercialByWeight(pair)),
  'the licence group': () => orFail(licenceGroup(pair)),
  'surge brakes on a light trailer': () => orFail(surgeBrakes({ gvwr: lb(10500), gross: lb(9000) }, lb(6000))),
  'surge brakes on a heavy trailer': () => orFail(surgeBrakes({ gvwr: lb(14000), gross: lb(9000) }, lb(12000))),
  'surge brakes beyond their range': () => orFail(surgeBrakes({ gvwr: lb(20001), gross: lb(9000) }, lb(30000))),
  'a step table': () => orFail(weightClassFor(table, lb(19800))),
  'a step table, from the facts of a job': () => orFail(weightClassForFacts(table, job)),
  'a rule that leans on others': () =>
    orFail(
      screen(
        { ...job, ...facts('commercial: yes, interstate: yes, trailer GVWR: 14000 lb, full trailer: no') },
        federalRules.filter(({ id }) => id === 'breakaway'),
      ),
    ),
  'a screening': () =>
    orFail(
      screen(
        { ...job, ...facts('commercial: yes, interstate: yes, trailer GVWR: 14000 lb, overall width: 102 in') },
        federalRules,
      ),
    ),
};

const isGuard = ({ comparison, right, holds }: Decision): boolean =>
  comparison === '>' && right.value.value.isZero() && holds;
/** Two rules with the same line in print ask the same, and it is handed on once. */
const written = ({ left, comparison, right, holds }: Decision): string =>
  `${left.symbol} ${show(left.value)} ${comparison} ${show(right.value)}: ${holds}`;

describe('decisions handed on by', () => {
  it.each(Object.entries(questions))('%s', (_, ask) => {
    const { result, decisions } = recordingDecisions(ask);
    const own = new Set(result.decisions.map(written));
    expect(decisions.filter((each) => !own.has(written(each)) && !isGuard(each)).map(written)).toEqual([]);
  });
  it('each group of axles, its own among them', () => {
    const { groups, decisions } = orFail(axleGroups(placed(0, 48, 384, 432), plain));
    expect(decisions).toEqual(expect.arrayContaining([...decisionsOf(groups)]));
    expect(decisions).toHaveLength(decisionsOf(groups).length + 3);
  });
});
