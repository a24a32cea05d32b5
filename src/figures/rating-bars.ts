/** Every limit, what bears on it, and which one governs: one bar a check. */
import type { Assessment } from '../assessment/index.js';
import type { Check } from '../ratings/index.js';
import { compare, lb, subtract } from '../units/index.js';
import { groupOf, groups } from './check-groups.js';
import { element, label } from './drawing/element.js';
import { paint } from './drawing/look.js';
import { bare, capacityText, loadText, plain } from './drawing/numbers.js';
import { type FigureOptions, framed, type Setting, settingOf } from './drawing/options.js';
import { broken } from './drawing/words.js';
import { bar } from './one-bar.js';

/** The least and the greatest share of a limit that a check may use, for its whisker. */
export interface SureBetween {
  /** The id of the check: `gvwr`. */
  readonly id: string;
  /** Share of the limit at the least. */
  readonly from: number;
  /** Share of the limit at the most. */
  readonly to: number;
}

export interface RatingBarOptions extends FigureOptions {
  /** How sure a check is: a whisker from the least to the greatest share of its limit. */
  readonly sure?: readonly SureBetween[];
}

/** The text to the right of a bar. */
function remainder({ load, limit, reserve, verdict }: Check, { units }: Setting): string {
  if (compare(load.value, lb(0)) < 0) return 'lifts';
  return verdict === 'over'
    ? `over by ${loadText(subtract(load.value, limit.value), units)}`
    : `${capacityText(reserve.value, units)} left`;
}

interface Drawn {
  readonly parts: readonly string[];
  readonly height: number;
}

function row(check: Check, governs: boolean, y: number, setting: Setting, sure: SureBetween | undefined): Drawn {
  const { width, narrow, units } = setting;
  const style = { bold: governs, ...(check.verdict === 'over' && { fill: paint('over') }) };
  const name = `${check.what}${governs ? ', governs' : ''}`;
  const lines = broken(name, (narrow ? width - 8 : width * 0.39 - 12) / (governs ? 1.1 : 1));
  const figures = `${bare(loadText(check.load.value, units))} of ${capacityText(check.limit.value, units)}`;
  const named = lines.map((text, i) => label(2, y + 12 + i * 14, text, style));
  if (narrow) {
    const top = y + lines.length * 14 + 4;
    return {
      parts: [
        ...named,
        bar(check, { x: 2, y: top, width: width - 12, height: 12 }, setting, governs, sure),
        label(2, top + 25, figures, style),
        label(width - 2, top + 25, remainder(check, setting), { ...style, anchor: 'end' }),
      ],
      height: lines.length * 14 + 38,
    };
  }
  return {
    parts: [
      ...named,
      bar(check, { x: width * 0.39, y: y + 2, width: width * 0.22, height: 12 }, setting, governs, sure),
      label(width * 0.81, y + 12, figures, { ...style, anchor: 'end' }),
      label(width - 2, y + 12, remainder(check, setting), { ...style, anchor: 'end' }),
    ],
    height: Math.max(20, lines.length * 14 + 6),
  };
}

const shareOf = ({ load, limit }: Check): number => plain(load) / plain(limit);

/** The checks of a group, the governing ones first, then by the share they use. */
const inOrder = (checks: readonly Check[], governing: readonly Check[]): readonly Check[] =>
  [...checks].sort((a, b) => Number(governing.includes(b)) - Number(governing.includes(a)) || shareOf(b) - shareOf(a));

/**
 * Which limit is the closest, and how much is left of each?
 *
 * One bar a check: its full width to the mark is the limit, the load fills it, what is over goes on past the mark. Groups in the order whole
 * trailer, axles and tires, hitch, truck, other; within each by the share used, the governing one first and bold. Loads are
 * rounded up, limits and what is left down.
 *
 * Does not show open questions, nor warnings that are not rating checks: those are on the first page.
 *
 * @param assessment from `assess`: its checks and which of them is the tightest; @param options units, prefix of ids, width; whiskers
 * @returns the text of an SVG
 * @example ratingBars(orThrow(assess(spec))).startsWith('<svg') // true
 * @source each check carries its own
 */
export function ratingBars(
  { checks, tightest }: Pick<Assessment, 'checks' | 'tightest'>,
  options: RatingBarOptions = {},
): string {
  const setting = settingOf(options, 'bars');
  const parts: string[] = [];
  let y = 0;
  for (const group of groups) {
    const own = checks.filter((check) => groupOf(check) === group);
    if (own.length === 0) continue;
    parts.push(label(2, y + 14, group, { fill: paint('steel') }));
    y += 20;
    for (const check of inOrder(own, tightest)) {
      const sure = options.sure?.find(({ id }) => id === check.id);
      const drawn = row(check, tightest.includes(check), y, setting, sure);
      parts.push(element('g', { 'data-check': check.id }, ...drawn.parts));
      y += drawn.height;
    }
    y += 8;
  }
  if (checks.length === 0) {
    parts.push(label(2, 14, 'nothing could be checked'));
    y = 24;
  }
  const over = checks.filter(({ verdict }) => verdict === 'over');
  const worst = tightest.map(({ what }) => what).join(' and ');
  return framed(setting, {
    title: 'Every load against the rating that limits it',
    description:
      checks.length === 0
        ? 'Nothing could be checked.'
        : `${checks.length} checks. Closest to its limit: ${worst}. ${over.length === 0 ? 'No check is over.' : `Over: ${over.map(({ what }) => what).join('; ')}.`} Each bar is as long as the share of its limit that is used; the mark is the limit.`,
    height: y,
    parts,
  });
}
