/** The load formula of P-metric tires, as a secondary text quotes it. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { note } from '../../ratings/index.js';
import {
  asDerived,
  constant,
  converted,
  type Derived,
  decide,
  given,
  inUnit,
  type Known,
  over,
  plus,
  product,
  quotient,
  result,
  rounded,
  times,
  toThe,
} from '../../trace/index.js';
import { type Digits, kg, kPa, mm, percent, ratio } from '../../units/index.js';
import { showInWords } from '../../units/internal.js';
import { sources } from '../data/sources.js';
import { designationOf } from '../designation/cache.js';
import type { Designation } from '../designation/designation.js';
import { showSize } from '../designation/show-designation.js';
import type { TiresError } from '../errors.js';
import type { LoadEstimate } from './estimates.js';

const fixed = (digits: Digits, symbol?: string): Derived<'ratio'> => constant(ratio(digits), symbol, sources.pl2);
const inMm = (symbol: string, length: Derived<'mm'>): Derived<'ratio'> =>
  quotient(symbol, length, constant(mm(1)), sources.pl2);

/**
 * About what does the P-metric formula give this size at this pressure?
 *
 * `L [kg] = 6.67e-5 x P^0.5 x Sd^1.39 x (Dr + Sd)` with `Sd = (0.34848 + 0.6497 A) x S70`: P cold pressure in kPa, S70 section
 * width in mm, A aspect as a fraction, Dr rim diameter in mm, rounded. Given in lb. Reference pressure 240 kPa (35 psi).
 *
 * For P-metric sizes of standard load only, up to 240 kPa, on a passenger car (on a trailer a rating is divided by 1.10). An
 * estimate: the text is a secondary copy; on P235/75R15 it gives within 0.2 % of the printed 2,028 lb.
 *
 * @param designation a P-metric size, from the sidewall
 * @param pressure cold, in kPa or psi
 * @returns lb, basis estimated; Left `UnreadableDesignation`, `NoAspectRatio` (not a P-metric size), `NotPositive`,
 * `PressureAboveRated`
 * @example estimatePMetricLoad('P235/75R15', kPa(240)) // Right: 2,025 lb; a trade text prints 2,028
 * @source engineering text of 2005-08-22 quoting the association's P-metric formula, grade C
 */
export function estimatePMetricLoad(
  designation: string | Designation,
  pressure: Known<'kPa' | 'psi'>,
): Either<TiresError, LoadEstimate> {
  const read = designationOf(designation);
  if (isLeft(read)) return read;
  const { family, size } = read.right;
  if (family !== 'P-metric' || size.form !== 'metric' || size.aspect === undefined)
    return left({ chapter: 'tires', tag: 'NoAspectRatio', size: showSize(read.right) });
  const asked = converted<'psi' | 'kPa', 'kPa'>('cold pressure in kPa', asDerived('cold pressure', pressure), 'kPa');
  const positive = decide(asked, '>', constant(kPa(0)));
  if (!positive.holds)
    return left({ chapter: 'tires', tag: 'NotPositive', what: 'cold pressure', found: showInWords(asked.value) });
  const reference = constant(kPa('241.5'), 'reference pressure', sources.pl2);
  const within = decide(asked, '<=', reference);
  if (!within.holds)
    return left({
      chapter: 'tires',
      tag: 'PressureAboveRated',
      asked: showInWords(asked.value, 'up'),
      rated: '240 kPa (35 psi)',
    });
  const aspect = converted('aspect', given('aspect in percent', percent(size.aspect.value), 'label'), 'ratio');
  const width = inMm('S70', given('section width', size.width, 'label'));
  const rim = inMm(
    'Dr',
    rounded('rim in mm', inUnit(given('rim', size.rim, 'label'), 'mm'), mm(1), 'nearest', sources.pl2),
  );
  const factor = given('formula factor', ratio('0.0000667'), 'estimated');
  const sd = result('Sd', times(plus(fixed('0.34848'), times(fixed('0.6497'), aspect)), width), sources.pl2);
  const root = toThe(over(asked, constant(kPa(1))), fixed('0.5'));
  const figure = times(factor, root, toThe(sd, fixed('1.39')), plus(rim, sd));
  const load = product('P-metric formula load', figure, constant(kg(1)), sources.pl2);
  return right({
    load: converted('estimated P-metric load', load, 'lb'),
    decisions: [positive, within],
    notes: [note('Estimate', 'a formula from a secondary text, not a printed load; it is no rating')],
  });
}
