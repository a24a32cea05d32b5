/** The rules of a State as a user brings them: places, rules, step tables. */
import { left, right } from 'fp-ts/lib/Either.js';
import type * as t from 'io-ts';
import { federalRules, type Rule, rulesByQuestion } from '../../rules/index.js';
import { type Fault, fault, isRecord, pathOf } from '../codec/fault.js';
import { made } from '../codec/forms.js';
import type { Coded } from '../codec/kind.js';
import { list } from '../codec/plain.js';
import { record } from '../codec/record.js';
import type { DecodedLocalRules } from '../types/made.js';
import type { LocalRulesForm, LocalRulesInput } from '../types/rules.js';
import { readOnce } from './read-once.js';
import { longText, ruleCodec } from './rule.js';
import { stepTableCodec } from './step-table.js';

const fileForm: Coded<LocalRulesForm, LocalRulesInput> = record(
  'LocalRules',
  'rules of a State',
  {
    jurisdictions: list('places', record('Jurisdiction', 'a place', { id: longText, name: longText }, {})),
    rules: list('rules', ruleCodec),
    stepTables: list('step tables', stepTableCodec),
  },
  { notice: longText },
);

type Place = readonly [key: 'rules' | 'stepTables', index: number];
const placesOf = ({
  rules,
  stepTables,
}: LocalRulesForm): readonly { readonly place: Place; readonly id: string; readonly jurisdiction: string }[] => [
  ...rules.map(({ id, jurisdiction }, i) => ({ place: ['rules', i] as const, id, jurisdiction })),
  ...stepTables.map(({ id, jurisdiction }, i) => ({ place: ['stepTables', i] as const, id, jurisdiction })),
];

const federalQuestions = rulesByQuestion(federalRules);
const federalDuties = federalQuestions.filter(({ rows }) => rows[0].kind === 'duty').map(({ id }) => id);

/** Names that nobody declared, ids used twice, and rules that bind where no rule does. */
function faultsIn(file: LocalRulesForm, context: t.Context): readonly Fault[] {
  const faults: Fault[] = [];
  const at = ([key, i]: Place, field: string): string =>
    [pathOf(context), key, i, field].filter((part) => part !== '').join('.');
  const known = file.jurisdictions.map(({ id }) => id).filter((id) => id !== 'federal');
  const ids = new Set([...federalRules, ...federalQuestions].map(({ id }) => id));
  for (const { place, id, jurisdiction } of placesOf(file)) {
    if (!known.includes(jurisdiction))
      faults.push(
        fault(jurisdiction, context, 'contradiction', `one of the places of this file: ${known.join(', ')}`, {
          path: at(place, 'jurisdiction'),
        }),
      );
    if (ids.has(id))
      faults.push(
        fault(id, context, 'contradiction', 'an id that no other rule or table has', { path: at(place, 'id') }),
      );
    ids.add(id);
  }
  const standsAlone = ({ kind, bindsWhere }: Rule): boolean => kind === 'duty' && bindsWhere === undefined;
  const bases = [...file.rules.filter(standsAlone).map(({ id }) => id), ...federalDuties];
  file.rules.forEach(({ bindsWhere }, i) => {
    if (bindsWhere !== undefined && !bases.includes(bindsWhere))
      faults.push(
        fault(
          bindsWhere,
          context,
          'contradiction',
          `the id of a federal duty, or of one of this file that stands on its own: ${bases.join(', ')}`,
          {
            path: at(['rules', i], 'bindsWhere'),
          },
        ),
      );
  });
  return faults;
}

/** A file of local rules. */
export const localRulesCodec: Coded<DecodedLocalRules, LocalRulesInput> = readOnce(
  made(
    fileForm,
    (file, context) => {
      const faults = faultsIn(file, context);
      if (faults.length > 0) return left(faults);
      const { jurisdictions, rules, stepTables } = file;
      return right({ jurisdictions, rules, stepTables });
    },
    (rules) => rules as LocalRulesForm,
    (input): input is DecodedLocalRules => isRecord(input),
  ),
);
