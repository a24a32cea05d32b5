/** Which input, when known, decides most? */
import { doubleOf } from '../../units/figure.js';
import type { Interval } from '../ranges/interval.js';
import type { Range } from '../ranges/range.js';
import type { Question } from './asked.js';
import type { Unsure } from './tolerances.js';

/** An input that is worth weighing or measuring. */
export interface WeighNext {
  /** Its key in the spec. */
  readonly path: string;
  /** Its name in formulas. */
  readonly symbol: string;
  /** How far it may be off now. */
  readonly amount: string;
  /** The checks that are sure once this one figure is found as stated. */
  readonly decides: readonly string[];
  /** Share of what keeps the open checks open that comes from this input, over all of them: 1 is a whole check. */
  readonly weight: number;
}

interface Open {
  readonly question: Question;
  readonly range: Range;
  readonly low: number;
  readonly high: number;
}

/** How far an input moves a figure on its bad side: toward less when the figure is well now, toward more when it is not. */
function pull({ low, high }: Interval, { leaf, between }: Unsure, well: boolean): number {
  const at = doubleOf(leaf.value);
  const [down, up] = [at - between.low, between.high - at];
  const toLess = Math.max(0, high * down, -low * up);
  const toMore = Math.max(0, -low * down, high * up);
  return well ? toLess : toMore;
}

/** The inputs that keep checks open, the one whose knowledge decides most first. */
export function weighNext(open: readonly Open[], inputs: readonly Unsure[]): readonly WeighNext[] {
  const found = inputs.map(({ path, symbol, amount }) => ({
    path,
    symbol,
    amount,
    decides: [] as string[],
    weight: 0,
  }));
  for (const { question, range, low, high } of open) {
    const well = doubleOf(question.figure.value) >= 0;
    const short = Math.max(well ? -low : high, 1e-9);
    for (const [i, slope] of range.slopes) {
      const of = pull(slope, inputs[i] as Unsure, well);
      const mine = found[i] as (typeof found)[number];
      mine.weight += Math.min(1, of / short);
      if (of >= short) mine.decides.push(question.what);
    }
  }
  return found
    .filter(({ weight }) => weight > 0)
    .sort((a, b) => b.decides.length - a.decides.length || b.weight - a.weight);
}
