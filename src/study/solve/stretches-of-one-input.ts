/**
 * The range of one input, cut where the program takes another branch: in each stretch one recorded working is valid.
 */
import { isLeft } from 'fp-ts/lib/Either.js';
import { type Assessment, assessJson } from '../../assessment/index.js';
import { holdsFor } from '../../trace/index.js';
import { compareDecimals, type Decimal } from '../../units/internal.js';
import { changed } from '../plan/spec-paths.js';
import { figureAt, zerosOf } from './zeros-of-a-working.js';

/** Two ends and the assessment recorded between them, or why there is none. */
export interface Stretch {
  readonly from: Decimal;
  readonly to: Decimal;
  readonly assessment?: Assessment;
  readonly whyNone: 'no answer beyond' | 'what is checked changes';
}

/** The most stretches that an input is cut into. */
const mostStretches = 200;

/** Positions in a stretch, as shares, at which it is assessed. */
const asked = ['0.5', '0.25', '0.75', '0.1', '0.9', '0.01', '0.99', '0.0001', '0.9999'] as const;

export type AssessAt = (x: Decimal) => Assessment | undefined;

/** `assess` with another figure at a path, in the unit that its leaf has; the figure keeps what it rests on. */
export const assessAt =
  (base: unknown, path: string, unit: string, basis: string): AssessAt =>
  (x) => {
    const assessed = assessJson(changed(base, { [path]: { value: x.toFixed(), unit, basis } }));
    return isLeft(assessed) ? undefined : assessed.right;
  };

/** The stretch around x in which a recorded working is valid: every decision has the same outcome. */
function stretch(
  { decisions }: Assessment,
  path: string,
  x: Decimal,
  from: Decimal,
  to: Decimal,
): { from: Decimal; to: Decimal } {
  const cuts = decisions.flatMap(({ left, right }) => zerosOf(left, right, path, from, to).at);
  const same = (y: Decimal): boolean =>
    decisions.every(({ left, right, comparison, holds }) => {
      const [a, b] = [figureAt(left, path, y), figureAt(right, path, y)];
      return !a.isNaN() && !b.isNaN() && holdsFor(compareDecimals(a, b), comparison) === holds;
    });
  const [below, above] = [cuts.filter((cut) => cut.lt(x)), cuts.filter((cut) => cut.gt(x))];
  const low = below.reduce((best, cut) => (cut.gt(best) ? cut : best), from);
  const high = above.reduce((best, cut) => (cut.lt(best) ? cut : best), to);
  return same(low.plus(x).div(2)) && same(high.plus(x).div(2)) ? { from: low, to: high } : { from: x, to: x };
}

/** Stretches from one end to the other; gaps are no wider than a bracket. */
export function stretchesOf(at: AssessAt, path: string, low: Decimal, high: Decimal): readonly Stretch[] {
  const stretches: Stretch[] = [];
  const open: { from: Decimal; to: Decimal }[] = [{ from: low, to: high }];
  for (let part = open.pop(); part !== undefined && stretches.length < mostStretches; part = open.pop()) {
    const { from, to } = part;
    if (to.minus(from).lte('1e-9')) continue;
    let whyNone: Stretch['whyNone'] = 'no answer beyond';
    const found = asked.reduce<Stretch | undefined>((earlier, share) => {
      if (earlier !== undefined) return earlier;
      const x = from.plus(to.minus(from).times(share));
      const assessment = at(x);
      if (assessment !== undefined) whyNone = 'what is checked changes';
      const reach = assessment === undefined ? undefined : stretch(assessment, path, x, from, to);
      return assessment === undefined || reach === undefined || reach.from.eq(reach.to)
        ? undefined
        : { ...reach, assessment, whyNone };
    }, undefined);
    stretches.push(found ?? { ...part, whyNone });
    if (found !== undefined) open.push({ from, to: found.from }, { from: found.to, to });
  }
  return stretches.sort((a, b) => a.from.comparedTo(b.from));
}
