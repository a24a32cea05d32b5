/** Figures in the reader's units: feet, inches and pounds, or metres, millimetres and kilograms. Loads go up, capacities down. */
import {
  compare,
  convert,
  inch,
  inReaderUnits,
  kg,
  lb,
  mm,
  psi,
  type Quantity,
  quantity,
  type ReaderUnits,
  roundCapacityDown,
  roundLoadUp,
  roundNearest,
  show,
  showBrief,
  showFeetInches,
  showNumber,
  type Unit,
} from '../units/index.js';
import { roundLoadAway } from '../units/internal.js';
import type { FiguresInPrint } from './figures-in-print.js';
import { pressureInPrint, shareInPrint, usedInPrint } from './text-layout.js';

const sixteenth = inch('0.0625');
const shares = { share: shareInPrint, used: usedInPrint };
/** A share in percent; nothing for other figures. */
const shareOf = (q: Quantity<Unit>): string | undefined =>
  q.unit === 'ratio' ? shareInPrint(q as Quantity<'ratio'>) : undefined;
const bareNumber = <U extends Unit>(q: Quantity<U>): string => showNumber(q.value);
// To the front is less: places are measured from the coupler rearward.
const toSixteenth = {
  front: (q: Quantity<'in'>) => roundCapacityDown(q, sixteenth),
  rear: (q: Quantity<'in'>) => roundLoadUp(q, sixteenth),
};

/** Finer than this nobody weighs; a range that holds no such figure is printed as it is, cut there. */
const finest = 6;

/** The least rounded up, the most rounded down, both of them within. */
function within<U extends Unit>(least: Quantity<U>, most: Quantity<U>): readonly [string, string] {
  for (let places = 0; places < finest; places += 1) {
    const step = quantity(`1e-${places}`, least.unit);
    const [low, high] = [roundLoadUp<Unit>(least, step), roundCapacityDown<Unit>(most, step)];
    if (compare(low, high) <= 0) return [show(low), show(high)];
  }
  return [showBrief(least, finest), showBrief(most, finest)];
}

const us: FiguresInPrint = {
  units: 'us',
  weightUnit: 'lb',
  load: (q) => show(roundLoadAway(q, lb(1))),
  capacity: (q) => show(roundCapacityDown(q, lb(1))),
  range: within,
  bareLoad: (q) => bareNumber(roundLoadAway(q, lb(1))),
  bareCapacity: (q) => bareNumber(roundCapacityDown(q, lb(1))),
  place: (q, toward) => showFeetInches(toSixteenth[toward](q)),
  placeNow: (q) => showFeetInches(q),
  length: (q) => showBrief(q, 1),
  longLength: (q) => showBrief(convert(q as Quantity<'in'>, 'ft'), 2),
  pressure: pressureInPrint,
  tongueByPlace: (q) => showBrief(convert(q, 'lb/in'), 1).replace('/in', ''),
  placeStep: 'an inch',
  weightOfDeck: (q) => showBrief(q, 1),
  ...shares,
  any: (q) => shareOf(q) ?? showBrief(q, 1),
};

const inKg = (q: Quantity<'lb'>): Quantity<'kg'> => convert(q, 'kg');
const inMetres = (q: Quantity<'mm'>): string => showBrief(convert(q, 'm'), 3);

const wholeUnits: ReadonlySet<Unit> = new Set(['mm', 'kPa', 'kg*m2']);
const metricOf = (q: Quantity<Unit>): string => {
  const converted = inReaderUnits(q, 'metric');
  return showBrief(converted, wholeUnits.has(converted.unit) ? 0 : 1);
};

/** In kilopascals, followed by psi where that is a whole number, as sidewalls print it. */
function metricPressure(q: Quantity<'psi'>): string {
  const text = showBrief(convert(q, 'kPa'), 1);
  return compare(roundNearest(q, psi(1)), q) === 0 ? `${text} (${show(q)})` : text;
}

const toMillimetre = {
  front: (q: Quantity<'in'>) => roundCapacityDown(convert(q, 'mm'), mm(1)),
  rear: (q: Quantity<'in'>) => roundLoadUp(convert(q, 'mm'), mm(1)),
};

const metric: FiguresInPrint = {
  units: 'metric',
  weightUnit: 'kg',
  load: (q) => show(roundLoadAway(inKg(q), kg(1))),
  capacity: (q) => show(roundCapacityDown(inKg(q), kg(1))),
  range: (least, most) => within(inKg(least), inKg(most)),
  bareLoad: (q) => bareNumber(roundLoadAway(inKg(q), kg(1))),
  bareCapacity: (q) => bareNumber(roundCapacityDown(inKg(q), kg(1))),
  place: (q, toward) => inMetres(toMillimetre[toward](q)),
  placeNow: (q) => inMetres(roundNearest(convert(q, 'mm'), mm(1))),
  length: (q) => showBrief(convert(q, 'mm'), 0),
  longLength: (q) => showBrief(convert(q as Quantity<'in'>, 'm'), 2),
  pressure: metricPressure,
  tongueByPlace: (q) => showBrief(kg(convert(q, 'kg/m').value.div(100)), 1),
  placeStep: '10 mm',
  weightOfDeck: (q) => showBrief(convert(q, 'kg/m'), 1),
  ...shares,
  any: (q) => shareOf(q) ?? metricOf(q),
};

/** The figures of a page in the reader's units. */
export const figuresIn = (units: ReaderUnits = 'us'): FiguresInPrint => (units === 'metric' ? metric : us);
