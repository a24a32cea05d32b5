/** The report's section on published rules: those that apply or are near their line in full, the others counted. */
import { type Assessment, ruleFindings } from '../../assessment/index.js';
import { tightest } from '../../ratings/index.js';
import { type Finding, findingText, hasEffect, type Outcome } from '../../rules/index.js';
import { collected } from '../../units/internal.js';
import type { FiguresInPrint } from '../figures-in-print.js';
import { counted, remark } from '../text-layout.js';

/** Which published rules a report prints in full. */
export type RulesInFull = 'near' | 'all';

const order: Readonly<Record<Outcome, number>> = {
  crossed: 0,
  applies: 1,
  'cannot be told': 2,
  kept: 3,
  'does not apply': 4,
};

/** A figure within a twentieth of a line of its own. */
const isNear = ({ rows }: Finding): boolean =>
  collected(rows, ({ answers }) => answers).some(
    ({ line, distance }) =>
      line !== undefined && distance?.value.value.abs().times(20).lte(line.value.value.abs()) === true,
  );

/** A finding in full; one that is not federal with where it is from. */
const fullText = (finding: Finding): string =>
  finding.rule.jurisdiction === 'federal'
    ? findingText(finding)
    : `${finding.rule.jurisdiction}, ${findingText(finding)}`;

/** How many of the rules that are not printed say so, and how that is put. */
const counts: readonly (readonly [Outcome, one: string, more: string])[] = [
  ['kept', 'limit is kept', 'limits are kept'],
  ['does not apply', 'rule does not apply', 'rules do not apply'],
  ['cannot be told', 'rule cannot be told for want of facts', 'rules cannot be told for want of facts'],
];

/** The rules that are not printed, as one line. */
function others(findings: readonly Finding[]): readonly string[] {
  const parts = collected(counts, ([outcome, one, more]) => {
    const count = findings.filter((finding) => finding.outcome === outcome).length;
    return count === 0 ? [] : [counted(count, `other ${one}`, `other ${more}`)];
  });
  return parts.length === 0 ? [] : [remark(`${parts.join('; ')}.`)];
}

/** Published rules with the comparison, the distance, the clause and the date read; in the unit that each of them prints. */
export function ruleLines({ rules }: Assessment, p: FiguresInPrint, inFull: RulesInFull): readonly string[] {
  const { groups, steps } = rules;
  const findings = ruleFindings(rules);
  const [tight] = tightest(collected(groups, ({ check }) => (check ? [check] : [])));
  const closest = groups.find(({ check }) => check !== undefined && check === tight);
  const shown = [...findings]
    .sort((a, b) => order[a.outcome] - order[b.outcome])
    .filter((finding) => inFull === 'all' || hasEffect(finding) || isNear(finding));
  return [
    ...(closest?.check
      ? [
          remark(
            `Axle groups: ${groups.length} asked; closest to its limit are axles ${closest.first} to ${closest.last}, ${p.load(closest.check.load.value)} of ${p.capacity(closest.limit.value)}: ${closest.check.verdict}.`,
          ),
        ]
      : []),
    ...steps.map(({ topic, finding }) => remark(`${topic}: ${finding.text}${finding.verify ? ' [verify]' : ''}`)),
    ...shown.map((finding) => remark(fullText(finding))),
    ...others(findings.filter((finding) => !shown.includes(finding))),
    ...(findings.length === 0
      ? []
      : [
          remark(
            'These are published rules as read on the date shown, beside the facts given: not legal advice. The rule in force and State law govern; "verify" marks what was read in a copy.',
          ),
        ]),
  ];
}
