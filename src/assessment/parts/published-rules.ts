/** Which published lines the combination of a spec crosses, its axle groups, and its place in the user's step tables. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import type { AxleGroup } from '../../axles/index.js';
import { type Note, note } from '../../ratings/index.js';
import {
  type AxleGroupFinding,
  askable,
  axleGroups,
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
import { constant, type Derived, decide, greatestOf, inInches, inPounds, plus, sum } from '../../trace/index.js';
import { inch, lb } from '../../units/index.js';
import { signOf } from '../../units/internal.js';
import type { AxleLoad } from './axle-and-tire-loads.js';
import type { NotChecked } from './not-checked.js';
import type { TowPart } from './tow-part.js';
import type { Weighed } from './weights.js';

/** What the published rules are asked with. `ruleFindings` asks them: most who want loads and reserves never do, and a study never does. */
export interface LinesPart {
  /** The facts of the spec, in the names the rules use. */
  readonly facts: Facts;
  /** The federal rules, then the user's own. */
  readonly asked: readonly Rule[];
  readonly notes: readonly Note[];
  /** Every run of consecutive axles, where places and loads of all are known and the spec says how groups are counted. */
  readonly groups: readonly AxleGroupFinding[];
  readonly steps: readonly { readonly topic: string; readonly finding: StepFinding }[];
  readonly notChecked: readonly NotChecked[];
}

interface Rig {
  readonly spec: DecodedSpec;
  readonly weighed: Weighed;
  readonly group: AxleGroup | undefined;
  readonly axleLoads: readonly AxleLoad[];
  readonly tow: TowPart;
}

const nothing = constant(lb(0));

/** Axles from the front of the truck to the rear of the trailer, as far as places and loads are known. */
function groupsOf({
  spec: { tow, rules },
  group,
  axleLoads,
  tow: { hitched },
}: Rig): Either<RulesError, { readonly groups: readonly AxleGroupFinding[] } | undefined> {
  const { overhang, wheelbase } = tow ?? {};
  if (
    rules?.axleGroups === undefined ||
    hitched === undefined ||
    group === undefined ||
    wheelbase === undefined ||
    overhang === undefined ||
    overhang === 'unknown'
  )
    return right(undefined);
  const base = inInches('wheelbase', wheelbase);
  const ball = plus(base, inInches('overhang', overhang));
  const axles = [
    { behind: constant(inch(0)), weight: hitched.front },
    { behind: base, weight: hitched.rear },
    ...group.axles.map(({ at }, i) => ({ behind: plus(ball, at), weight: (axleLoads[i] as AxleLoad).load })),
  ];
  // A lifted axle is told by the checks; it has no group to be weighed in.
  if (axles.some(({ weight }) => !decide(weight, '>', nothing).holds)) return right(undefined);
  return axleGroups(axles, rules.axleGroups);
}

/** The heaviest of the groups that count as one axle, or as a tandem. */
function heaviest(groups: readonly AxleGroupFinding[], kind: AxleGroupFinding['kind']): Derived<'lb'> | undefined {
  const loads = groups.flatMap((group) => (group.kind === kind && group.check !== undefined ? [group.check.load] : []));
  return loads.length === 0 ? undefined : greatestOf(`heaviest ${kind}`, loads);
}

/** The facts of a spec, in the names the rules use. What the spec does not say stays out. */
function factsOf(
  { spec: { trailer, tow, cargo = [], rules }, weighed: { gross, curb, balance } }: Rig,
  groups: readonly AxleGroupFinding[],
): Facts {
  const truck =
    tow?.front === undefined || tow.rear === undefined
      ? undefined
      : sum('tow vehicle gross', [
          inPounds('tow vehicle front axle', tow.front),
          inPounds('tow vehicle rear axle', tow.rear),
        ]);
  const article =
    cargo.length === 0
      ? undefined
      : greatestOf(
          'heaviest piece of cargo',
          cargo.map(({ name, weight }) => inPounds(`${name} weight`, weight)),
        );
  const [single, tandem] = [heaviest(groups, 'single'), heaviest(groups, 'tandem')];
  const chain = trailer.chains && inPounds('breaking strength of a chain', trailer.chains.each);
  return {
    'trailer GVWR': trailer.gvwr,
    'trailer gross': gross,
    'trailer unloaded': curb,
    'tow vehicle GVWR': tow?.gvwr,
    'tow vehicle gross': truck,
    'towing axle weights': truck,
    'weight on tow vehicle': balance?.tongue,
    'trailer axle weights': balance?.axleLoad,
    'cargo article weight': article && signOf(article.value.value) > 0 ? article : undefined,
    'heaviest single axle': single,
    'heaviest tandem': tandem,
    'safety device strength': trailer.chains?.count === 2 && chain ? sum('chains together', [chain, chain]) : chain,
    'overall width': trailer.width,
    'overall length': trailer.length,
    commercial: rules?.commercial,
    interstate: rules?.interstate,
    'actual weights within ratings': rules?.actualWithinRatings,
    'label GCWR': rules?.labelGcwr,
    'full trailer': false,
  };
}

/** A step table whose fact is not known narrows the answer; a weight beyond its last step is an answer of the table. */
function stepsOf(local: LocalRules | undefined, facts: Facts): Pick<LinesPart, 'steps' | 'notChecked'> {
  const read = (local?.stepTables ?? []).map((table) => ({ table, found: weightClassForFacts(table, facts) }));
  return {
    steps: read.flatMap(({ table, found }) => (isLeft(found) ? [] : [{ topic: table.topic, finding: found.right }])),
    notChecked: read.flatMap(({ table, found }) =>
      isLeft(found) ? [{ what: table.topic, missing: `a ${table.test} within the table` }] : [],
    ),
  };
}

/**
 * The facts as the rules are asked with them. That they do not contradict each other, and that the user's own rules can be asked, is settled here.
 *
 * An overload is an answer: that all is within its ratings is not taken as told where the weights contradict it, and that is said.
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
 * Asked once an answer; the same list is handed out again. Findings keep their decisions to themselves: a study's rows carry no findings.
 *
 * @param part `rules` of an assessment
 * @returns one finding a rule, in the order of the rules
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

/** Screens the spec against the federal lines and whatever local rules it brings. */
export function linesPart(rig: Rig): Either<RulesError, LinesPart> {
  const { rules } = rig.spec;
  const local = rules?.local;
  const grouped = groupsOf(rig);
  if (isLeft(grouped)) return left({ ...grouped.left, path: grouped.left.path ?? 'rules.axleGroups' });
  const groups = grouped.right?.groups ?? [];
  const facts = factsOf(rig, groups);
  const own = local?.rules ?? [];
  const screened = factsThatAgree(facts, own);
  if (isLeft(screened)) return screened;
  const { steps, notChecked } = stepsOf(local, facts);
  const unasked =
    rules?.axleGroups !== undefined && grouped.right === undefined
      ? [
          {
            what: 'axle groups',
            missing: 'every axle of truck and trailer on the ground, wheelbase and measured overhang',
          },
        ]
      : [];
  return right({
    ...screened.right,
    asked: [...federalRules, ...own],
    groups,
    steps,
    notChecked: [...notChecked, ...unasked],
  });
}
