/** How likely is each build to be within when its figures are not sure? */

import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import type { AssessmentVerdict } from '../../assessment/index.js';
import type { Note } from '../../ratings/index.js';
import type { SpecInput } from '../../spec/index.js';
import type { StudyFailure } from '../errors.js';
import { designRefusal } from '../plan/design-refusal.js';
import { planRefusal, unusable } from '../plan/plan-refusal.js';
import { readChoices } from '../plan/read-choices.js';
import { readPlan } from '../plan/read-plan.js';
import { verdictCode, verdictNames } from '../run/verdict-codes.js';
import { type StudyPlan, study } from '../study.js';
import { type Share, shareWithError } from './sample.js';

/** One build: a combination of alternatives and options, under the same draws as every other. */
export interface BuildChance {
  /** Which alternative was taken, by name. */
  readonly choices: Readonly<Record<string, string>>;
  /** The share of all runs that have each verdict; a run without an answer has none of them. */
  readonly verdicts: Readonly<Record<AssessmentVerdict, Share>>;
  /** How many runs have no answer. */
  readonly unanswered: number;
  /** The share within less that of the best build, run by run: the same draw for both, so that the error is that of the difference. */
  readonly toBest: Share;
}

/** The builds, the most likely to be within first. */
export interface Chances {
  /** How many runs each build had. */
  readonly runs: number;
  /** Each build and its shares. */
  readonly builds: readonly BuildChance[];
  /** What is to be said of the plan itself: see `Study`. */
  readonly notes: readonly Note[];
}

interface Run {
  readonly choices: Readonly<Record<string, string>>;
  readonly counts: readonly number[];
  readonly unanswered: number;
  /** One for each run that is within. */
  readonly within: Uint8Array;
}

/** Mean and standard error of the difference of two builds, draw by draw. */
function difference(a: Uint8Array, b: Uint8Array): Share {
  let sum = 0;
  let squares = 0;
  for (let i = 0; i < a.length; i += 1) {
    const d = (a[i] as number) - (b[i] as number);
    sum += d;
    squares += d * d;
  }
  const share = sum / a.length;
  const spread = Math.max(0, squares / a.length - share * share);
  return { share, standardError: Math.sqrt(spread / a.length) };
}

function runOf(plan: StudyPlan, runs: number, choices: Readonly<Record<string, string>>): Either<StudyFailure, Run> {
  const made = study(plan);
  const counts = verdictNames.map(() => 0);
  const within = new Uint8Array(runs);
  if (isLeft(made))
    // A build that no draw makes answerable is not within; a plan that cannot be run is refused.
    return made.left.chapter === 'study' ? made : right({ choices, counts, unanswered: runs, within });
  let unanswered = 0;
  for (const { start, rows, reasons, verdict } of made.right.chunks())
    for (let i = 0; i < rows; i += 1) {
      const code = verdict[i] as number;
      if (reasons[i] !== 0) unanswered += 1;
      else counts[code] = (counts[code] as number) + 1;
      within[start + i] = reasons[i] === 0 && code === verdictCode('within') ? 1 : 0;
    }
  return right({ choices, counts, unanswered, within });
}

/** The indexes of the n-th combination, the last choice fastest. */
const combination = (sizes: readonly number[], n: number): readonly number[] =>
  sizes.map((size, i) => Math.floor(n / sizes.slice(i + 1).reduce((product, next) => product * next, 1)) % size);

/**
 * How likely is each of these builds to be within, when weights and places are not sure?
 *
 * `share = runs within / runs`, standard error `sqrt(share (1 - share) / runs)`. All builds see the same draws (common random
 * numbers): their differences are then surer than their shares. A run that `assess` refuses counts as not within.
 *
 * Not a probability that a trailer is safe: it says how far stated figures and their spread allow the verdict.
 *
 * @param asked the spec, its alternatives and options, and distributions of figures; how many runs and the seed
 * @returns the builds, the surest first; Left as `study`
 * @example orThrow(chances({ base: spec, vary: { 'cargo.0.weight': normal('8,000 lb', '200 lb') }, runs: 100, seed: 1 })).builds.length // 1
 * @source binomial standard error, common random numbers: any textbook of simulation; from memory
 */
export function chances(
  asked: Omit<StudyPlan, 'design'> & { readonly runs: number; readonly seed: number },
): Either<StudyFailure, Chances> {
  if (typeof asked !== 'object' || asked === null)
    return left(unusable('plan', asked, 'a record with base, vary, runs and seed'));
  const { runs, seed, ...plan } = asked;
  const design = { kind: 'monte carlo', runs, seed } as const;
  const misfit = planRefusal({ ...plan, design });
  if (misfit !== undefined) return left(misfit);
  const entries = Object.entries(plan.vary);
  const read = readChoices(plan.base, entries);
  if (isLeft(read)) return read;
  const { sets, combinations, specOf } = read.right;
  const refused = designRefusal(design, []);
  if (refused !== undefined) return left(refused);
  const vary = Object.fromEntries(entries.filter(([, { kind }]) => kind !== 'alternatives' && kind !== 'added'));
  const sizes = sets.map(({ choices }) => choices.length);
  const found: Run[] = [];
  for (let n = 0; n < combinations; n += 1) {
    const indexes = combination(sizes, n);
    const choices = Object.fromEntries(
      sets.map(({ name, choices: names }, i) => [name, names[indexes[i] as number] ?? '']),
    );
    const run = runOf({ ...plan, base: specOf(indexes) as SpecInput, vary, design }, runs, choices);
    if (isLeft(run)) return run;
    found.push(run.right);
  }
  const code = verdictCode('within');
  const ranked = found.sort((a, b) => (b.counts[code] as number) - (a.counts[code] as number));
  const [best] = ranked as [Run];
  const shareOf = ({ counts }: Run, name: AssessmentVerdict): Share =>
    shareWithError(counts[verdictCode(name)] as number, runs);
  const builds = ranked.map(
    (run): BuildChance => ({
      choices: run.choices,
      unanswered: run.unanswered,
      verdicts: {
        over: shareOf(run, 'over'),
        attention: shareOf(run, 'attention'),
        within: shareOf(run, 'within'),
        unchecked: shareOf(run, 'unchecked'),
      },
      toBest: difference(run.within, best.within),
    }),
  );
  const whole = readPlan(plan.base, plan.vary);
  return right({ runs, builds, notes: isLeft(whole) ? [] : whole.right.notes });
}
