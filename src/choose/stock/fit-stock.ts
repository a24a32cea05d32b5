/** Which of our trailers take this job, and why not the others? */

import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import type { AssessError, Assessment } from '../../assessment/index.js';
import { ruleFindings } from '../../assessment/index.js';
import { hasEffect } from '../../rules/index.js';
import { asDerived, constant, type Derived, inPounds, minus, result } from '../../trace/index.js';
import { lb, roundCapacityDown, roundLoadUp, show } from '../../units/index.js';
import { compareDecimals } from '../../units/internal.js';
import type { ChooseError } from '../errors.js';
import { payloadOf } from '../payload-of.js';
import { nothingToAnswer, questionRefusal } from '../refusal.js';
import { type Fitted, fitOne, type Job } from './fit-one.js';
import type { StockFit, StockQuestion, StockTrailer, Want } from './question.js';

const pound = lb(1);
const up = (figure: Derived<'lb'>): string => show(roundLoadUp(figure.value, pound));
const down = (figure: Derived<'lb'>): string => show(roundCapacityDown(figure.value, pound));
const isShort = (figure: Derived<'lb'>): boolean => compareDecimals(figure.value.value, lb(0).value) < 0;

/** The check that is furthest over, as a share of its limit. */
function overText({ checks, partChecks }: Assessment): string | undefined {
  const over = [...checks, ...partChecks].filter(({ verdict }) => verdict === 'over');
  const [worst] = over.sort((a, b) => compareDecimals(b.used.value.value, a.used.value.value));
  return worst && `${worst.what}: ${up(worst.load)} on ${down(worst.limit)}`;
}

function crossedText(assessment: Assessment, lines: readonly string[]): string | undefined {
  const crossed = ruleFindings(assessment.rules).find(
    (finding) => hasEffect(finding) && [finding.id, finding.rule.id].some((id) => lines.includes(id)),
  );
  return crossed && `crosses ${crossed.topic} (${crossed.answers.map(({ text }) => text).join('; ')})`;
}

/** The one reason, the gravest first. */
function reasonOf({ assessment, tooLong }: Fitted, rest: Derived<'lb'> | undefined, want: Want): string | undefined {
  const { uplift, attention, verdict, spec } = assessment;
  const [lift] = uplift.lifted;
  if (tooLong) return 'the pieces are longer than the deck';
  const over = overText(assessment);
  if (over !== undefined) return over;
  if (lift !== undefined) return `${lift.what} lifts (${up(lift.load)})`;
  const crossed = crossedText(assessment, want.lines ?? []);
  if (crossed !== undefined) return crossed;
  if (want.payload !== undefined && rest === undefined) return 'its payload is not known';
  if (rest !== undefined && isShort(rest))
    return `its payload falls short by ${up(result('short', minus(constant(lb(0)), rest)))}`;
  if (spec.trailer.gvwr === undefined) return 'its GVWR is not known';
  if (verdict === 'unchecked') return 'nothing could be checked';
  return attention[0]?.says;
}

function judge(name: string, fitted: Fitted, want: Want): StockTrailer {
  const { assessment, fronts, hitchPart } = fitted;
  const payload = payloadOf(assessment);
  const needed = inPounds('payload wanted', asDerived('payload wanted', want.payload ?? lb(0)));
  const reserve = inPounds('reserve', asDerived('reserve', want.reserve ?? lb(0)));
  const rest =
    want.payload === undefined || payload === undefined
      ? undefined
      : result('payload left', minus(minus(payload, needed), reserve));
  const reason = reasonOf(fitted, rest, want);
  return {
    name,
    assessment,
    verdict: assessment.verdict,
    fits: reason === undefined,
    gvwr: assessment.spec.trailer.gvwr && inPounds('GVWR', assessment.spec.trailer.gvwr),
    payload,
    left: rest,
    ...(fronts && { fronts }),
    ...(reason === undefined ? {} : { reason }),
    ...(hitchPart === undefined ? {} : { hitchPart }),
  };
}

/** Lighter first; what is not known comes last. */
function byWeight(a: Derived<'lb'> | undefined, b: Derived<'lb'> | undefined): number {
  if (a === undefined || b === undefined) return Number(a === undefined) - Number(b === undefined);
  return compareDecimals(a.value.value, b.value.value);
}

const bySize = (a: StockTrailer, b: StockTrailer): number =>
  byWeight(a.gvwr, b.gvwr) || byWeight(a.assessment.weights.curb, b.assessment.weights.curb);
const grave = ({ verdict }: StockTrailer): number => ['within', 'attention', 'unchecked', 'over'].indexOf(verdict);

/**
 * Which of our trailers take this job, and why not the others?
 *
 * Each trailer is assessed with the pieces at its own best place, in whole inches from the front of its deck. Two pieces are tried at
 * every pair of places, three in every order with gaps in steps of 6 in, four and more in the order given with equal gaps: for
 * those a better place can be missed. Best is the middle of the widest stretch at which every check is met. The
 * payload is the one at the tongue share that this place gives. It fits when the verdict there is `within` and what is wanted is met.
 *
 * Not for stock without specs: what a spec leaves out is not checked there, and each answer says so.
 *
 * @param question stock, tow vehicle, cargo, and further wishes
 * @returns those that fit, smallest first; the others with one reason each; the unreadable by name. Left `NothingToAnswer` without stock,
 * `UnusableFigure` for a question of another form
 * @example orThrow(fitStock({ stock: { fourteen: spec }, tow: spec.tow, cargo: spec.cargo })).others[0].verdict // 'attention'
 * @source the checks and payload of `assess`
 */
export function fitStock(question: StockQuestion): Either<ChooseError, StockFit> {
  const unusable = questionRefusal('stock', question);
  if (unusable !== undefined) return left(unusable);
  const { stock, tow, cargo, want = {} } = question;
  const names = Object.keys(stock);
  if (names.length === 0) return left(nothingToAnswer('which trailer takes the job', 'a trailer', 'stock'));
  const job: Job = { tow, cargo };
  const answered: StockTrailer[] = [];
  const failed: { name: string; error: AssessError }[] = [];
  for (const name of names) {
    const fitted = fitOne(stock[name], job);
    if (isLeft(fitted)) failed.push({ name, error: fitted.left });
    else answered.push(judge(name, fitted.right, want));
  }
  return right({
    fits: answered.filter(({ fits }) => fits).sort(bySize),
    others: answered.filter(({ fits }) => !fits).sort((a, b) => grave(a) - grave(b) || bySize(a, b)),
    failed,
  });
}
