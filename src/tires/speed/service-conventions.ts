/** Conventions of tire makers and associations about speed: information that never raises a rating. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../../ratings/index.js';
import { asDerived, converted, type Decision, type Derived, decide, fromTable, type Known } from '../../trace/index.js';
import { mph, percent, psi } from '../../units/index.js';
import { sources } from '../data/sources.js';
import { designationOf } from '../designation/cache.js';
import type { Designation } from '../designation/designation.js';
import type { TiresError } from '../errors.js';
import { speedSymbol } from './speed-symbol.js';

/** What texts say about a speed. There is no load in it that could be put in place of a rating. */
export interface SpeedInformation {
  readonly says:
    | 'as marked'
    | 'more pressure'
    | 'more pressure and less load'
    | 'above what the tire is marked for'
    | 'nothing published';
  readonly notes: readonly Note[];
  readonly decisions: readonly Decision[];
}

const convention = (key: string): { table: string; key: string; source: typeof sources.ss } => ({
  table: 'speed convention for ST tires',
  key,
  source: sources.ss,
});
const bound = (key: string, figure: number): Derived<'mph'> => fromTable(key, mph(figure), convention(key));
const marked = bound('speed as marked', 65);
const second = bound('end of the second band', 75);
const third = bound('end of the third band, lower print', 85);
const added = fromTable('pressure added in the convention', psi(10), convention('66 to 75 mph'));
const lowered = fromTable('load taken off in the convention', percent(10), convention('76 to 85 mph'));

const notForRatings = note(
  'NotForRatings',
  'speed and pressure adjustments of associations must not be used to show that tires meet a GAWR (agency letter 2672y)',
);
const bonus = note(
  'EuropeanBonus',
  'European texts let some tires carry more on slow trailers; that does not count in a rating check here',
);
const wheelLimit = note(
  'WheelLimit',
  'added pressure stays within the limit of the wheel, and some makers forbid more than 75 mph',
);

/** Notes that go with any question about speed and load. */
export const serviceNotes: readonly Note[] = [notForRatings, bonus];

/**
 * What do published conventions say about this tire at this speed?
 *
 * With a speed symbol: the symbol's speed is the limit. ST tires without one, to 65 mph: as marked; to 75 mph: 10 psi more at the
 * same load; to 85 mph: 10 psi more and 10 % less load (another print says 87; the lower is used). Above: no published convention.
 *
 * Information only: it raises no rating, and it is no advice on how fast to drive. Not for other families without a symbol.
 *
 * @param designation from the sidewall
 * @param speed in mph or km/h
 * @returns what is said, notes, decisions; Left `UnreadableDesignation`, `NotTabulated`
 * @example speedInformation('ST205/75R15 LRD', mph(70)) // Right: 'more pressure'
 * @source speed-band convention of the association's book for ST tires, from two copies, grade C; agency letter 2672y, grade A
 */
export function speedInformation(
  designation: string | Designation,
  speed: Known<'mph' | 'km/h'>,
): Either<TiresError, SpeedInformation> {
  const read = designationOf(designation);
  if (isLeft(read)) return read;
  const run = asDerived('speed', speed);
  const symbol = read.right.service?.symbol;
  if (symbol !== undefined) {
    const limit = speedSymbol(symbol);
    if (isLeft(limit)) return limit;
    const within = decide(converted<'mph' | 'km/h', 'km/h'>('speed in km/h', run, 'km/h'), '<=', limit.right.kmh);
    return right({
      says: within.holds ? 'as marked' : 'above what the tire is marked for',
      notes: serviceNotes,
      decisions: [within],
    });
  }
  if (read.right.family !== 'ST-metric')
    return right({ says: 'nothing published', notes: serviceNotes, decisions: [] });
  return right(bands(converted<'mph' | 'km/h', 'mph'>('speed in mph', run, 'mph')));
}

function bands(run: Derived<'mph'>): SpeedInformation {
  const decisions = [marked, second, third].map((limit) => decide(run, '<=', limit));
  const band = decisions.findIndex(({ holds }) => holds);
  const morePressure = note('MorePressure', 'the convention starts with 10 psi more cold pressure', [added]);
  const lessLoad = note('LessLoad', 'the convention takes 10 percent off the load', [lowered]);
  switch (band) {
    case 0:
      return { says: 'as marked', notes: serviceNotes, decisions: decisions.slice(0, 1) };
    case 1:
      return {
        says: 'more pressure',
        notes: [...serviceNotes, morePressure, wheelLimit],
        decisions: decisions.slice(0, 2),
      };
    case 2:
      return {
        says: 'more pressure and less load',
        notes: [...serviceNotes, morePressure, lessLoad, wheelLimit],
        decisions,
      };
    default:
      return { says: 'nothing published', notes: serviceNotes, decisions };
  }
}

/** The speeds at which the bands of the convention end. */
export const speedBands: readonly Derived<'mph'>[] = [marked, second, third];
