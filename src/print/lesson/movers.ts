/** What changes an answer most: so much more of each input, a step worth a look in its unit. */
import { type Derived, derivatives } from '../../trace/index.js';
import { inReaderUnits, type Quantity, type ReaderUnits, type Unit } from '../../units/index.js';
import { Decimal, ofDecimal } from '../../units/internal.js';
import type { LessonMover } from './lesson-data.js';

/** So much more of an input is worth a look, by its unit. */
const steps: Partial<Record<Unit, number>> = {
  lb: 100,
  kg: 50,
  t: 0.1,
  in: 1,
  ft: 1,
  mm: 25,
  cm: 2.5,
  m: 0.1,
  psi: 5,
  kPa: 50,
  '%': 1,
  ratio: 0.01,
  deg: 1,
};

const mostMovers = 3;

/** The three inputs that change the answer most, the strongest first. */
export function moversOf(answer: Derived<Unit>): readonly LessonMover[] {
  return derivatives(answer)
    .slopes.map(({ leaf, slope }) => {
      const step = steps[leaf.value.unit] ?? 1;
      const more = ofDecimal(new Decimal(step), leaf.value.unit);
      return { symbol: leaf.symbol, more, change: ofDecimal(slope.times(step), answer.value.unit) };
    })
    .sort((a, b) => b.change.value.abs().cmp(a.change.value.abs()))
    .slice(0, mostMovers);
}

/** The same step in the reader's units: a round number of them, and what it does. */
export function moverIn({ symbol, more, change }: LessonMover, units: ReaderUnits): LessonMover {
  const [as, by] = [inReaderUnits(more, units), inReaderUnits(change, units)];
  if (as.unit === more.unit) return { symbol, more, change: by };
  const round = new Decimal(steps[as.unit] ?? 1);
  return {
    symbol,
    more: ofDecimal(round, as.unit),
    change: ofDecimal(by.value.times(round).div(as.value), by.unit) as Quantity<Unit>,
  };
}
