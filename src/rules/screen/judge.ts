/** From comparisons to findings: what each rule says, and what alternatives say together. */
import { needsVerification } from '../../trace/index.js';
import { collected, own } from '../../units/internal.js';
import type { Facts } from '../facts.js';
import { generalCaution, type Rule } from '../rule.js';
import { type Answer, answer, askedYesNo } from './compare.js';
import type { DutyFinding, DutyOutcome, Finding, LimitFinding, LimitOutcome, Outcome } from './finding.js';
import type { Book, RulesOfQuestion } from './questions.js';

/** No when one is no, otherwise not known when one is not known. */
function allOf(values: readonly (boolean | undefined)[]): boolean | undefined {
  if (values.includes(false)) return false;
  return values.includes(undefined) ? undefined : true;
}

const holdsOf = (answers: readonly Answer[]): readonly (boolean | undefined)[] => answers.map(({ holds }) => holds);

/** The outcome of another finding that a rule refers to: `commercial motor vehicle: applies`. */
function leaning({ topic, outcome, missing }: Finding, wanted: DutyOutcome): Answer {
  const holds = outcome === 'cannot be told' ? undefined : outcome === wanted;
  return { text: `${topic}: ${outcome}`, holds, missing };
}

function dutyOutcome(binds: boolean | undefined, met: boolean | undefined): DutyOutcome {
  const follows = allOf([binds, met]);
  if (follows === undefined) return 'cannot be told';
  return follows ? 'applies' : 'does not apply';
}

function limitOutcome(binds: boolean | undefined, met: boolean | undefined): LimitOutcome {
  if (binds === false) return 'does not apply';
  if (binds === undefined || met === undefined) return 'cannot be told';
  return met ? 'kept' : 'crossed';
}

/** One rule evaluated on the facts, with the findings that it refers to. */
interface Row {
  readonly rule: Rule;
  readonly answers: readonly Answer[];
  readonly bases: readonly Finding[];
  readonly says: Pick<DutyFinding, 'kind' | 'outcome'> | Pick<LimitFinding, 'kind' | 'outcome'>;
}

/** The findings that a rule refers to, each with the outcome needed for the rule to bind. */
const leansOn = (
  rule: Rule,
  findingOf: (id: string) => Finding,
): readonly { readonly base: Finding; readonly wanted: DutyOutcome }[] => {
  const [binds, excepts] = [own(rule, 'bindsWhere'), own(rule, 'exceptWhere')];
  return [
    ...(binds === undefined ? [] : [{ base: findingOf(binds), wanted: 'applies' as const }]),
    ...(excepts === undefined ? [] : [{ base: findingOf(excepts), wanted: 'does not apply' as const }]),
  ];
};

function ask(rule: Rule, facts: Facts, findingOf: (id: string) => Finding): Row {
  const bases = leansOn(rule, findingOf);
  const asked = [
    ...(own(rule, 'when') ?? []).map((fact) => askedYesNo(fact, true, facts)),
    ...(own(rule, 'unless') ?? []).map((fact) => askedYesNo(fact, false, facts)),
    ...(own(rule, 'where') ?? []).map((condition) => answer(rule, condition, facts)),
  ];
  const reach = [...bases.map(({ base, wanted }) => leaning(base, wanted)), ...asked];
  // Of what a rule does not refer to, its conditions are not asked.
  const tested = allOf(holdsOf(asked)) === false ? [] : rule.all.map((condition) => answer(rule, condition, facts));
  const nothingThere = [...asked, ...tested].some(({ absent }) => absent === true);
  const binds = nothingThere ? false : allOf(holdsOf(reach));
  const met = allOf(holdsOf(tested));
  return {
    rule,
    answers: [...reach, ...tested],
    bases: bases.map(({ base }) => base),
    says:
      rule.kind === 'duty'
        ? { kind: rule.kind, outcome: dutyOutcome(binds, met) }
        : { kind: rule.kind, outcome: limitOutcome(binds, met) },
  };
}

/** Of alternatives the one that fits decides; else one that cannot be decided leaves the question open. */
const order: readonly Outcome[] = ['crossed', 'applies', 'kept', 'cannot be told', 'does not apply'];

function unlike(answers: readonly Answer[]): readonly Answer[] {
  const byText = new Map(answers.map((each) => [each.text, each]));
  return [...byText.values()];
}

const toBeVerified = ({ rule, bases }: Row): boolean =>
  needsVerification(rule.grade, 'regulation') || bases.some(({ verify }) => verify);

function judge(group: RulesOfQuestion, facts: Facts, findingOf: (id: string) => Finding): Finding {
  const rows = group.rows.map((rule) => ask(rule, facts, findingOf));
  const rank = ({ says }: Row): number => order.indexOf(says.outcome);
  const { rule, says } = rows.reduce((best, row) => (rank(row) < rank(best) ? row : best));
  const speaking = rows.filter((row) => row.says.outcome === says.outcome);
  const open = says.outcome === 'cannot be told';
  const fits = !open && says.outcome !== 'does not apply';
  const caution = own(rule, 'caution');
  const answers = unlike(speaking.flatMap((row) => row.answers));
  return {
    id: group.id,
    topic: fits || rows.length === 1 ? rule.topic : group.topic,
    ...says,
    rule,
    rows: rows.map((row) => ({ rule: row.rule, outcome: row.says.outcome, answers: row.answers })),
    answers,
    missing: open ? [...new Set(collected(answers, ({ missing }) => missing))] : [],
    verify: speaking.some(toBeVerified),
    caution: caution === undefined ? generalCaution : `${caution} ${generalCaution}`,
    decisions: [
      ...collected(rows, (row) => collected(row.bases, ({ decisions }) => decisions)),
      ...collected(unlike(collected(rows, (row) => row.answers)), ({ decision }) =>
        decision === undefined ? [] : [decision],
      ),
    ],
  };
}

/** One finding for each question, in their order; a question that refers to another is evaluated after it. */
export function findingsOf(groups: readonly RulesOfQuestion[], book: Book, facts: Facts): readonly Finding[] {
  const known = new Map<string, Finding>();
  const findingOf = (id: string): Finding => {
    const earlier = known.get(id);
    if (earlier !== undefined) return earlier;
    const finding = judge(book.get(id) as RulesOfQuestion, facts, findingOf);
    known.set(id, finding);
    return finding;
  };
  return groups.map(({ id }) => findingOf(id));
}
