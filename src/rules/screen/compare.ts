/** One condition of one rule against the facts: the comparison, written out, and how far the line is away. */
import {
  type Decision,
  type Derived,
  decide,
  difference,
  fromTable,
  inUnit,
  leastOf,
  product,
} from '../../trace/index.js';
import { compare, quantity, ratio, show, showBrief, showUnit, type Unit } from '../../units/index.js';
import { collected, has, showApart } from '../../units/internal.js';
import type { Facts, YesNoFact } from '../facts.js';
import { type Condition, type Line, type Rule, sourceOfRule } from '../rule.js';
import type { Partly } from './partly-known.js';
import { resolve } from './resolve.js';

/** The answer to one condition. `holds` is undefined when a fact is missing. */
export interface Answer {
  /** `trailer GVWR 10,000 lb > 10,000 lb: no` */
  readonly text: string;
  /** What is tested is not there: `heaviest tandem: none`. */
  readonly absent?: true;
  readonly holds: boolean | undefined;
  readonly missing: readonly string[];
  /** The figure tested, in the unit of the rule. A lower bound when facts are missing. */
  readonly figure?: Derived<Unit>;
  readonly line?: Derived<Unit>;
  /** Figure less line: above zero when the figure is above the line. */
  readonly distance?: Derived<Unit>;
  readonly decision?: Decision;
}

/** A working in whatever unit the rule prints; that both sides have one dimension was checked when the rule was read. */
type Same = Derived<'lb'>;

const partIn = (part: Partly<Unit>, unit: Unit): Partly<'lb'> => ({
  figure: part.figure === undefined ? undefined : inUnit(part.figure as Same, unit as 'lb'),
  missing: part.missing,
  ...(part.absent && { absent: part.absent }),
});

interface Drawn extends Partly<'lb'> {
  readonly text: string;
}

function draw(rule: Rule, line: Line, unit: Unit, facts: Facts): Drawn {
  const from = { table: 'rules', key: rule.id, source: sourceOfRule(rule) };
  if (has(line, 'value')) {
    const printed = fromTable(`line of ${rule.topic}`, quantity(line.value, unit as 'lb'), from);
    return { figure: printed, missing: [], text: show(printed.value) };
  }
  if (has(line, 'times')) {
    const of = partIn(resolve(facts, line.of), unit);
    // A lower bound is not enough to draw a line with.
    if (of.figure === undefined || of.missing.length > 0)
      return { ...of, figure: undefined, text: `${line.times} x ${line.of} (${of.absent ? 'none' : 'not known'})` };
    const share = fromTable(`printed share of ${line.of}`, ratio(line.times), from);
    const figure = product(`line of ${rule.topic}`, share, of.figure);
    return {
      figure,
      missing: [],
      text:
        line.times === '1'
          ? `${line.of} ${showBrief(figure.value)}`
          : `${line.times} x ${line.of} ${showBrief(of.figure.value)} = ${showBrief(figure.value)}`,
    };
  }
  const parts = line.least.map((part) => draw(rule, part, unit, facts));
  const figures = collected(parts, ({ figure }) => (figure === undefined ? [] : [figure]));
  const missing = collected(parts, (part) => part.missing);
  const [absent] = parts.filter((part) => part.absent);
  return {
    ...(absent && { absent: true as const }),
    figure: absent || missing.length > 0 ? undefined : leastOf(`line of ${rule.topic}`, figures),
    missing,
    text: `least of (${parts.map(({ text }) => text).join(', ')})`,
  };
}

/** A figure for reading; with more than two decimals where these would hide that it is not on the line. */
function written(figure: Same, line: Same | undefined, original: Derived<Unit>): string {
  const onLine = line === undefined || compare(figure.value, line.value) === 0;
  const here = onLine ? showBrief(figure.value) : showApart(figure.value, showBrief(line.value));
  return original.value.unit === figure.value.unit ? here : `${here} (${showBrief(original.value)})`;
}

function yesNo(holds: boolean | undefined): string {
  if (holds === undefined) return 'cannot be told';
  return holds ? 'yes' : 'no';
}

/** Puts one condition to the facts. The fact is converted to the printed unit, exactly; the line stays as printed. */
export function answer(rule: Rule, condition: Condition, facts: Facts): Answer {
  const { test, operator, unit } = condition;
  const whole = resolve(facts, test);
  const { figure, missing } = partIn(whole, unit);
  const line = draw(rule, condition.line, unit, facts);
  if (whole.absent) return { text: `${test}: none`, holds: undefined, missing: [], absent: true };
  if (line.absent) return { text: `${test} ${operator} ${line.text}`, holds: undefined, missing: [], absent: true };
  if (figure === undefined || whole.figure === undefined)
    return {
      text: `${test} ${operator} ${line.text}: cannot be told`,
      holds: undefined,
      missing: [...missing, ...line.missing],
    };
  const partly = missing.length === 0 ? '' : 'at least ';
  const start = `${test} ${partly}${written(figure, line.figure, whole.figure)} ${operator} ${line.text}`;
  if (line.figure === undefined)
    return { text: `${start}: cannot be told`, holds: undefined, missing: [...missing, ...line.missing], figure };
  const decision = decide(figure, operator, line.figure);
  // A lower bound settles the question only by being above the line.
  const settled = missing.length === 0 || decision.holds === (operator === '>' || operator === '>=');
  const holds = settled ? decision.holds : undefined;
  const distance = difference(`distance to the line of ${rule.topic}`, figure, line.figure);
  return {
    text: `${start}: ${yesNo(holds)}`,
    holds,
    missing: settled ? [] : missing,
    figure,
    line: line.figure,
    distance,
    decision,
  };
}

/** A question that is answered yes or no. */
export function askedYesNo(fact: YesNoFact, wanted: boolean, facts: Facts): Answer {
  const given = facts[fact];
  if (given === undefined) return { text: `${fact}: cannot be told`, holds: undefined, missing: [fact] };
  return { text: `${fact}: ${yesNo(given)}`, holds: given === wanted, missing: [] };
}

/** `1 lb above the line`, `on the line`, `2,000 lb below the line`. @example distanceText(given('distance', lb(1))) // 1 lb above the line */
export function distanceText(distance: Derived<Unit>): string {
  const { value, unit } = distance.value;
  if (value.isZero()) return 'on the line';
  const size = showApart(quantity(value.abs(), unit), `0 ${showUnit(unit)}`);
  return `${size} ${value.isNegative() ? 'below' : 'above'} the line`;
}
