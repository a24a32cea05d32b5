/** How sure is this answer, and what should be weighed next? */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import type { Assessment } from '../../assessment/index.js';
import { figureWith } from '../../trace/index.js';
import { doubleOf, ofNumber } from '../../units/figure.js';
import type { Quantity } from '../../units/index.js';
import { Decimal, signOf } from '../../units/internal.js';
import type { ChooseError } from '../errors.js';
import { type Range, rangeOf } from '../ranges/range.js';
import { questionRefusal } from '../refusal.js';
import type { Sure, SureCheck, Sureness } from './answer.js';
import type { Question } from './asked.js';
import { type Tolerances, type Unsure, unsureInputs } from './tolerances.js';
import { type Way, waysOf } from './ways.js';
import { weighNext } from './weigh-next.js';

const millionth = 1e6;
const pounds = (at: number): Quantity<'lb'> => ofNumber(at, 'lb');

interface Found {
  readonly question: Question;
  readonly range: Range;
  readonly low: number;
  readonly high: number;
  readonly reached: boolean;
}

/** The sign at an end that doubles cannot tell from zero, asked in decimals. */
function exactSign(question: Question, corner: ReadonlyMap<number, number>, inputs: readonly Unsure[]): number {
  const figures = new Map([...corner].map(([i, value]) => [(inputs[i] as Unsure).path, new Decimal(value)]));
  return signOf(figureWith(question.figure.why, figures));
}

function sureOf({ question, range, low, high, reached }: Found, inputs: readonly Unsure[]): Sure {
  const near = 1e-7 * Math.max(1, Math.abs(doubleOf(question.figure.value)));
  if (low > near) return 'within';
  if (high < -near) return 'over';
  if (!reached) return 'not sure';
  if (Math.abs(low) <= near && exactSign(question, range.lowest, inputs) >= 0) return 'within';
  if (Math.abs(high) <= near && exactSign(question, range.highest, inputs) < 0) return 'over';
  return 'not sure';
}

/** The same question asked in every way the assessment can go. */
function joinedOver(question: Question, range: Range, others: ReadonlyMap<string, Range>[]): Found {
  const more = others.flatMap((ranges) => ranges.get(question.id) ?? []);
  return {
    question,
    range,
    low: Math.min(range.low, ...more.map(({ low }) => low)),
    high: Math.max(range.high, ...more.map(({ high }) => high)),
    reached: range.reached && more.length === 0,
  };
}

function rangesOf({ questions, flat, at }: Way, inputs: readonly Unsure[]): ReadonlyMap<string, Range> {
  const between = inputs.map((input) => input.between);
  return new Map(
    questions.map(({ id, figure }) => [id, rangeOf(flat, [[flat.indexOf.get(figure.why) as number, 1]], between, at)]),
  );
}

function overall(checks: readonly SureCheck[]): Sure {
  if (checks.some(({ sure }) => sure === 'over')) return 'over';
  return checks.length > 0 && checks.every(({ sure }) => sure === 'within') ? 'within' : 'not sure';
}

/** How sure every check is while some inputs stay between their ends. */
export function surenessOver(assessment: Assessment, inputs: readonly Unsure[], most?: number): Sureness {
  const { ways, refused, complete } = waysOf(assessment, inputs, most);
  const [first, ...others] = ways.map((way) => rangesOf(way, inputs));
  const found = (ways[0]?.questions ?? []).map((question) =>
    joinedOver(question, (first as ReadonlyMap<string, Range>).get(question.id) as Range, others),
  );
  const checks = found.map((one): SureCheck => {
    const { question, low, high, reached } = one;
    return {
      id: question.id,
      what: question.what,
      kind: question.kind,
      sure: complete ? sureOf(one, inputs) : 'not sure',
      reserve: question.figure.value,
      least: pounds(Math.floor(low * millionth) / millionth),
      most: pounds(Math.ceil(high * millionth) / millionth),
      endsReached: reached,
    };
  });
  const open = found.filter((_, i) => checks[i]?.sure === 'not sure');
  return { sure: overall(checks), checks, inputs, weighNext: weighNext(open, inputs), refused, complete };
}

/**
 * How sure is this answer, when the inputs may be off?
 *
 * Every input has a tolerance by what it rests on; each check is within for sure, over for sure, or not sure. Slopes over the
 * whole range of the inputs say at which corner a reserve is least; where an input may turn it both ways, intervals hold it;
 * where a comparison may turn, the spec is assessed at that corner too. Tolerances are ends, not chances.
 *
 * Not for what the spec leaves out: what was not checked stays unchecked. Remarks that are no ratings are not asked.
 *
 * @param assessment from `assess`
 * @param tolerances in addition to the usual ones, or in their place
 * @returns each check with the least and the most of its reserve in lb, and the inputs to weigh next; Left `NotInTheSpec`
 * for a path that the spec does not have, `UnusableFigure` for a tolerance that cannot be read or is below zero
 * @example orThrow(sureness(orThrow(assess(spec)))).sure // 'not sure'
 * @source interval arithmetic with a test of monotony; the tolerances carry their own sources
 */
export function sureness(assessment: Assessment, tolerances: Tolerances = {}): Either<ChooseError, Sureness> {
  const unusable = questionRefusal('assessment', assessment) ?? questionRefusal('tolerances', tolerances);
  if (unusable !== undefined) return left(unusable);
  const unsure = unsureInputs(assessment.spec, tolerances);
  if (isLeft(unsure)) return unsure;
  return right(surenessOver(assessment, unsure.right));
}
