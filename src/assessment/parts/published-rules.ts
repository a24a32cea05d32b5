/** Which published lines the combination of a spec crosses, its axle groups, and its place in the user's step tables. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../../ratings/index.js';
import {
  type AxleGroupFinding,
  askable,
  type Facts,
  type Finding,
  federalRules,
  type LocalRules,
  type Rule,
  type RulesError,
  type StepFinding,
  screen,
  weightClassForFacts,
} from '../../rules/index.js';
import type { DecodedSpec } from '../../spec/index.js';
import { collected } from '../../units/internal.js';
import { answered } from './answered.js';
import type { OpenQuestion } from './open-questions.js';
import { emptyPart, type Part } from './part-of-answer.js';
import { type AxlesOfRig, rigAxleGroups } from './rig-axle-groups.js';
import { ruleFacts } from './rule-facts.js';
import { unhitched } from './wanting-keys.js';
import type { Weighed } from './weights.js';

/** The facts for the published rules. `ruleFindings` evaluates them on demand, because many callers and every study need only loads and reserves. */
export interface LinesPart {
  /** The facts of the spec, in the names the rules use. */
  readonly facts: Facts;
  /** The federal rules, then the user's own. */
  readonly asked: readonly Rule[];
  /** Remarks: what was assumed, and where sources disagree. */
  readonly notes: readonly Note[];
  /** Every run of consecutive axles, where places and loads of all are known and the spec says how groups are counted. */
  readonly groups: readonly AxleGroupFinding[];
  /** The place of the rig in each step table that the spec brings. */
  readonly steps: readonly { readonly topic: string; readonly finding: StepFinding }[];
  /** What is not right and is no check of a rating: axles of truck and trailer that cannot stand so. */
  readonly attention: readonly Note[];
  /** Open questions, each with the missing facts. */
  readonly notChecked: readonly OpenQuestion[];
}

interface Rig extends AxlesOfRig {
  readonly weighed: Weighed;
}

/** A step table whose fact is not known narrows the answer; a weight beyond its last step is an answer of the table. */
function stepsOf(local: LocalRules | undefined, facts: Facts): Pick<LinesPart, 'steps' | 'notChecked'> {
  const read = (local?.stepTables ?? []).map((table, at) => ({ at, table, found: weightClassForFacts(table, facts) }));
  return {
    steps: collected(read, ({ table, found }) => (isLeft(found) ? [] : [{ topic: table.topic, finding: found.right }])),
    notChecked: collected(read, ({ at, table, found }) =>
      isLeft(found)
        ? [
            {
              id: `rules/steps/table-${at + 1}`,
              what: table.topic,
              missing: `a ${table.test} within the table`,
              paths: [`rules.local.stepTables.${at}.steps`],
            },
          ]
        : [],
    ),
  };
}

/**
 * The facts as the rules are asked with them. That they do not contradict each other, and that the user's own rules can be asked, is settled here.
 *
 * If the spec claims weights are within ratings but a weight exceeds its rating, the claim is ignored and a note says so.
 */
function factsThatAgree(
  facts: Facts,
  own: readonly Rule[],
): Either<RulesError, { readonly facts: Facts; readonly notes: readonly Note[] }> {
  const told = askable(facts, own);
  const sound =
    isLeft(told) && told.left.tag === 'ContradictoryFacts' && facts['actual weights within ratings'] === true
      ? { ...facts, 'actual weights within ratings': false }
      : facts;
  const again = sound === facts ? told : askable(sound, own);
  if (isLeft(again)) return again;
  const says =
    'The spec says that actual weights are within the ratings; a gross weight is above its GVWR, and the published lines are read by that.';
  return right({ facts: sound, notes: sound === facts ? [] : [note('NotWithinRatings', says)] });
}

const findingsByPart = new WeakMap<LinesPart, readonly Finding[]>();

/**
 * Which published rules does this combination meet, federal ones first, then the user's own?
 *
 * Computed once for each answer and cached. Decisions of findings are not in the answer's list, because rows of a study carry no findings.
 *
 * @param part `rules` of an assessment
 * @returns one finding a question, in the order of the rules: a duty applies or not, a limit is kept or crossed
 * @example ruleFindings(orThrow(assess(spec)).rules).length > 20 // true
 * @source each rule carries its own
 */
export function ruleFindings(part: LinesPart): readonly Finding[] {
  const known = findingsByPart.get(part);
  if (known !== undefined) return known;
  const screened = screen(part.facts, part.asked);
  const findings = isLeft(screened) ? [] : screened.right.findings;
  findingsByPart.set(part, findings);
  return findings;
}

const axlesNotKnown = (spec: DecodedSpec): OpenQuestion => ({
  id: 'axle-groups',
  what: 'axle groups',
  missing: 'every axle of truck and trailer on the ground, wheelbase and measured overhang',
  paths: unhitched(spec, 'front', 'rear', 'wheelbase', 'overhang'),
});

/** Screens the spec against the federal lines and whatever local rules it brings. */
export function linesPart(rig: Rig): Either<RulesError, LinesPart> {
  const { rules } = rig.spec;
  const local = rules?.local;
  const grouped = rigAxleGroups(rig);
  const crossed = isLeft(grouped)
    ? answered(
        grouped,
        { id: 'axle-groups', what: 'axle groups', path: 'trailer.axles' },
        (part): Pick<Part, 'attention' | 'notChecked'> => part,
      )
    : emptyPart;
  const groups = isLeft(grouped) ? undefined : grouped.right;
  const facts = ruleFacts(rig.spec, rig.weighed, groups);
  const own = local?.rules ?? [];
  const screened = factsThatAgree(facts, own);
  if (isLeft(screened)) return screened;
  const { steps, notChecked } = stepsOf(local, facts);
  const asked = rules?.axleGroups !== undefined;
  const unasked = asked && !isLeft(grouped) && groups === undefined ? [axlesNotKnown(rig.spec)] : [];
  return right({
    facts: screened.right.facts,
    asked: [...federalRules, ...own],
    notes: screened.right.notes,
    groups: asked ? (groups ?? []) : [],
    attention: crossed.attention,
    steps,
    notChecked: [...notChecked, ...crossed.notChecked, ...unasked],
  });
}
