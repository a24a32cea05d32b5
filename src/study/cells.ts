/**
 * The range of one input, cut where the program goes another way: in each cell one recorded working speaks for every figure.
 */
import { isLeft } from 'fp-ts/lib/Either.js';
import { type Assessment, assess } from '../assessment/index.js';
import { holdsFor } from '../trace/index.js';
import { compareDecimals, type Decimal } from '../units/internal.js';
import { changed } from './spec-paths.js';
import { figureAt, zerosOf } from './zeros.js';

/** Between two ends, what `assess` recorded for a figure between them; without an assessment, why there is none. */
export interface Cell {
  readonly from: Decimal;
  readonly to: Decimal;
  readonly assessment?: Assessment;
  readonly unspoken: 'no answer beyond' | 'what is checked changes';
}

/** The most cells that an input is cut into. */
const mostCells = 200;

/** Shares of a stretch at which it is asked for an answer. */
const asked = ['0.5', '0.25', '0.75', '0.1', '0.9', '0.01', '0.99', '0.0001', '0.9999'] as const;

export type AssessAt = (x: Decimal) => Assessment | undefined;

/** `assess` with another figure at a path, in the unit that its leaf has; the figure keeps what it rests on. */
export const assessAt =
  (base: unknown, path: string, unit: string, basis: string): AssessAt =>
  (x) => {
    const assessed = assess(changed(base, { [path]: { value: x.toFixed(), unit, basis } }));
    return isLeft(assessed) ? undefined : assessed.right;
  };

/** The stretch around x for which a recorded working speaks: as far as each of its decisions falls out the same. */
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

/** Cells from one end to the other, without gaps but for the width of a bracket. */
export function cellsOf(at: AssessAt, path: string, low: Decimal, high: Decimal): readonly Cell[] {
  const cells: Cell[] = [];
  const open: { from: Decimal; to: Decimal }[] = [{ from: low, to: high }];
  for (let part = open.pop(); part !== undefined && cells.length < mostCells; part = open.pop()) {
    const { from, to } = part;
    if (to.minus(from).lte('1e-9')) continue;
    let unspoken: Cell['unspoken'] = 'no answer beyond';
    const cell = asked.reduce<Cell | undefined>((found, share) => {
      if (found !== undefined) return found;
      const x = from.plus(to.minus(from).times(share));
      const assessment = at(x);
      if (assessment !== undefined) unspoken = 'what is checked changes';
      const reach = assessment === undefined ? undefined : stretch(assessment, path, x, from, to);
      return assessment === undefined || reach === undefined || reach.from.eq(reach.to)
        ? undefined
        : { ...reach, assessment, unspoken };
    }, undefined);
    cells.push(cell ?? { ...part, unspoken });
    if (cell !== undefined) open.push({ from, to: cell.from }, { from: cell.to, to });
  }
  return cells.sort((a, b) => a.from.comparedTo(b.from));
}
