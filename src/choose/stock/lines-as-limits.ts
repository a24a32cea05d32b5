/** Published lines as bounds: what is the most of each weight that stays on this side of a line? */
import { type Assessment, ruleFindings } from '../../assessment/index.js';
import type { Outcome, RuleKind } from '../../rules/index.js';
import { type Derived, derivatives } from '../../trace/index.js';
import { convert, type Quantity, type Unit } from '../../units/index.js';
import { type Decimal, ofDecimal } from '../../units/internal.js';

/** The most that one weight of the spec may be. */
export interface MostOf {
  /** Its key in the spec: `cargo.0.weight`, `trailer.gvwr`. */
  readonly path: string;
  /** Its name. */
  readonly name: string;
  /** What it is now, lb. */
  readonly now: Quantity<'lb'>;
  /** What it may be at most with everything else as it is, lb. */
  readonly most: Quantity<'lb'>;
}

/** A line, how far it is away, and what reaches it. */
export interface LineAsLimit {
  /** The id of the rule, of alternatives each by its own, or the topic of the table of steps. */
  readonly id: string;
  /** A duty begins at its line, a limit ends there; a table of steps is neither. */
  readonly kind: RuleKind | 'steps';
  /** What the rule says now; absent for a table of steps. */
  readonly outcome?: Outcome;
  /** What it is about, and for a table of steps the class now and the next. */
  readonly topic: string;
  /** What may still be added before the line, lb; below zero when it is crossed. */
  readonly room: Quantity<'lb'>;
  /** True when the line itself is on this side: an exact tie crosses nothing. */
  readonly lineIncluded: boolean;
  /** Each weight that the line reads, and the most it may be. */
  readonly most: readonly MostOf[];
}

const inLb = (figure: Quantity<Unit>): Quantity<'lb'> => convert(figure as Quantity<'kg'>, 'lb') as Quantity<'lb'>;

const isMass = ({ unit }: Quantity<Unit>): boolean => ['lb', 'kg', 't'].includes(unit);

/** The weights of the spec that a room or a distance reads, each with the most it may be: `now + room / what a pound takes of it`. */
function mostOf(figure: Derived<Unit>, counts: 'room' | 'distance'): readonly MostOf[] {
  return derivatives(figure).slopes.flatMap(({ leaf, slope }): readonly MostOf[] => {
    const takes = counts === 'room' ? slope.isNegative() : slope.gt(0);
    if (leaf.kind !== 'given' || leaf.path === undefined || !takes || !isMass(leaf.value)) return [];
    const most = leaf.value.value.minus(figure.value.value.div(slope));
    if (most.isNegative()) return [];
    return [
      {
        path: leaf.path,
        name: leaf.symbol,
        now: inLb(leaf.value),
        most: inLb(ofDecimal(most, leaf.value.unit) as Quantity<Unit>),
      },
    ];
  });
}

/**
 * What is the most of each weight that stays on this side of every published line?
 *
 * Rules and tables of steps, federal and local, as bounds: `most = now + room / slope`, room the distance to the line, slope what a
 * pound of that weight takes of it. Exact where the weights add up, as they do in the texts.
 *
 * Not legal advice: each rule carries its date and grade, and the text in force governs.
 *
 * @param assessment from `assess`; local rules come with the spec
 * @returns the lines that test weights and are all known, the nearest first, lb
 * @example linesAsLimits(orThrow(assess(spec))).length > 3 // true
 * @source each rule carries its own
 */
export function linesAsLimits(assessment: Assessment): readonly LineAsLimit[] {
  const found: LineAsLimit[] = [];
  const rows = ruleFindings(assessment.rules).flatMap((finding) => finding.rows);
  for (const { rule, outcome, answers } of rows)
    for (const { distance, missing, decision } of answers) {
      if (distance === undefined || missing.length > 0 || decision === undefined || !isMass(distance.value)) continue;
      const strict = decision.comparison === '<' || decision.comparison === '>=';
      const room = ofDecimal(distance.value.value.negated(), distance.value.unit) as Quantity<Unit>;
      found.push({
        id: rule.id,
        kind: rule.kind,
        outcome,
        topic: rule.topic,
        room: inLb(room),
        lineIncluded: !strict,
        most: mostOf(distance, 'distance'),
      });
    }
  for (const { topic, finding } of assessment.rules.steps)
    if (finding.remaining !== undefined)
      found.push({
        id: topic,
        kind: 'steps',
        topic: `${topic}: ${finding.class}${finding.next === undefined ? '' : `, then ${finding.next}`}`,
        room: inLb(finding.remaining.value),
        lineIncluded: finding.decisions.some(({ comparison }) => comparison === '<='),
        most: mostOf(finding.remaining, 'room'),
      });
  const size = (line: LineAsLimit): Decimal => line.room.value.abs();
  return found.sort((a, b) => size(a).comparedTo(size(b)));
}
